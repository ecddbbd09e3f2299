package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.Range;

/** Scales with round steps, written as the rest of the page writes numbers. */
final class Axes {

    private static final double AIR = 0.07;

    private Axes() {}

    /**
     * Returns a scale over these values with some air; it takes in zero only where a value does.
     */
    static NumberAxis over(String label, DoubleStream values) {
        double[] all = values.filter(Double::isFinite).toArray();
        double low = DoubleStream.of(all).min().orElse(0);
        double high = DoubleStream.of(all).max().orElse(1);
        double span = high > low ? high - low : Math.max(Math.abs(high) * 0.1, 1e-6);
        return between(label, low - AIR * span, high + AIR * span, 5, Axes::plain);
    }

    /** Returns a scale that starts at zero. */
    static NumberAxis fromZero(String label, double highest, int steps) {
        return between(label, 0, highest > 0 ? highest * (1 + AIR) : 1, steps, Axes::plain);
    }

    /** Returns a scale of changes, each with its sign. */
    static NumberAxis ofChanges(String label, double low, double high, String unit) {
        return between(
                label,
                low,
                high,
                5,
                decimals -> value -> signed(value, decimals) + Written.behind(unit));
    }

    /** Returns a scale of values with their unit. */
    static NumberAxis ofValues(String label, double low, double high, String unit) {
        return between(
                label,
                low,
                high,
                5,
                decimals -> value -> Written.fixed(value, decimals) + Written.behind(unit));
    }

    /** Returns a scale between these ends. */
    static NumberAxis plain(String label, double low, double high, int steps) {
        return between(label, low, high, steps, Axes::plain);
    }

    /** Returns a scale of shares from none to all. */
    static NumberAxis percent(String label) {
        return between(
                label, 0, 1.12, 4, decimals -> value -> value > 1 ? "" : Written.percent(value));
    }

    /** Returns a scale of named places, one at each whole number from 0. */
    static NumberAxis named(List<String> places) {
        return between(
                "",
                -0.5,
                places.size() - 0.5,
                places.size(),
                decimals -> value -> places.get(
                        (int) Math.max(0, Math.min(places.size() - 1, Math.rint(value)))));
    }

    /** Returns a scale that is not drawn. */
    static NumberAxis unseen(double low, double high) {
        NumberAxis axis = new NumberAxis();
        axis.setRange(low, high);
        axis.setVisible(false);
        return axis;
    }

    private static NumberAxis between(
            String label,
            double low,
            double high,
            int steps,
            java.util.function.IntFunction<DoubleFunction<String>> writing) {
        NumberAxis axis = new Inside(label);
        double step = roundStep((high - low) / steps);
        axis.setRange(new Range(low, high), true, false);
        axis.setTickUnit(new NumberTickUnit(step, new Writing(writing.apply(decimals(step)))));
        axis.setTickLabelFont(Fonts.of(Fonts.Weight.REGULAR, Chart.TEXT));
        axis.setTickLabelPaint(Theme.SOFT.ink());
        axis.setLabelFont(Fonts.of(Fonts.Weight.REGULAR, Chart.TEXT));
        axis.setLabelPaint(Theme.SOFT.ink());
        axis.setLabelInsets(new RectangleInsets(2, 2, 2, 2));
        axis.setTickMarksVisible(false);
        axis.setAxisLinePaint(Theme.LINE.ink());
        axis.setAxisLineStroke(new BasicStroke(1));
        return axis;
    }

    private static DoubleFunction<String> plain(int decimals) {
        return value -> Written.fixed(value, decimals);
    }

    private static String signed(double value, int decimals) {
        return Written.withSign(value, Written.fixed(value, decimals));
    }

    /** Returns 1, 2 or 5 times a power of ten, at least as large as what is asked for. */
    static double roundStep(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double digit : new double[] {1, 2, 5}) {
            // A step of 0.2 must not become 0.5 because 0.1 + 0.1 is a little more.
            if (digit * power >= least * (1 - 1e-9)) {
                return digit * power;
            }
        }
        return 10 * power;
    }

    private static int decimals(double step) {
        return Math.max(0, (int) -Math.floor(Math.log10(step) + 1e-9));
    }

    /** Leaves out a label that would reach beyond the picture. */
    private static final class Inside extends NumberAxis {
        Inside(String label) {
            super(label.isEmpty() ? null : label);
        }

        @Override
        protected List<?> refreshTicksHorizontal(
                Graphics2D g2, Rectangle2D area, RectangleEdge edge) {
            List<?> ticks = super.refreshTicksHorizontal(g2, area, edge);
            ticks.removeIf(tick -> {
                NumberTick number = (NumberTick) tick;
                double x = valueToJava2D(number.getValue(), area, edge);
                double half = Chart.widthOf(number.getText(), Fonts.Weight.REGULAR) / 2;
                return x - half < 0 || x + half > Chart.WIDTH;
            });
            return ticks;
        }
    }

    /** A number format that only writes. */
    private static final class Writing extends NumberFormat {
        private final transient DoubleFunction<String> words;

        Writing(DoubleFunction<String> words) {
            this.words = words;
        }

        @Override
        public StringBuffer format(double number, StringBuffer to, FieldPosition position) {
            return to.append(words.apply(number));
        }

        @Override
        public StringBuffer format(long number, StringBuffer to, FieldPosition position) {
            return format((double) number, to, position);
        }

        @Override
        public Number parse(String source, ParsePosition position) {
            throw new UnsupportedOperationException("a scale is never read back");
        }
    }
}
