package org.twinbar.exchange;

import ch.randelshofer.fastdoubleparser.JavaDoubleParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/**
 * Reads the columns of a curve into arrays; the file is streamed, and only the numbers are held.
 *
 * <p>A cell that holds no number is NaN in its row; what is wrong is told as a {@link Problem}.
 */
public final class Curves {

    private static final int SAMPLE = 1 << 20;

    private Curves() {}

    /** A column that is wanted, and the unit that its numbers are wanted in. */
    public record Wanted(String name, Unit unit) {}

    /**
     * What was read.
     *
     * @param values the wanted columns that the file has, by name, all of one length
     * @param problems what is wrong with some rows
     */
    public record Read(
            Map<String, double[]> values,
            List<Column> columns,
            Dialect dialect,
            List<Problem> problems) {

        public int rows() {
            return values.values().stream().mapToInt(it -> it.length).max().orElse(0);
        }
    }

    /**
     * Reads the wanted columns of a file.
     *
     * @throws InputException where it is no table, a column stands there twice or measures
     *     something else, or it may be read in more than one way
     */
    public static Read read(Source source, ReadAs as, List<Wanted> wanted) {
        Place file = Place.of(source.name());
        try (InputStream in = source.open()) {
            byte[] sample = in.readNBytes(SAMPLE);
            if (sample.length == 0) {
                throw file.refuse("is empty");
            }
            if (Spreadsheet.isOne(sample)) {
                return ofTable(Table.read(source, as), wanted);
            }
            Encoding encoding = as.encoding()
                    .or(() -> Encoding.find(sample, sample.length))
                    .orElseThrow(() -> file.refuse("is not a text file, nor a spreadsheet (XLSX)"));
            Layout layout = layout(file, sample, as, encoding);
            InputStream whole = new Rejoined(sample, in);
            whole.skipNBytes(encoding.markLength(sample, sample.length));
            InputStream utf8 = encoding == Encoding.UTF_8 || encoding == Encoding.WINDOWS_1252
                    ? whole
                    : new Recoded(new InputStreamReader(whole, encoding.charset()));
            return new Reading(file, layout, wanted).read(new Lines(utf8, file));
        } catch (IOException e) {
            throw source.unreadable(e);
        }
    }

    /** The first lines tell the layout as a rule; what they leave open, all of the sample may. */
    private static Layout layout(Place file, byte[] sample, ReadAs as, Encoding encoding) {
        int mark = encoding.markLength(sample, sample.length);
        String text = new String(sample, mark, sample.length - mark, encoding.charset());
        List<String> few = Table.lines(text, Layout.LINES);
        if (few.size() == Layout.LINES) {
            try {
                return Layout.ofText(file, few, as, encoding);
            } catch (InputException e) {
                List<String> all = Table.lines(text);
                return Layout.ofText(file, all.subList(0, all.size() - 1), as, encoding);
            }
        }
        boolean cut = sample.length == SAMPLE && few.size() > 1;
        return Layout.ofText(file, cut ? few.subList(0, few.size() - 1) : few, as, encoding);
    }

    private static Read ofTable(Table table, List<Wanted> wanted) {
        Place file = Place.of(table.name());
        Layout layout = new Layout(table.dialect(), table.columns());
        Reading reading = new Reading(file, layout, wanted);
        table.rows().forEach(row -> reading.take(row.line(), row.cells()));
        return reading.done();
    }

    /** One file on its way into arrays. */
    private static final class Reading {
        private final Place file;
        private final Layout layout;
        private final List<Wanted> found = new ArrayList<>();
        private final List<Column> from = new ArrayList<>();
        private final int[] wantedAt;
        private final double[] row;
        private double[][] values;
        private int rows;
        private int wrong;
        private Place firstWrong;

