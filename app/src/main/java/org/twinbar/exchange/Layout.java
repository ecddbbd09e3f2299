package org.twinbar.exchange;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.twinbar.quantity.Unit;

/**
 * How a file is laid out, found from its first rows: what parts its columns, which line names them,
 * which mark its decimals have.
 */
record Layout(Dialect dialect, List<Column> columns) {

    private static final Delimiter[] IN_ORDER = {
        Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA, Delimiter.BLANKS
    };

    /** Share of the lines that must have the same number of columns. */
    private static final double MOST = 0.5;

    /** Lines that are looked at for the number of columns. */
    static final int LINES = 500;

    private static final Pattern TWO_NUMBERS = Pattern.compile("[-+]?\\d+\\s+[-+]?\\d+");
    private static final Pattern IN_BRACKETS = Pattern.compile("[(\\[].*[)\\]]");

    /**
     * Finds the layout of a text.
     *
     * @param file for messages
     * @param lines the first lines of the file, whole ones
     */
    static Layout ofText(Place file, List<String> lines, ReadAs as, Encoding encoding) {
        Delimiter delimiter = as.delimiter().orElseGet(() -> delimiter(lines));
        return of(file, new Parted(lines, delimiter), as, encoding, delimiter);
    }

    /** Lines that are parted when they are looked at, for most of them never are. */
    private static final class Parted extends AbstractList<Row> {
        private final List<String> lines;
        private final Delimiter delimiter;

        Parted(List<String> lines, Delimiter delimiter) {
            this.lines = lines;
            this.delimiter = delimiter;
        }

        @Override
        public Row get(int index) {
            return new Row(index + 1, delimiter.split(lines.get(index)));
        }

        @Override
        public int size() {
            return lines.size();
        }
    }

    /** Finds the layout of rows that are parted into cells already. */
    static Layout of(
            Place file, List<Row> rows, ReadAs as, Encoding encoding, Delimiter delimiter) {
        int width = commonWidth(rows);
        Row header = rows.stream()
                .filter(row ->
                        row.filledWidth() >= Math.max(1, Math.min(width, 2)) && fits(row, width))
                .findFirst()
                .orElseThrow(() -> file.refuse("is empty: there is no header and no row"));
        if (header.cells().stream().anyMatch(cell -> Numeral.of(cell).isNumber())
                && header.cells().stream().noneMatch(Layout::isWord)) {
            throw file.line(header.line())
                    .refuse("holds numbers where the columns should be named; write a header line"
                            + " such as time_s,force_N above them");
        }
        List<Column> columns = columns(file, header, as);
        Optional<Row> units = rows.stream()
                .filter(row -> row.line() > header.line() && !row.isBlank())
                .findFirst()
                .filter(Layout::isUnits);
        OptionalInt unitLine = OptionalInt.empty();
        if (units.isPresent()) {
            unitLine = OptionalInt.of(units.get().line());
            columns = columns.stream()
                    .map(column -> column.withUnitBelow(unit(units.get().cell(column.index()))))
                    .toList();
        }
        Marks marks = Marks.below(unitLine.orElse(header.line()), rows);
        DecimalMark mark = as.decimalMark().orElseGet(() -> marks.decimal(file));
        return new Layout(
                new Dialect(encoding, delimiter, mark, marks.thousands(), header.line(), unitLine),
                columns);
    }

    private static Delimiter delimiter(List<String> lines) {
        for (Delimiter delimiter : IN_ORDER) {
            List<List<String>> parted = lines.stream()
                    .limit(LINES)
                    .filter(line -> !line.isBlank())
                    .map(delimiter::split)
                    .toList();
            int width =
                    commonWidth(parted.stream().map(cells -> new Row(0, cells)).toList());
            long fitting =
                    parted.stream().filter(cells -> cells.size() == width).count();
            boolean cutsNumbers = delimiter == Delimiter.COMMA
                    && parted.stream()
                            .flatMap(List::stream)
                            .anyMatch(cell -> TWO_NUMBERS.matcher(cell).matches());
            if (width >= 2 && fitting >= MOST * parted.size() && !cutsNumbers) {
                return delimiter;
            }
        }
        return Delimiter.NONE;
    }

    private static int commonWidth(List<Row> rows) {
        Map<Integer, Integer> counts = new HashMap<>();
        rows.stream()
                .limit(LINES)
                .filter(row -> !row.isBlank())
                .forEach(row -> counts.merge(row.cells().size(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Comparator.<Map.Entry<Integer, Integer>>comparingInt(Map.Entry::getValue)
                        .thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey)
                .orElse(0);
    }

    /** A header may lack the delimiter that ends each row below it. */
    private static boolean fits(Row row, int width) {
        return row.cells().size() == width
                || row.filledWidth() == width
                || row.filledWidth() == width - 1 && width > 2;
    }

    private static boolean isWord(String cell) {
        return Numeral.of(cell) == Numeral.TEXT;
    }

    private static List<Column> columns(Place file, Row header, ReadAs as) {
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

    private static boolean isUnits(Row row) {
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

    /** Which decimal marks were seen. */
    private record Marks(int points, int commas, int grouped, String maybe) {

        /** Looks on for as long as nothing tells the decimal mark, and at many rows in any case. */
        static Marks below(int headerLine, List<Row> rows) {
            int points = 0;
            int commas = 0;
            int grouped = 0;
            String maybe = "";
            int seen = 0;
            for (Row row : rows) {
                if (row.line() <= headerLine) {
                    continue;
                }
                if (seen++ > LINES && (points + commas > 0 || maybe.isEmpty())) {
                    break;
                }
                for (String cell : row.cells()) {
                    switch (Numeral.of(cell)) {
                        case POINT -> points++;
                        case COMMA -> commas++;
                        case POINT_GROUPED -> {
                            points++;
                            grouped++;
                        }
                        case COMMA_GROUPED -> {
                            commas++;
                            grouped++;
                        }
                        case MAYBE_COMMA -> maybe = maybe.isEmpty() ? cell : maybe;
                        default -> {}
                    }
                }
            }
            return new Marks(points, commas, grouped, maybe);
        }

        DecimalMark decimal(Place file) {
            if (points > 0 && commas > 0) {
                throw file.refuse("has decimal points and decimal commas; say which one it is by"
                        + " --decimal point or --decimal comma");
            }
            if (points + commas == 0 && !maybe.isEmpty()) {
                throw file.refuse(
                        "'%s' may be a thousand or one and a bit; say --decimal point or --decimal comma"
                                .formatted(maybe));
            }
            return commas > 0 ? DecimalMark.COMMA : DecimalMark.POINT;
        }

        Thousands thousands() {
            return grouped > 0 ? Thousands.GROUPED : Thousands.PLAIN;
        }
    }
}
