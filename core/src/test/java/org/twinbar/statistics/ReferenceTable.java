package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of reference data beside these tests: lines with {@code #}, a line of column names, and
 * rows.
 */
record ReferenceTable(List<Row> rows) {

    record Row(Map<String, String> cells) {
        String text(String column) {
            assertThat(cells).containsKey(column);
            return cells.get(column);
        }

        double number(String column) {
            return switch (text(column)) {
                case "Inf" -> Double.POSITIVE_INFINITY;
                case "-Inf" -> Double.NEGATIVE_INFINITY;
                default -> Double.parseDouble(text(column));
            };
        }

        int whole(String column) {
            return Integer.parseInt(text(column));
        }

        /** Numbers parted by blanks. */
        double[] numbers(String column) {
            return Data.numbers(text(column));
        }
    }

    static ReferenceTable read(String name) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream(name)) {
            assertThat(in).as(name).isNotNull();
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
            List<String> columns = List.of(lines.get(0).split(","));
            List<Row> rows = lines.subList(1, lines.size()).stream()
                    .map(line -> row(columns, line))
                    .toList();
            assertThat(rows).as(name).isNotEmpty();
            return new ReferenceTable(rows);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(List<String> columns, String line) {
        List<String> cells = Arrays.asList(line.split(",", -1));
        assertThat(cells).as(line).hasSameSizeAs(columns);
        Map<String, String> row = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            row.put(columns.get(i), cells.get(i));
        }
        return new Row(row);
    }
}
