package org.twinbar.exchange;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Knows the plainest of curve files from its bytes: a line of names, and rows of plain numbers with
 * decimal points, parted by a comma, semicolon or tab.
 *
 * <p>Most loggers write it. It finds what {@link Layout#ofText} would, at a hundredth of the cost,
 * or nothing: wherever there is more to weigh, that one does so.
 */
final class PlainLayout {

    private static final byte[] SIGNS = {'\t', ';', ','};
    private static final List<Delimiter> DELIMITERS =
            List.of(Delimiter.TAB, Delimiter.SEMICOLON, Delimiter.COMMA);

    private final byte[] bytes;
    private final int to;
    private final Decimals decimals = new Decimals();
    private boolean seen;

    private PlainLayout(byte[] bytes, int to) {
        this.bytes = bytes;
        this.to = to;
    }

    /**
     * Returns the layout; empty where the lines are not as plain as that, or don't tell the decimal
     * mark.
     *
     * @param from where the first line begins
     * @param to where the last line that is looked at may be cut
     */
    static Optional<Layout> find(Place file, byte[] bytes, int from, int to) {
        return new PlainLayout(bytes, to).find(file, from);
    }

    private Optional<Layout> find(Place file, int from) {
        int end = endOfLine(from);
        int parted = parted(from, end);
        if (parted < 0) {
            return Optional.empty();
        }
        Delimiter delimiter = DELIMITERS.get(parted);
        String header = new String(bytes, from, end - from, Encoding.UTF_8.charset());
        Row names = new Row(1, delimiter.split(header));
        if (!names.cells().stream().allMatch(cell -> Numeral.of(cell) == Numeral.TEXT)) {
            return Optional.empty();
        }
        int width = names.cells().size();
        int at = behind(end);
        int rows = 0;
        while (endOfLine(at) < to) {
            int behind = row(at, SIGNS[parted], width);
            if (behind < 0) {
                return Optional.empty();
            }
            at = behind;
            rows++;
        }
        if (rows == 0 || !seen) {
            return Optional.empty();
        }
        Dialect dialect = new Dialect(
                Encoding.UTF_8,
                delimiter,
                DecimalMark.POINT,
                Thousands.PLAIN,
                1,
                OptionalInt.empty());
        return Optional.of(new Layout(dialect, Layout.columns(file, names, ReadAs.found()), true));
    }

    /** Returns which sign alone parts the names; -1 where none does, or one is quoted. */
    private int parted(int from, int end) {
        int found = -1;
        for (int at = from; at < end; at++) {
            if (bytes[at] == '"') {
                return -1;
            }
            for (int sign = 0; sign < SIGNS.length; sign++) {
                if (bytes[at] == SIGNS[sign]) {
                    if (found >= 0 && found != sign) {
                        return -1;
                    }
                    found = sign;
                }
            }
        }
        return found;
    }

    /** Returns where the next line begins; -1 where this one is no row of plain numbers. */
    private int row(int from, byte sign, int width) {
        int at = from;
        for (int column = 0; column < width; column++) {
            double value = decimals.read(bytes, at, to, (byte) '.');
            int end = decimals.end();
            boolean last = column == width - 1;
            if (Double.isNaN(value) || end == to || !(last ? isEnd(end) : bytes[end] == sign)) {
                return -1;
            }
            seen = seen || isPoint(at, end);
            at = last ? behind(end) : end + 1;
        }
        return at;
    }

    private boolean isPoint(int from, int end) {
        String cell = new String(bytes, from, end - from, Encoding.UTF_8.charset());
        return Numeral.of(cell) == Numeral.POINT;
    }

    private boolean isEnd(int at) {
        return bytes[at] == '\n' || bytes[at] == '\r';
    }

    private int endOfLine(int from) {
        int at = from;
        while (at < to && !isEnd(at)) {
            at++;
        }
        return at;
    }

    private int behind(int end) {
        boolean two = end + 1 < to && bytes[end] == '\r' && bytes[end + 1] == '\n';
        return Math.min(to, end + (two ? 2 : 1));
    }
}
