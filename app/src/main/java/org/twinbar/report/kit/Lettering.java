package org.twinbar.report.kit;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.twinbar.report.Fonts;

/** Text as outlines, so that it looks alike wherever a picture is shown. */
final class Lettering {

    private static final FontRenderContext METRICS = new FontRenderContext(null, true, true);

    private Lettering() {}

    /** Returns the outlines of a text that begins at a place, as the {@code d} of an SVG path. */
    static String path(String text, double x, double y, double size, Fonts.Weight weight) {
        Font font = Fonts.of(weight, (float) size);
        Shape outline =
                font.createGlyphVector(METRICS, shown(text)).getOutline((float) x, (float) y);
        StringBuilder path = new StringBuilder(text.length() * 120);
        double[] at = new double[6];
        for (PathIterator it = outline.getPathIterator(new AffineTransform());
                !it.isDone();
                it.next()) {
            switch (it.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> append(path, 'M', at, 2);
                case PathIterator.SEG_LINETO -> append(path, 'L', at, 2);
                case PathIterator.SEG_QUADTO -> append(path, 'Q', at, 4);
                case PathIterator.SEG_CUBICTO -> append(path, 'C', at, 6);
                default -> path.append('Z');
            }
        }
        return path.toString();
    }

    static double width(String text, double size, Fonts.Weight weight) {
        return Fonts.of(weight, (float) size)
                .createGlyphVector(METRICS, shown(text))
                .getLogicalBounds()
                .getWidth();
    }

    /** Breaks a text into lines no wider than this; a longer word has a line of its own. */
    static List<String> lines(String text, double width, double size, Fonts.Weight weight) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, size, weight) > width) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    /** The typeface has no narrow no-break blank; a thin one is as wide. */
    private static String shown(String text) {
        return text.replace('\u202f', '\u2009');
    }

    private static void append(StringBuilder path, char command, double[] at, int numbers) {
        path.append(command);
        for (int i = 0; i < numbers; i++) {
            path.append(i > 0 ? " " : "").append(number(at[i]));
        }
    }

    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.endsWith(".00") ? text.substring(0, text.length() - 3) : text;
    }
}