        Reading(Place file, Layout layout, List<Wanted> wanted) {
            this.file = file;
            this.layout = layout;
            this.firstWrong = file;
            int last = -1;
            for (Wanted each : wanted) {
                List<Column> called = layout.columns().stream()
                        .filter(column ->
                                Column.key(column.label()).equals(Column.key(each.name())))
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
            values = new double[from.size()][1024];
        }

        Read read(Lines lines) throws IOException {
            int header = layout.dialect().lastHeaderLine();
            boolean plain = layout.dialect().decimalMark() == DecimalMark.POINT
                    && layout.dialect().thousands() == Thousands.PLAIN
                    && layout.dialect().delimiter() != Delimiter.BLANKS;
            while (lines.advance()) {
                if (lines.number() > header && !(plain && takePlain(lines))) {
                    String text = new String(
                            lines.bytes(),
                            lines.from(),
                            lines.to() - lines.from(),
                            layout.dialect().encoding() == Encoding.WINDOWS_1252
                                    ? layout.dialect().encoding().charset()
                                    : StandardCharsets.UTF_8);
                    take(lines.number(), layout.dialect().delimiter().split(text));
                }
            }
            return done();
        }

        /** Takes a line of plain numbers from its bytes; false where it holds anything else. */
        private boolean takePlain(Lines lines) {
            byte[] bytes = lines.bytes();
            byte sign = (byte) layout.dialect().delimiter().sign();
            int cell = lines.from();
            int taken = 0;
            for (int column = 0; column < wantedAt.length; column++) {
                int end = cell;
                while (end < lines.to() && bytes[end] != sign) {
                    if (bytes[end] == '"') {
                        return false;
                    }
                    end++;
                }
                int at = wantedAt[column];
                if (at >= 0) {
                    if (end == cell) {
                        return false;
                    }
                    try {
                        row[at] = JavaDoubleParser.parseDouble(bytes, cell, end - cell);
                    } catch (NumberFormatException e) {
                        return false;
                    }
                    if (!Double.isFinite(row[at])) {
                        return false;
                    }
                    taken++;
                }
                cell = Math.min(end + 1, lines.to());
            }
            if (taken < row.length) {
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
                return Numbers.parse(cell, layout.dialect().decimalMark().sign());
            } catch (QuantityException e) {
                return Double.NaN;
            }
        }

        private void keep() {
            if (row.length > 0 && rows == values[0].length) {
                for (int i = 0; i < values.length; i++) {
                    values[i] = Arrays.copyOf(values[i], 2 * rows);
                }
            }
            for (int i = 0; i < row.length; i++) {
                values[i][rows] = row[i];
            }
            rows++;
        }

        Read done() {
            Map<String, double[]> byName = new LinkedHashMap<>();
            for (int i = 0; i < row.length; i++) {
                double[] exact = Arrays.copyOf(values[i], rows);
                convert(from.get(i), found.get(i), exact);
                byName.put(found.get(i).name(), exact);
            }
            List<Problem> problems = wrong == 0
                    ? List.of()
                    : List.of(new Problem(firstWrong, wrong, "no number stands where one belongs"));
            return new Read(byName, layout.columns(), layout.dialect(), problems);
        }

        private void convert(Column column, Wanted wanted, double[] exact) {
            try {
                column.unit().orElse(wanted.unit()).to(wanted.unit()).apply(exact);
            } catch (QuantityException e) {
                throw file.column(column.header()).refuse(e.getMessage());
            }
        }
    }

    /** A stream whose beginning was read already. */
    private static final class Rejoined extends InputStream {
        private final InputStream first;
        private final InputStream rest;

        Rejoined(byte[] first, InputStream rest) {
            this.first = new ByteArrayInputStream(first);
            this.rest = rest;
        }

        @Override
        public int read() throws IOException {
            int one = first.read();
            return one >= 0 ? one : rest.read();
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            int read = first.read(into, offset, length);
            return read > 0 || length == 0 ? read : rest.read(into, offset, length);
        }
    }

    /** Letters as UTF-8. */
    private static final class Recoded extends InputStream {
        private final Reader reader;
        private final char[] letters = new char[1 << 13];
        private byte[] bytes = new byte[0];
        private int at;

        Recoded(Reader reader) {
            this.reader = reader;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int offset, int length) throws IOException {
            while (at == bytes.length) {
                int read = reader.read(letters, 0, letters.length - 1);
                if (read < 0) {
                    return -1;
                }
                boolean half = read > 0 && Character.isHighSurrogate(letters[read - 1]);
                int more = half ? Math.max(reader.read(letters, read, 1), 0) : 0;
                bytes = new String(letters, 0, read + more).getBytes(StandardCharsets.UTF_8);
                at = 0;
            }
            int count = Math.min(length, bytes.length - at);
            System.arraycopy(bytes, at, into, offset, count);
            at += count;
            return count;
        }
    }
}
