package org.twinbar.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;

/**
 * Shares by kind of scatter: a row for each, a dot for each number of specimens with the number
 * beside it, and dotted lines at what was promised.
 *
 * @param title what the scale shows
 * @param low left end of the scale
 * @param high right end of the scale
 * @param lines values that a line is drawn at
 */
record DotPlot(String title, double low, double high, double[] lines) {

    private static final int LEFT = 300;
    private static final int WIDTH = 860;
    private static final int RIGHT = 30;
    private static final int TOP = 50;
    private static final int ROW = 34;

    /** A kind of scatter with a value for each number of specimens. */
    record Row(String words, SortedMap<Integer, Double> values) {}

    String of(List<Row> rows) {
        int height = TOP + ROW * rows.size() + 40;
        StringBuilder svg = new StringBuilder();
        svg.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" font-family=\"sans-serif\""
                        + " font-size=\"13\" role=\"img\" aria-label=\"%s\">%n",
                WIDTH, height, title.replace("\"", "&quot;")));
        svg.append(format("<rect width=\"%d\" height=\"%d\" fill=\"#fbfaf7\"/>%n", WIDTH, height));
        svg.append(format(
                "<text x=\"%d\" y=\"22\" fill=\"#1d1d1b\">%s</text>%n", LEFT, escaped(title)));
        int bottom = TOP + ROW * rows.size();
        for (double line : lines) {
            svg.append(format(
                    "<line x1=\"%1$.1f\" y1=\"%2$d\" x2=\"%1$.1f\" y2=\"%3$d\" stroke=\"#1d1d1b\""
                            + " stroke-dasharray=\"2 4\"/><text x=\"%1$.1f\" y=\"%4$d\" text-anchor=\"middle\""
                            + " fill=\"#1d1d1b\">%5$s</text>%n",
                    x(line), TOP - 14, bottom, bottom + 18, line));
        }
        for (int i = 0; i < rows.size(); i++) {
            svg.append(row(rows.get(i), TOP + ROW * i + ROW / 2));
        }
        return svg.append("</svg>\n").toString();
    }

    private String row(Row row, int y) {
        StringBuilder svg = new StringBuilder();
        svg.append(format(
                "<text x=\"%d\" y=\"%d\" text-anchor=\"end\" fill=\"#1d1d1b\">%s</text>%n",
                LEFT - 14, y + 4, escaped(row.words())));
        svg.append(format(
                "<line x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\" stroke=\"#d8d5cc\"/>%n",
                LEFT, y, WIDTH - RIGHT, y));
        int at = 0;
        for (Map.Entry<Integer, Double> dot : row.values().entrySet()) {
            // Numbers stand above and below in turn, since neighbours lie close.
            int label = at++ % 2 == 0 ? y - 7 : y + 15;
            svg.append(format(
                    "<circle cx=\"%1$.1f\" cy=\"%2$d\" r=\"3.5\" fill=\"#0f5c63\"/><text x=\"%1$.1f\" y=\"%3$d\""
                            + " text-anchor=\"middle\" font-size=\"10\" fill=\"#55534d\">%4$d</text>%n",
                    x(dot.getValue()), y, label, dot.getKey()));
        }
        return svg.toString();
    }

    private double x(double value) {
        double share = (Math.max(low, Math.min(high, value)) - low) / (high - low);
        return LEFT + share * (WIDTH - RIGHT - LEFT);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
