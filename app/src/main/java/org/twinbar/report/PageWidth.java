package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.twinbar.report.Sheet.Column;

/**
 * How many columns of a table fit beside each other on a printed page, so that none is cut off at
 * its edge. Words are never broken, and numbers stay on one line.
 */
final class PageWidth {

    /** What A4 leaves between the margins of {@code print.css} (mm). */
    static final double ROOM = 174;

    /** The tables' type, 8.5 points (mm). */
    private static final double EM = 8.5 * 25.4 / 72;

    private static final double BESIDE_TEXT = 2.5;
    private static final double BESIDE_NUMBER = 5;

    private final double[] heads;

    private PageWidth(double[] heads) {
        this.heads = heads;
    }

    /** Returns the room beside these columns, which each part of a table begins with. */
    static PageWidth of(List<Column> columns) {
        return new PageWidth(columns.stream()
                .mapToDouble(it -> text(it.header(), Stream.empty()))
                .toArray());
    }

    /** Lets the first columns be as wide as this row asks. */
    void row(List<String> cells) {
        for (int i = 0; i < heads.length; i++) {
            heads[i] = Math.max(heads[i], text("", Stream.of(cells.get(i))));
        }
    }

    /**
     * Parts columns into tables that a page is wide enough for; one that is too wide by itself has
     * a table of its own.
     *
     * @param most of a table
     * @param width of a column (mm)
     */
    <T> List<List<T>> chunks(List<T> all, int most, ToDoubleFunction<T> width) {
        double beside = java.util.Arrays.stream(heads).sum();
        List<List<T>> chunks = new ArrayList<>();
        List<T> chunk = new ArrayList<>();
        double used = beside;
        for (T each : all) {
            double wide = width.applyAsDouble(each);
            if (!chunk.isEmpty() && (chunk.size() == most || used + wide > ROOM)) {
                chunks.add(List.copyOf(chunk));
                chunk.clear();
                used = beside;
            }
            chunk.add(each);
            used += wide;
        }
        if (!chunk.isEmpty()) {
            chunks.add(List.copyOf(chunk));
        }
        return chunks;
    }

    /** Returns how wide a column of numbers is, whose cells stay on one line (mm). */
    static double number(String header, Stream<String> cells) {
        return Math.max(
                                longestWord(header),
                                cells.mapToDouble(PageWidth::ems).max().orElse(0))
                        * EM
                + BESIDE_NUMBER;
    }

    /** Returns how wide a column is at least, whose cells may have several lines (mm). */
    static double text(String header, Stream<String> cells) {
        double longest = cells.mapToDouble(PageWidth::longestWord).max().orElse(0);
        return Math.max(longestWord(header), longest) * EM + BESIDE_TEXT;
    }

    private static double longestWord(String text) {
        return Stream.of(text.split("[ \\u2009\\u202f]+"))
                .mapToDouble(PageWidth::ems)
                .max()
                .orElse(0);
    }

    /**
     * Returns how wide a text is in the PDF's typeface, on the safe side (em): a digit of it takes
     * 0.556, a blank and a stop 0.278; letters are taken as 0.56, bold ones included.
     */
    static double ems(String text) {
        return text.codePoints()
                .mapToDouble(it -> it == ' ' || it == '.' || it == ',' || it == ':' || it == 0x2009
                        ? 0.28
                        : 0.56)
                .sum();
    }
}
