package org.twinbar.exchange;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.quantity.QuantityException;

/** One curve on its way from rows into arrays. */
final class CurveReading {

    /** Rows that a curve may have; three channels of as many are 120 MB. */
    static final int MOST_ROWS = 5_000_000;

    private static final int FIRST_ROOM = 4096;

    private final Place file;
    private final Layout layout;
    private final List<Curves.Wanted> found = new ArrayList<>();
    private final List<Column> from = new ArrayList<>();
    private final int[] wantedAt;
    private final double[] row;
    private final Decimals decimals = new Decimals();
    private final byte mark;
    private final byte sign;
    private final boolean atBlanks;
    private double[][] values;
    private int rows;
    private int wrong;
    private Place firstWrong;

    CurveReading(Place file, Layout layout, List<Curves.Wanted> wanted) {
        this.file = file;
        this.layout = layout;
        this.firstWrong = file;
        int last = -1;
        for (Curves.Wanted each : wanted) {
            List<Column> called = layout.columns().stream()
                    .filter(column -> Column.key(column.label()).equals(Column.key(each.name())))
                    .toList();
            if (called.size() > 1) {
                throw file.refuse("the columns '%s' and '%s' are the same thing; keep one"
                        .formatted(called.get(0).header(), called.get(1).header()));
            }
            for (Column column : called) {
                found.add(each);
                from.add(column);
                last = Math.max(last, column.index());
            }
        }
        wantedAt = new int[last + 1];
        Arrays.fill(wantedAt, -1);
        for (int i = 0; i < from.size(); i++) {
            wantedAt[from.get(i).index()] = i;
        }
        row = new double[from.size()];
        mark = (byte) layout.dialect().decimalMark().sign();
        sign = (byte) layout.dialect().delimiter().sign();
        atBlanks = layout.dialect().delimiter() == Delimiter.BLANKS;
        values = new double[from.size()][FIRST_ROOM];
    }

    Curves.Read read(Lines lines) throws IOException {
        Dialect dialect = layout.dialect();
        Charset charset = dialect.encoding() == Encoding.WINDOWS_1252
                ? dialect.encoding().charset()
                : StandardCharsets.UTF_8;
        int lastHeaderLine = dialect.lastHeaderLine();
        while (true) {
            boolean isRow = lines.number() >= lastHeaderLine;
            int behind = isRow ? takePlain(lines.bytes(), lines.next(), lines.filled()) : -1;
            if (behind >= 0) {
                lines.pass(behind);
            } else if (!lines.advance()) {
                return done();
            } else if (isRow) {
                String text =
                        new String(lines.bytes(), lines.from(), lines.to() - lines.from(), charset);
                take(lines.number(), dialect.delimiter().split(text));
            }
        }
    }

    /**
     * Takes the line that begins at a byte where it holds plain numbers alone.
     *
     * @return where the next line begins; -1 where the line holds anything else or may not be read
     *     to its end yet, and was not taken
     */
    private int takePlain(byte[] bytes, int from, int filled) {
        int at = from;
        for (int column = 0; column < wantedAt.length; column++) {
            if (column > 0) {
                if (at == filled || !isBetween(bytes[at])) {
                    return -1;
                }
                at++;
            }
            at = behindBlanks(bytes, at, filled);
            int wanted = wantedAt[column];
            if (wanted >= 0) {
                row[wanted] = decimals.read(bytes, at, filled, mark);
                if (Double.isNaN(row[wanted])) {
                    return -1;
                }
                at = decimals.end();
            } else {
                at = behindCell(bytes, at, filled);
            }
            at = atBlanks ? at : behindBlanks(bytes, at, filled);
        }
        if (at == from || at == filled || !isBetween(bytes[at]) && !isEnd(bytes[at])) {
            return -1;
        }
        while (at < filled && !isEnd(bytes[at])) {
            at++;
        }
        if (at == filled || bytes[at] == '\r' && at + 1 == filled) {
            return -1;
        }
        keep();
        return at + (bytes[at] == '\r' && bytes[at + 1] == '\n' ? 2 : 1);
    }

    private boolean isBetween(byte letter) {
        return letter == sign || atBlanks && letter == '\t';
    }

    private static boolean isEnd(byte letter) {
        return letter == '\n' || letter == '\r';
    }

    private int behindBlanks(byte[] bytes, int from, int filled) {
        int at = from;
        while (at < filled && (bytes[at] == ' ' || atBlanks && bytes[at] == '\t')) {
            at++;
        }
        return at;
    }

    /** A quote may hide what parts the cells: the line ends there for who reads plain ones. */
    private int behindCell(byte[] bytes, int from, int filled) {
        int at = from;
        while (at < filled && !isBetween(bytes[at]) && !isEnd(bytes[at]) && bytes[at] != '"') {
            at++;
        }
        return at;
    }

    void take(int line, List<String> cells) {
        int numbers = 0;
        boolean blank = true;
        for (int i = 0; i < row.length; i++) {
            int index = from.get(i).index();
            String cell = index < cells.size() ? cells.get(index) : "";
            blank &= cell.isEmpty();
            row[i] = number(cell);
            numbers += Double.isNaN(row[i]) ? 0 : 1;
        }
        if (blank) {
            return;
        }
        if (numbers < row.length) {
            firstWrong = wrong == 0 ? file.line(line) : firstWrong;
            wrong++;
        }
        // A line of words alone is a remark below the numbers, not a row.
        if (numbers > 0 || cells.stream().anyMatch(it -> Numeral.of(it) == Numeral.MISSING)) {
            keep();
        }
    }

    private double number(String cell) {
        if (!Numeral.of(cell).isNumber()) {
            return Double.NaN;
        }
        try {
            return layout.dialect().number(cell);
        } catch (QuantityException e) {
            return Double.NaN;
        }
    }

    private void keep() {
        if (rows == MOST_ROWS) {
            throw file.refuse("has more than 5 million rows, the limit of a curve");
        }
        for (int i = 0; i < row.length; i++) {
            if (rows == values[i].length) {
                values[i] = Arrays.copyOf(values[i], Math.min(2 * rows, MOST_ROWS));
            }
            values[i][rows] = row[i];
        }
        rows++;
    }

    Curves.Read done() {
        Map<String, double[]> byName = new LinkedHashMap<>();
        for (int i = 0; i < row.length; i++) {
            double[] exact = Arrays.copyOf(values[i], rows);
            values[i] = exact;
            convert(from.get(i), found.get(i), exact);
            byName.put(found.get(i).name(), exact);
        }
        List<Problem> problems = wrong == 0
                ? List.of()
                : List.of(new Problem(firstWrong, wrong, "no number stands where one belongs"));
        return new Curves.Read(byName, layout.columns(), layout.dialect(), problems);
    }

    private void convert(Column column, Curves.Wanted wanted, double[] exact) {
        try {
            column.unit().orElse(wanted.unit()).to(wanted.unit()).apply(exact);
        } catch (QuantityException e) {
            throw file.column(column.header()).refuse(e.getMessage());
        }
    }
}
