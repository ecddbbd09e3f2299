package org.twinbar.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run of twenty studies in each cell instead of ten thousand. */
class CalibrationPageTest {

    private static final Path DOCS = Path.of("..", "docs");

    @TempDir
    Path folder;

    /** But for its numbers, docs/calibration.md is what this code writes, word for word. */
    @Test
    void thePageInDocsIsWhatTheStudyWrites() throws IOException {
        CalibrationStudy.main(new String[] {folder.toString(), "20"});

        assertThat(words(folder.resolve("calibration.md")))
                .isEqualTo(words(DOCS.resolve("calibration.md")));
        for (String picture : List.of("supported", "coverage", "kinds")) {
            String name = "calibration-" + picture + ".svg";
            assertThat(picture(folder.resolve(name))).isEqualTo(picture(DOCS.resolve(name)));
        }
    }

    private static String picture(Path file) throws IOException {
        return numbersOut(Files.readString(file).replaceAll("<circle[^>]*>", ""));
    }

    /** Which cells are off by more than chance hangs on how many studies there are. */
    private static List<String> words(Path page) throws IOException {
        return Files.readAllLines(page).stream()
                .filter(line -> !line.startsWith("Above it by more than chance:")
                        && !line.startsWith("None is above its nominal rate"))
                .map(CalibrationPageTest::numbersOut)
                .toList();
    }

    private static String numbersOut(String text) {
        return text.replaceAll("[0-9]+([.,][0-9]+)*", "#").replace("# to #", "#");
    }
}
