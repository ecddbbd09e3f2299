package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code calculate} prints for a person. */
class CalculateTextTest {

    @TempDir
    Path folder;

    @Test
    void whatIsAlikeInAllIsSaidOnce() {
        Desk desk = new Desk(folder);
        desk.file(
                "t.csv",
                "specimen,group,orientation,print_run,spool,note,width_mm,thickness_mm,peak_force_N",
                "A1,plain,flat,1,grey,,10,4,1200",
                "B1,coated,flat,2,grey,,10,4,1300");
        String text = desk.type("calculate tensile --specimens @t.csv").done();
        assertThat(text.lines().filter(line -> line.startsWith("specimen")))
                .singleElement()
                .asString()
                .startsWith("specimen  group   print_run  strength");
        assertThat(text).contains("\nAll of them: orientation flat, spool grey.\n");
    }

    @Test
    void whereAllDifferNothingIsSaidOfThem() {
        Desk desk = new Desk(folder);
        desk.file(
                "t.csv",
                "specimen,group,width_mm,thickness_mm,peak_force_N",
                "A1,plain,10,4,1200",
                "B1,coated,10,4,1300");
        assertThat(desk.type("calculate tensile --specimens @t.csv").done())
                .doesNotContain("All of them");
    }
}
