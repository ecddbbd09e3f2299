package org.twinbar.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.SequenceInputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.quantity.Unit;

/**
 * Reads the columns of a curve into arrays; the file is streamed, and only the numbers are held.
 *
 * <p>A cell that holds no number is NaN in its row; what is wrong is told as a {@link Problem}.
 */
public final class Curves {

    private static final int SAMPLE = 1 << 20;

    /** Bytes that are looked at before all of the sample is. */
    private static final int FEW = 1 << 12;

    private static final byte[] NOTHING = {};

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
     * @throws InputException where it is no table, has more than 5 million rows, a column stands
     *     there twice or measures something else, or it may be read in more than one way
     */
    public static Read read(Source source, ReadAs as, List<Wanted> wanted) {
        Place file = Place.of(source.name());
        try (InputStream in = source.open()) {
            byte[] held = source.held().orElseGet(() -> NOTHING);
            byte[] sample = held == NOTHING ? in.readNBytes(SAMPLE) : held;
            int length = Math.min(sample.length, SAMPLE);
            if (length == 0) {
                throw file.refuse("is empty");
            }
            if (Spreadsheet.isOne(sample)) {
                return ofTable(Table.read(source, as), wanted);
            }
            Encoding encoding = as.encoding()
                    .or(() -> Encoding.find(sample, length))
                    .orElseThrow(() -> file.refuse("is not a text file, nor a spreadsheet (XLSX)"));
            Layout layout = layout(file, sample, length, as, encoding);
            int mark = encoding.markLength(sample, length);
            boolean wide = encoding == Encoding.UTF_16LE || encoding == Encoding.UTF_16BE;
            Lines lines;
            if (wide) {
                InputStream all = new SequenceInputStream(
                        new ByteArrayInputStream(sample, mark, sample.length - mark), in);
                InputStream rest = held == NOTHING
                        ? all
                        : new ByteArrayInputStream(held, mark, held.length - mark);
                lines = new Lines(
                        new Recoded(new InputStreamReader(rest, encoding.charset())), file);
            } else {
                lines = new Lines(
                        sample, mark, held == NOTHING ? in : InputStream.nullInputStream(), file);
            }
            return new CurveReading(file, layout, wanted).read(lines);
        } catch (IOException e) {
            throw source.unreadable(e);
        }
    }

    /** The first lines tell the layout as a rule; what they leave open, all of the sample may. */
    private static Layout layout(
            Place file, byte[] sample, int length, ReadAs as, Encoding encoding) {
        int mark = encoding.markLength(sample, length);
        if (length > FEW) {
            if (encoding == Encoding.UTF_8 && as.equals(ReadAs.found())) {
                Optional<Layout> plain = PlainLayout.find(file, sample, mark, FEW);
                if (plain.isPresent()) {
                    return plain.get();
                }
            }
            try {
                List<String> few = lines(sample, mark, FEW, encoding);
                Layout layout = Layout.ofText(file, few, as, encoding);
                if (layout.isCertain() || !has(sample, length, (byte) ',')) {
                    return layout;
                }
            } catch (InputException e) {
                // The whole sample says it better, or knows better.
            }
        }
        return Layout.ofText(file, lines(sample, mark, length, encoding), as, encoding);
    }

    /** Returns the whole lines; the last one too where the file ends there. */
    private static List<String> lines(byte[] bytes, int from, int to, Encoding encoding) {
        List<String> lines = Table.lines(new String(bytes, from, to - from, encoding.charset()));
        boolean cut = to < bytes.length || to == SAMPLE;
        return cut && lines.size() > 1 ? lines.subList(0, lines.size() - 1) : lines;
    }

    private static boolean has(byte[] bytes, int length, byte wanted) {
        for (int i = 0; i < length; i++) {
            if (bytes[i] == wanted) {
                return true;
            }
        }
        return false;
    }

    private static Read ofTable(Table table, List<Wanted> wanted) {
        Layout layout = new Layout(table.dialect(), table.columns(), true);
        CurveReading reading = new CurveReading(Place.of(table.name()), layout, wanted);
        table.rows().forEach(row -> reading.take(row.line(), row.cells()));
        return reading.done();
    }
}
