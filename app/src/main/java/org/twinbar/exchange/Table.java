package org.twinbar.exchange;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.quantity.Unit;

/**
 * A table that is held in memory: of specimens, of results.
 *
 * @param name of the file, as it was given
 * @param columns in their order
 * @param rows those that hold something
 * @param dialect how it was read
 */
public record Table(String name, List<Column> columns, List<Row> rows, Dialect dialect) {

    private static final int SAMPLE = 1 << 20;

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** @throws InputException where it is no table, or may be read in more than one way */
    public static Table read(Source source, ReadAs as) {
        Place file = Place.of(source.name());
        byte[] bytes = source.bytes();
        if (bytes.length == 0) {
            throw file.refuse("is empty");
        }
        return Spreadsheet.isOne(bytes) ? ofSheet(file, bytes, as) : ofText(file, bytes, as);
    }

    private static Table ofSheet(Place file, byte[] bytes, ReadAs as) {
        List<Row> rows = Spreadsheet.rows(file, bytes, as);
        Layout layout = Layout.ofCells(file, rows, as);
        return of(file, layout, rows);
    }

    private static Table ofText(Place file, byte[] bytes, ReadAs as) {
        int sampled = Math.min(bytes.length, SAMPLE);
        Encoding encoding = as.encoding()
                .or(() -> Encoding.find(bytes, sampled))
                .orElseThrow(() -> file.refuse("is not a text file, nor a spreadsheet (XLSX)"));
        int mark = encoding.markLength(bytes, bytes.length);
        String text = new String(bytes, mark, bytes.length - mark, encoding.charset());
        List<String> first = lines(text.length() > SAMPLE ? text.substring(0, SAMPLE) : text);
        Layout layout = Layout.ofText(file, first, as, encoding);
        return of(file, layout, rows(file, text, layout.dialect()));
    }

    static List<String> lines(String text) {
        return lines(text, Integer.MAX_VALUE);
    }

    /** Returns the lines of a text, the first ones alone where there are more. */
    static List<String> lines(String text, int most) {
        List<String> lines = new ArrayList<>();
        int from = 0;
        for (int at = 0; at < text.length(); at++) {
            if (lines.size() == most) {
                return lines;
            }
            char c = text.charAt(at);
            if (c == '\n' || c == '\r') {
                lines.add(text.substring(from, at));
                boolean two = c == '\r' && at + 1 < text.length() && text.charAt(at + 1) == '\n';
                at += two ? 1 : 0;
                from = at + 1;
            }
        }
        lines.add(text.substring(from));
        return lines;
    }

    private static List<Row> rows(Place file, String text, Dialect dialect) {
        List<Row> rows = new ArrayList<>();
        Delimiter delimiter = dialect.delimiter();
        if (delimiter == Delimiter.BLANKS || delimiter == Delimiter.NONE) {
            List<String> lines = lines(text);
            for (int i = 0; i < lines.size(); i++) {
                rows.add(new Row(i + 1, delimiter.split(lines.get(i))));
            }
            return rows;
        }
        int skipped = dialect.headerLine() - 1;
        String body = text.lines().skip(skipped).collect(Collectors.joining("\n"));
        try (CsvReader<CsvRecord> records = CsvReader.builder()
                .fieldSeparator(delimiter.sign())
                .allowMissingFields(true)
                .allowExtraFields(true)
                .trimWhitespacesAroundQuotes(true)
                .ofCsvRecord(body)) {
            for (CsvRecord record : records) {
                rows.add(new Row(
                        (int) record.getStartingLineNumber() + skipped,
                        record.getFields().stream().map(String::strip).toList()));
            }
        } catch (CsvParseException | java.io.IOException e) {
            throw file.refuse("can't be read as a table: " + e.getMessage());
        }
        return rows;
    }

    private static Table of(Place file, Layout layout, List<Row> all) {
        int last = layout.dialect().lastHeaderLine();
        List<Row> rows = new ArrayList<>();
        for (Row row : all) {
            if (row.line() > last && !row.isBlank()) {
                if (row.filledWidth() > layout.columns().size()) {
                    throw file.line(row.line())
                            .refuse("has %s cells, the header names %s columns"
                                    .formatted(
                                            row.filledWidth(), layout.columns().size()));
                }
                rows.add(row);
            }
        }
        for (Column column : layout.columns()) {
            boolean used =
                    rows.stream().anyMatch(row -> !row.cell(column.index()).isEmpty());
            if (column.header().isEmpty() && used) {
                throw file.line(layout.dialect().headerLine())
                        .refuse("column %s has values and no name".formatted(column.index() + 1));
            }
        }
        List<Column> named =
                layout.columns().stream().filter(it -> !it.header().isEmpty()).toList();
        refuseRepeated(file.line(layout.dialect().headerLine()), named);
        List<Column> shares = named.stream()
                .filter(column -> column.unit().equals(Optional.of(Unit.PERCENT)))
                .toList();
        if (!shares.isEmpty()) {
            rows.replaceAll(row -> withoutPercentSigns(row, shares));
        }
        return new Table(file.file(), named, rows, layout.dialect());
    }

    private static void refuseRepeated(Place header, List<Column> columns) {
        Map<String, Column> seen = new HashMap<>();
        for (Column column : columns) {
            Column before = seen.put(Column.key(column.header()), column);
            if (before != null) {
                throw header.column(column.header())
                        .refuse("stands there twice, as column %s and column %s; keep one"
                                .formatted(before.index() + 1, column.index() + 1));
            }
        }
    }

    /** Below a header with the unit %, a cell may say so once more. */
    private static Row withoutPercentSigns(Row row, List<Column> shares) {
        List<String> cells = new ArrayList<>(row.cells());
        for (Column column : shares) {
            String cell = row.cell(column.index());
            if (cell.endsWith("%")) {
                cells.set(column.index(), cell.substring(0, cell.length() - 1).strip());
            }
        }
        return new Row(row.line(), cells);
    }

    /** Returns the column of this header, with or without its unit. */
    public Optional<Column> column(String name) {
        return columns.stream().filter(column -> column.isCalled(name)).findFirst();
    }

    /** Returns how the file was read, in a sentence. */
    public String explanation() {
        return "%s: read as %s, %s; header in line %s%s; %s"
                .formatted(
                        name,
                        enumerated(columns.stream().map(Column::describe).toList()),
                        dialect.explanation(),
                        dialect.headerLine(),
                        dialect.unitLine().isPresent()
                                ? ", units in line " + dialect.unitLine().getAsInt()
                                : "",
                        rows.size() == 1 ? "1 row" : rows.size() + " rows");
    }

    private static String enumerated(List<String> words) {
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
