package org.twinbar.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.twinbar.quantity.Unit;

/**
 * How a file is laid out, found from its first rows: what parts its columns, which line names them,
 * which mark its decimals have.
 *
 * @param isCertain whether the rows told the decimal mark, or a person did; otherwise it is taken
 *     to be the point, and later rows may tell otherwise
 */
record Layout(Dialect dialect, List<Column> columns, boolean isCertain) {

    /** Lines that tell delimiter and header. */
    static final int LINES = 100;

    private static final Pattern IN_BRACKETS = Pattern.compile("[(\\[].*[)\\]]");

    /**
     * Finds the layout of a text.
     *
     * @param file for messages
     * @param lines the first lines of the file, whole ones; as many as it takes are looked at
     */
    static Layout ofText(Place file, List<String> lines, ReadAs as, Encoding encoding) {
        List<String> few = lines.subList(0, Math.min(lines.size(), LINES));
        Parting parting = as.delimiter()
                .map(delimiter -> Parting.at(delimiter, few))
                .orElseGet(() -> Parting.found(few));
        if (parting.header().isEmpty() && few.size() < lines.size()) {
            parting = as.delimiter()
                    .map(delimiter -> Parting.at(delimiter, lines))
                    .orElseGet(() -> Parting.found(lines));
        }
        Marks marks = new Marks(file);
        Layout layout = of(file, parting, marks, as, encoding);
        Delimiter delimiter = parting.delimiter();
        for (int i = LINES; i < lines.size() && !marks.areSeen(); i++) {
            String line = lines.get(i);
            if (delimiter != Delimiter.COMMA && line.indexOf(',') < 0 && line.indexOf('.') < 0) {
                continue;
            }
            marks.see(new Row(i + 1, delimiter.split(line)));
        }
        return layout.with(marks, as);
    }

    /** Finds the layout of a spreadsheet, which is parted into cells already. */
    static Layout ofCells(Place file, List<Row> rows, ReadAs as) {
        List<Row> filled =
                rows.stream().filter(row -> !row.isBlank()).limit(LINES).toList();
        Marks marks = new Marks(file);
        Parting parting = Parting.of(Delimiter.CELLS, filled);
        return of(file, parting, marks, as, Encoding.UTF_8).with(marks, as);
    }

    private static Layout of(
            Place file, Parting parting, Marks marks, ReadAs as, Encoding encoding) {
        List<Row> rows = parting.rows();
        if (rows.isEmpty()) {
            throw file.refuse("is empty: there is no header and no row");
        }
        int header = parting.header()
                .orElseThrow(() -> file.line(rows.get(Math.min(parting.first(), rows.size() - 1))
                                .line())
                        .refuse("holds numbers where the columns should be named; write a header"
                                + " line such as time_s,force_N above them"));
        List<Column> columns = columns(file, rows.get(header), as);
        OptionalInt unitLine = OptionalInt.empty();
        int next = header + 1;
        if (next < rows.size() && isUnits(rows.get(next))) {
            Row units = rows.get(next);
            unitLine = OptionalInt.of(units.line());
            columns = columns.stream()
                    .map(column -> column.withUnitBelow(unit(units.cell(column.index()))))
                    .toList();
            next++;
        }
        rows.subList(next, rows.size()).forEach(marks::see);
        return new Layout(
                new Dialect(
                        encoding,
                        parting.delimiter(),
                        DecimalMark.POINT,
                        Thousands.PLAIN,
                        rows.get(header).line(),
                        unitLine),
                columns,
                false);
    }

    /** A person who says the decimal mark says by it what the other mark is for. */
    private Layout with(Marks marks, ReadAs as) {
        DecimalMark mark = as.decimalMark().orElseGet(marks::decimal);
        Thousands thousands = as.decimalMark().isPresent() ? Thousands.GROUPED : marks.thousands();
        return new Layout(
                dialect.with(mark, thousands),
                columns,
                as.decimalMark().isPresent() || marks.areSeen());
    }

    static List<Column> columns(Place file, Row header, ReadAs as) {
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < header.filledWidth(); i++) {
            columns.add(Column.of(i, header.cell(i)));
        }
        for (ReadAs.NamedColumn byHand : as.columns()) {
            int found = -1;
            for (Column column : columns) {
                found = column.isCalled(byHand.header()) ? column.index() : found;
            }
            if (found < 0) {
                List<String> headers = columns.stream().map(Column::header).toList();
                throw file.refuse("there is no column '%s' among %s%s"
                        .formatted(
                                byHand.header(),
                                String.join(", ", headers),
                                Spelling.hint(byHand.header(), headers)));
            }
            columns.set(found, columns.get(found).named(byHand));
        }
        return columns;
    }

    static boolean isUnits(Row row) {
        boolean any = false;
        for (String cell : row.cells()) {
            if (cell.isEmpty() || cell.equals("-")) {
                continue;
            }
            if (unit(cell).isEmpty()) {
                return false;
            }
            any = true;
        }
        return any;
    }

    private static Optional<Unit> unit(String cell) {
        String bare =
                IN_BRACKETS.matcher(cell).matches() ? cell.substring(1, cell.length() - 1) : cell;
        return bare.isBlank() || Numeral.of(bare).isNumber() ? Optional.empty() : Unit.find(bare);
    }
}
