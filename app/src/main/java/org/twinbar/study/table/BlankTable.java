package org.twinbar.study.table;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.method.Input;
import org.twinbar.method.Named;

/** The table of a test whose readings will be typed: specimens, and blank cells beside them. */
public final class BlankTable {

    /** What each column of a list without a header is, in this order. */
    private static final List<String> HEADERS =
            List.of("specimen", "group", "print_run", "mix", "orientation");

    private BlankTable() {}

    /**
     * What is typed of each specimen.
     *
     * @param named an input or a word
     * @param times how often an input is read, 1 or more
     */
    public record Asked(Named named, int times) {
        public Asked {
            if (times < 1) {
                throw new IllegalArgumentException("asked " + times + " times");
            }
        }

        /** Whether a list has a column for it already, under whatever unit. */
        private boolean isIn(Column column) {
            return Presets.key(column.name()).equals(Presets.key(named.name()));
        }

        private List<String> headers() {
            if (times == 1 || !(named instanceof Input input)) {
                return List.of(named.column());
            }
            List<String> headers = new ArrayList<>();
            for (int i = 1; i <= times; i++) {
                String unit = input.unit().code();
                headers.add(input.name() + "_" + i + (unit.isEmpty() ? "" : "_" + unit));
            }
            return headers;
        }
    }

    /**
     * Makes the table of a test to which no curve belongs.
     *
     * @param name what its file is called
     * @param specimens a line each: code, group, and where it matters print run, mix, orientation;
     *     or any table whose header says so
     * @throws InputException where the list can't be read, or a code stands there twice
     */
    public static Upload of(String name, String specimens, List<Asked> asked) {
        return of(name, specimens, asked, List.of());
    }

    /** Makes the table, with room for the name of each specimen's curve. */
    public static Upload withCurves(String name, String specimens, List<Asked> asked) {
        return of(name, specimens, asked, List.of(Columns.CURVE_HEADER));
    }

    private static Upload of(
            String name, String specimens, List<Asked> asked, List<String> further) {
        Table listed = read(specimens);
        List<String> headers =
                new ArrayList<>(listed.columns().stream().map(Column::header).toList());
        List<String> fresh = asked.stream()
                .filter(it -> listed.columns().stream().noneMatch(it::isIn))
                .flatMap(it -> it.headers().stream())
                .collect(Collectors.toCollection(ArrayList::new));
        further.stream()
                .filter(header -> listed.columns().stream()
                        .noneMatch(it -> Presets.key(it.header()).equals(Presets.key(header))))
                .forEach(fresh::add);
        headers.addAll(fresh);
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(headers);
            for (Row row : listed.rows()) {
                List<String> cells = new ArrayList<>();
                listed.columns()
                        .forEach(column -> cells.add(
                                column.index() < row.cells().size()
                                        ? row.cells().get(column.index())
                                        : ""));
                fresh.forEach(header -> cells.add(""));
                csv.writeRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Upload table = Upload.of(name, text.toString().getBytes(StandardCharsets.UTF_8));
        requireReadAlike(listed, table);
        return table;
    }

    private static Table read(String specimens) {
        List<String> lines = specimens.lines().filter(line -> !line.isBlank()).toList();
        if (lines.isEmpty()) {
            throw new InputException(
                    "write down the specimens: a line each, its code and its group");
        }
        Upload list = upload(lines);
        boolean named = lines.get(0).toLowerCase(Locale.ROOT).matches("\\W*specimen\\b.*");
        if (named) {
            return TableFile.read(list);
        }
        String between = List.of("\t", ";", ",").stream()
                .filter(lines.get(0)::contains)
                .findFirst()
                .orElse(",");
        int columns = lines.get(0).split(between, -1).length;
        if (columns > HEADERS.size()) {
            throw new InputException(
                    ("the first specimen has %s columns; write a header line above it when there are"
                                    + " more than %s")
                            .formatted(columns, HEADERS.size()));
        }
        List<String> whole = new ArrayList<>();
        whole.add(String.join(between, HEADERS.subList(0, columns)));
        whole.addAll(lines);
        return TableFile.read(upload(whole));
    }

    private static Upload upload(List<String> lines) {
        return Upload.of(
                "the list of specimens", String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    /** What a file is like is found from its first lines, which codes of some kinds may mislead. */
    private static void requireReadAlike(Table listed, Upload table) {
        List<String> codes = Columns.codes(listed);
        Set<String> distinct = codes.stream().collect(Collectors.toSet());
        if (codes.isEmpty() || distinct.size() != codes.size()) {
            String twice = codes.stream()
                    .filter(code -> codes.indexOf(code) != codes.lastIndexOf(code))
                    .findFirst()
                    .orElse("");
            throw new InputException(
                    codes.isEmpty()
                            ? "the list of specimens has no column 'specimen'"
                            : "specimen '%s' stands there twice".formatted(twice));
        }
        if (!Columns.codes(TableFile.read(table)).equals(codes)) {
            throw new InputException(
                    "these codes can't be told apart in a table; leave marks out of them");
        }
    }
}
