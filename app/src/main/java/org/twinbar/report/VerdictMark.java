package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The mark of a verdict: the rule itself, drawn small. A plain line is no change, a dotted one what
 * is worth having, the bar the interval. All on one scale of the effect.
 *
 * @param none value of no change
 * @param worth smallest change worth having; none where it is no change at all, two where a claim
 *     says that nothing changed
 * @param estimate the effect itself
 * @param low lower end of the interval, infinite where there is none
 * @param high upper end of the interval, infinite where there is none
 */
public record VerdictMark(
        double none, List<Double> worth, OptionalDouble estimate, double low, double high) {

    private static final int WIDTH = 132;
    private static final int HEIGHT = 30;
    private static final double SIDE = 12;

    public VerdictMark {
        worth = List.copyOf(worth);
    }

    /** Returns the drawing; the words say the same. */
    String svg(String words) {
        double from = none;
        double to = none;
        for (double at : ends()) {
            from = Math.min(from, at);
            to = Math.max(to, at);
        }
        double span = to > from ? to - from : 1;
        double middle = HEIGHT / 2.0;
        StringBuilder svg = new StringBuilder(700);
        svg.append(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"mark\" viewBox=\"0 0 %s %s\" role=\"img\" aria-label=\"%s\">"
                        .formatted(WIDTH, HEIGHT, CompactSvg.escaped(words)));
        line(svg, place(none, from, span), 2, place(none, from, span), HEIGHT - 2, "ink", "2", "");
        for (double level : worth) {
            if (level != none) {
                double x = place(level, from, span);
                String dots = " stroke-dasharray=\"0.1 5.4\" stroke-linecap=\"round\"";
                line(svg, x, 3, x, HEIGHT - 2, "warn", "3", dots);
            }
        }
        boolean endless = Double.isInfinite(low) && Double.isInfinite(high);
        double left = Double.isInfinite(low) ? 0 : place(low, from, span);
        double right = Double.isInfinite(high) ? WIDTH : place(high, from, span);
        // An interval narrower than the bar is thick would not be seen.
        right = Math.max(right, left + 4);
        String dashes = endless ? " stroke-dasharray=\"9 6\"" : "";
        line(svg, left, middle, right, middle, "treated", "4", dashes);
        if (estimate.isPresent() && !endless) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6\" fill=\"var(--treated)\"/>",
                    place(estimate.getAsDouble(), from, span),
                    middle));
        }
        return svg.append("</svg>").toString();
    }

    private List<Double> ends() {
        List<Double> ends = new ArrayList<>(worth);
        ends.add(low);
        ends.add(high);
        estimate.ifPresent(ends::add);
        ends.removeIf(end -> end.isInfinite());
        return ends;
    }

    private static double place(double value, double from, double span) {
        return SIDE + (WIDTH - 2 * SIDE) * (value - from) / span;
    }

    private static void line(
            StringBuilder svg,
            double x1,
            double y1,
            double x2,
            double y2,
            String colour,
            String width,
            String more) {
        svg.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"var(--%s)\" stroke-width=\"%s\"%s/>",
                x1,
                y1,
                x2,
                y2,
                colour,
                width,
                more));
    }
}
