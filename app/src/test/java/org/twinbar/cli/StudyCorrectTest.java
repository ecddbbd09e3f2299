package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reading that was misread is corrected, and what was published is held against it. */
class StudyCorrectTest {

    private static final String C1 =
            "study correct bars --workspace @w --method tensile --specimen C1 --column peak_force_N";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder)
                .file(
                        "bars.csv",
                        "specimen,group,area_mm2,peak_force_N",
                        "P1,plain,40,2000",
                        "P2,plain,40,2040",
                        "P3,plain,40,1960",
                        "C1,coated,40,2400",
                        "C2,coated,40,2440",
                        "C3,coated,40,2360");
        desk.type("study import --workspace @w --name bars --method tensile --specimens @bars.csv"
                        + " --property strength --control plain --expect higher")
                .done();
    }

    @Test
    void isCalculatedAnewAndTheOldOneStaysReadable() {
        desk.type("study publish bars --workspace @w --where club").done();
        assertThat(desk.type(C1 + " --to 400 --why misread --who Ben").done())
                .contains("peak_force_N of C1: 2400 → 400 (misread)", "open")
                .contains("judged otherwise since. To post:", "Correction to what we published");
        desk.type("report bars --workspace @w --out @out --html").done();
        assertThat(desk.files()).contains("out/report.html");
        assertThat(desk.type(C1 + " --to 2400 --why read-right-at-first").done())
                .contains("400 → 2400", "all of it still stands");
    }

    @Test
    void refusesWhatIsNoCorrection() {
        desk.refuses(C1 + " --to 2500", "--why");
        desk.refuses(C1 + " --to 2400 --why same", "peak_force_N of C1 is 2400 already");
        desk.refuses(C1 + " --to much --why misread", "much");
        desk.refuses(
                "study correct bars --workspace @w --method tensile --specimen C9 --column"
                        + " peak_force_N --to 5 --why x",
                "no specimen 'C9'");
        desk.refuses(
                "study correct bars --workspace @w --method tensile --specimen C1 --column"
                        + " peak_force --to 5 --why x",
                "has no reading 'peak_force'",
                "peak_force_N");
        desk.refuses(
                "study correct bars --workspace @w --method flexure --specimen C1 --column"
                        + " peak_force_N --to 5 --why x",
                "no flexure test");
    }
}
