package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jfree.chart.axis.NumberAxis;

/** Draws an effect: intervals in rows, crossed by the lines of no change, of worth and of claim. */
final class EffectFigure {

    private static final int HEAD = 24;
    private static final int ROW = 58;
    private static final int AXIS = 46;
    private static final double AIR = 0.12;

    private final Effect effect;
    private final List<Effect.Level> heads = new ArrayList<>();

    private EffectFigure(Effect effect) {
        this.effect = effect;
        heads.add(effect.none());
        effect.worth().stream()
                .filter(worth -> worth.value() != effect.none().value())
                .forEach(heads::add);
        effect.claimed().filter(c -> !isWorth(c)).ifPresent(heads::add);
    }

    static String of(Effect effect) {
        return new EffectFigure(effect).draw();
    }

    private boolean isWorth(Effect.Level level) {
        return effect.worth().stream().anyMatch(worth -> worth.value() == level.value());
    }

    private String draw() {
        int inside = heads.size() * HEAD + effect.rows().size() * ROW + 6;
        Chart chart = Chart.rows(scale(), inside);
        chart.paint(this::levels).paint(this::rows);
        return chart.svg(inside + AXIS, description());
    }

    private NumberAxis scale() {
        DoubleStream levels = heads.stream().mapToDouble(Effect.Level::value);
        DoubleStream rows = effect.rows().stream()
                .flatMapToDouble(r -> DoubleStream.of(r.estimate(), r.low(), r.high()));
        double[] all = DoubleStream.concat(levels, rows)
                .filter(Double::isFinite)
                .sorted()
                .toArray();
        double low = all[0];
        double high = all[all.length - 1];
        double span = high > low ? high - low : Math.max(1, Math.abs(high));
        double from = low - AIR * span;
        double to = high + AIR * span;
        return effect.signs() == Effect.Signs.CHANGE
                ? Axes.ofChanges(effect.label(), from, to, effect.unit())
                : Axes.ofValues(effect.label(), from, to, effect.unit());
    }

    private void levels(Chart.Brush brush) {
        for (int i = 0; i < heads.size(); i++) {
            Effect.Level level = heads.get(i);
            double x = brush.x(level.value());
            double top = brush.top() + i * HEAD;
            boolean none = i == 0;
            boolean worth = !none && isWorth(level);
            Theme colour = none ? Theme.INK : worth ? Theme.WARN : Theme.SOFT;
            if (none) {
                brush.line(x, top, x, brush.bottom(), colour, 1.5f);
            } else if (worth) {
                brush.dotted(x, top + 2, x, brush.bottom(), colour);
            } else {
                brush.dashed(x, top, x, brush.bottom(), colour);
            }
            brush.textBeside(level.words(), x, top + 14, colour);
        }
    }

    private void rows(Chart.Brush brush) {
        double y = brush.top() + heads.size() * HEAD;
        for (Effect.Row row : effect.rows()) {
            row(brush, row, y);
            y += ROW;
        }
    }

    private static void row(Chart.Brush brush, Effect.Row row, double top) {
        boolean measured = row.kind() == Effect.Kind.MEASURED;
        Theme colour = measured ? Theme.TREATED : Theme.SOFT;
        double from = brush.x(row.low());
        double to = brush.x(row.high());
        double y = top + 40;
        double wide = Chart.widthOf(row.words(), Fonts.Weight.REGULAR);
        double at = Math.max(brush.left(), Math.min(from, brush.right() - wide));
        brush.ground(at - 2, top + 6, wide + 4, 20);
        brush.text(
                row.words(), at, top + 21, measured ? Theme.INK : Theme.SOFT, Fonts.Weight.REGULAR);
        brush.line(from, y, to, y, colour, measured ? 4 : 3);
        brush.openEnd(row.low(), from, y, -1, colour);
        brush.openEnd(row.high(), to, y, 1, colour);
        double x = brush.x(row.estimate());
        if (measured) {
            brush.sign(Sign.FIRST, x, y, 7);
        } else {
            brush.hollowSquare(x, y, 6, colour);
        }
    }

    private String description() {
        StringBuilder words = new StringBuilder(effect.label()).append(": ");
        effect.rows().forEach(row -> words.append(row.words()).append("; "));
        words.append("lines at ");
        words.append(String.join(", ", heads.stream().map(Effect.Level::words).toList()));
        return words.append('.').toString();
    }
}
