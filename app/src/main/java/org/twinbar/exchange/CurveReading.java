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

    private static final int FIRST_ROOM = 1024;

    private final Place file;
    private final Layout layout;
    private final List<Curves.Wanted> found = new ArrayList<>();
    private final List<Column> from = new ArrayList<>();
    private final int[] wantedAt;
    private final double[] row;
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
        values = new double[from.size()][FIRST_ROOM];
    }

    Curves.Read read(Lines lines) throws IOException {
        Dialect dialect = layout.dialect();
        Charset charset = dialect.encoding() == Encoding.WINDOWS_1252
                ? dialect.encoding().charset()
                : StandardCharsets.UTF_8;
        while (lines.advance()) {
            if (lines.number() > dialect.lastHeaderLine() && !takePlain(lines)) {
                String text =
                        new String(lines.bytes(), lines.from(), lines.to() - lines.from(), charset);
                take(lines.number(), dialect.delimiter().split(text));
            }
        }
        return done();
    }

    /** Takes a line of plain numbers from its bytes; false where it holds anything else. */
    private boolean takePlain(Lines lines) {
        byte[] bytes = lines.bytes();
        byte mark = (byte) layout.dialect().decimalMark().sign();
        boolean atBlanks = layout.dialect().delimiter() == Delimiter.BLANKS;
        byte sign = (byte) layout.dialect().delimiter().sign();
        int to = lines.to();
        int cell = lines.from();
        int taken = 0;
        for (int column = 0; column < wantedAt.length; column++) {
            while (atBlanks && cell < to && (bytes[cell] == ' ' || bytes[cell] == '\t')) {
                cell++;
            }
            int end = cell;
            while (end < to && bytes[end] != sign && !(atBlanks && bytes[end] == '\t')) {
                if (bytes[end] == '"') {
                    return false;
                }
                end++;
            }
            int at = wantedAt[column];
            if (at >= 0) {
                row[at] = Decimals.parse(bytes, cell, end, mark);
                if (Double.isNaN(row[at])) {
                    return false;
                }
                taken++;
            }
            cell = Math.min(end + 1, to);
        }
        if (taken == 0) {
            return false;
        }
        keep();
        return true;
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
