package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Reads docs/calibration.md: what is promised of the verdicts is what the simulation found. */
class CalibrationTest {

    /** Three standard errors of 10,000 studies, and half a unit of the one decimal shown. */
    private static final double ERROR_OF_2_5 = 0.47 + 0.05;

    private static final double ERROR_OF_5 = 0.65 + 0.05;

    private static List<String> lines = List.of();

    @BeforeAll
    static void read() throws IOException {
        Path root = Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();
        lines = Files.readAllLines(root.resolve("docs/calibration.md"));
    }

    /** The cells of the rows under a heading that begins so. */
    private static List<String[]> rows(String heading) {
        int from = 0;
        while (!lines.get(from).startsWith("## " + heading)) {
            from++;
        }
        int to = from + 1;
        while (to < lines.size() && !lines.get(to).startsWith("## ")) {
            to++;
        }
        return lines.subList(from, to).stream()
                .filter(line -> line.startsWith("| ") && !line.contains("treated, control"))
                .map(line -> Arrays.stream(line.split("\\|"))
                        .skip(1)
                        .map(String::strip)
                        .toArray(String[]::new))
                .toList();
    }

    private static double most(String cell) {
        return Arrays.stream(cell.split("·"))
                .mapToDouble(part -> Double.parseDouble(part.strip()))
                .max()
                .orElseThrow();
    }

    private static boolean equalNumbers(String[] row) {
        String[] numbers = row[1].split(", ");
        return numbers.length == 2 && numbers[0].equals(numbers[1]);
    }

    @Test
    void meansKeepWhatIsPromised() {
        for (String heading : List.of("Ratio (Fieller)", "Difference (Welch)")) {
            int normal = 0;
            int alike = 0;
            for (String[] row : rows(heading)) {
                if (row[0].matches("normal, \\d+ %") && equalNumbers(row)) {
                    assertThat(most(row[2])).as("%s %s", row).isLessThan(2.5 + ERROR_OF_2_5);
                    normal++;
                } else if (row[0].matches("(log-normal|Weibull), .*") && equalNumbers(row)) {
                    assertThat(most(row[2])).as("%s %s", row).isLessThan(5 + ERROR_OF_5);
                    alike++;
                }
            }
            assertThat(normal).as(heading).isEqualTo(12);
            assertThat(alike).as(heading).isEqualTo(12);
        }
    }

    @Test
    void otherKindsKeepTheirRateOrAreNamed() {
        String[] headings = {"Share", "Rate", "Rank", "Level", "Print runs"};
        for (String heading : headings) {
            double nominal = heading.equals("Level") ? 5 : 2.5;
            double error = heading.equals("Level") ? ERROR_OF_5 : ERROR_OF_2_5;
            List<String[]> rows = rows(heading);
            assertThat(rows).as(heading).hasSizeGreaterThan(10);
            for (String[] row : rows) {
                boolean named = lines.stream()
                        .anyMatch(line -> line.startsWith("Above it by more than chance")
                                && line.contains(row[0] + " (" + row[1] + ")"));
                assertThat(named || most(row[2]) < nominal + error)
                        .as("%s: %s, %s", heading, row[0], row[2])
                        .isTrue();
            }
        }
    }

    @Test
    void everyPictureIsThere() {
        List<String> pictures = lines.stream()
                .filter(line -> line.startsWith("!["))
                .map(line -> line.replaceAll(".*\\((.*)\\)", "$1"))
                .toList();
        Path docs = Path.of(System.getProperty("basedir", ""))
                .toAbsolutePath()
                .getParent()
                .resolve("docs");
        assertThat(pictures).hasSize(3).allMatch(picture -> Files.exists(docs.resolve(picture)));
    }
}
