package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The outside values of one package: {@code checks.csv} beside its tests.
 *
 * <p>The file has the columns {@code id,quantity,inputs,expected,tolerance,source}; lines that
 * begin with {@code #} are its header. A tolerance is absolute, or relative to the expected value
 * where it ends in {@code rel}. What a test found is kept in {@code target/checks/<package>.csv},
 * from which the table of outside checks is made; a value that was found earlier stays there for as
 * long as its row in {@code checks.csv} is the same.
 */
public final class Checks {

    /** More digits than this are agreement of doubles by luck. */
    private static final double MOST_DIGITS = 15;

    private static final List<String> COLUMNS =
            List.of("id", "quantity", "inputs", "expected", "tolerance", "source");
    private static final List<String> FOUND_COLUMNS = List.of(
            "id", "quantity", "inputs", "expected", "tolerance", "source", "ours", "digits");

    private static final Map<String, Checks> BY_PACKAGE = new HashMap<>();

    private final Path found;
    private final Map<String, Row> rows;
    private final Map<String, String> ours = new HashMap<>();

    private Checks(Path found, Map<String, Row> rows) {
        this.found = found;
        this.rows = rows;
    }

    /** The checks of the package that the test is in; {@code checks.csv} must be there. */
    public static synchronized Checks of(Class<?> test) {
        return BY_PACKAGE.computeIfAbsent(test.getPackageName(), name -> read(test, name));
    }

    /** The row with this id; a misspelt id fails the test. */
    public Row row(String id) {
        Row row = rows.get(id);
        assertThat(row)
                .as("row %s of the checks for %s", id, found.getFileName())
                .isNotNull();
        return row;
    }

    /** One outside value. */
    public final class Row {
        private final List<String> cells;
        private final double expected;
        private final double tolerance;

        private Row(List<String> cells) {
            this.cells = cells;
            this.expected = Double.parseDouble(cells.get(3));
            this.tolerance = tolerance(cells.get(4), expected);
        }

        public double expected() {
            return expected;
        }

        /**
         * Asserts that our value agrees with the outside value within the row's tolerance, and
         * keeps it.
         */
        public void expects(double ours) {
            String what = cells.get(0) + " " + cells.get(1) + " (" + cells.get(5) + ")";
            if (Double.isInfinite(expected)) {
                assertThat(ours).as(what).isEqualTo(expected);
            } else {
                assertThat(Math.abs(ours - expected))
                        .as("%s: ours %s, expected %s, difference", what, ours, expected)
                        .isLessThanOrEqualTo(tolerance);
            }
            keep(cells.get(0), ours, digits(ours, expected));
        }
    }

    /**
     * Matching digits of two numbers.
     *
     * <p>−log₁₀(|ours − expected| / |expected|), without the divisor where the expected value is
     * zero; at least 0 and at most 15.
     */
    public static double digits(double ours, double expected) {
        if (ours == expected) {
            return MOST_DIGITS;
        }
        double error = Math.abs(ours - expected) / (expected == 0 ? 1 : Math.abs(expected));
        double digits = -StrictMath.log10(error);
        return Double.isNaN(digits) ? 0 : Math.max(0, Math.min(MOST_DIGITS, digits));
    }

    private static double tolerance(String text, double expected) {
        return text.endsWith("rel")
                ? Math.abs(expected) * Double.parseDouble(text.substring(0, text.length() - 3))
                : Double.parseDouble(text);
    }

    private static Checks read(Class<?> test, String packageName) {
        String text;
        try (InputStream in = test.getResourceAsStream("checks.csv")) {
            assertThat(in).as("checks.csv of %s", packageName).isNotNull();
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Path found = Path.of(
                System.getProperty("basedir", ""), "target", "checks", packageName + ".csv");
        Checks checks = new Checks(found, new LinkedHashMap<>());
        List<List<String>> lines = table(text);
        assertThat(lines.get(0)).as("columns of checks.csv of %s", packageName).isEqualTo(COLUMNS);
        for (List<String> cells : lines.subList(1, lines.size())) {
            assertThat(cells).as("row %s of %s", cells.get(0), packageName).hasSameSizeAs(COLUMNS);
            Row before = checks.rows.put(cells.get(0), checks.new Row(cells));
            assertThat(before)
                    .as("a second row %s of %s", cells.get(0), packageName)
                    .isNull();
        }
        checks.recallFound();
        return checks;
    }

    private void recallFound() {
        if (!Files.exists(found)) {
            return;
        }
        try {
            for (List<String> cells : table(Files.readString(found))) {
                Row row = rows.get(cells.get(0));
                if (row != null && row.cells.equals(cells.subList(0, COLUMNS.size()))) {
                    ours.put(cells.get(0), line(cells));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized void keep(String id, double value, double digits) {
        List<String> cells = new ArrayList<>(rows.get(id).cells);
        cells.add(Double.toString(value));
        cells.add(Double.toString(Math.floor(10 * digits) / 10));
        ours.put(id, line(cells));
        String body = rows.keySet().stream()
                .filter(ours::containsKey)
                .map(ours::get)
                .collect(Collectors.joining("\n", line(FOUND_COLUMNS) + "\n", "\n"));
        try {
            Files.createDirectories(found.getParent());
            Files.writeString(found, body);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String line(List<String> cells) {
        return cells.stream()
                .map(cell ->
                        cell.matches("[^\",]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"')
                .collect(Collectors.joining(","));
    }

    /** The rows of a table with commas, its header first; lines that begin with # are left out. */
    static List<List<String>> table(String text) {
        return text.lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(Checks::cells)
                .toList();
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (quoted && c == '"' && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        assertThat(quoted).as("a quote left open in: %s", line).isFalse();
        cells.add(cell.toString().strip());
        return List.copyOf(cells);
    }
}
