package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.twinbar.statistics.LeftOver;

/** Draws step curves: each event a step down, each end of watching a tick upon the line. */
final class SurvivalFigure {

    private static final int HEIGHT = 270;

    private final Survival survival;

    private SurvivalFigure(Survival survival) {
        this.survival = survival;
    }

    /** Returns the share left at a time; between two looks it is what it was before. */
    private static double shareAt(List<LeftOver.Fall> falls, double time) {
        double share = 1;
        for (LeftOver.Fall fall : falls) {
            share = fall.until() <= time ? fall.left() : share;
        }
        return share;
    }

    static String of(Survival survival) {
        return new SurvivalFigure(survival).draw();
    }

    private String draw() {
        double last = survival.groups().stream()
                .flatMap(group -> group.times().stream())
                .mapToDouble(Survival.Time::time)
                .max()
                .orElse(1);
        NumberAxis across = Axes.fromZero(survival.across(), last, 5);
        NumberAxis up = Axes.percent(survival.up());
        return Chart.plane(across, up).paint(this::lines).svg(HEIGHT, words());
    }

    private void lines(Chart.Brush brush) {
        double shift = 0;
        for (Survival.Group group : survival.groups()) {
            line(brush, group, shift);
            shift += 3;
        }
    }

    /** Groups that still agree would hide each other, so each lies a little lower than the last. */
    private static void line(Chart.Brush brush, Survival.Group group, double shift) {
        double end =
                group.times().stream().mapToDouble(Survival.Time::time).max().orElse(0);
        limits(brush, group, end, shift);
        looks(brush, group, shift);
        double y = curve(brush, group, end, shift);
        for (Survival.Time time : group.times()) {
            double x = brush.x(time.time());
            double at = brush.y(shareAt(group.falls(), time.time())) + shift;
            boolean happened = time.end() == Survival.End.HAPPENED;
            brush.named(name(time), x, at, 7, () -> {
                if (happened) {
                    brush.sign(group.sign(), x, at, 4);
                } else {
                    brush.line(x, at - 7, x, at + 7, group.sign().colour(), 2);
                }
            });
        }
        double wide = Chart.widthOf(group.name(), Fonts.Weight.BOLD);
        double x = Math.min(brush.x(end) - wide, brush.right() - wide);
        brush.text(
                group.name(),
                x,
                group.sign().hollow() ? y - 12 : y + 22,
                Theme.INK,
                Fonts.Weight.BOLD);
    }

    private static String name(Survival.Time time) {
        if (time.end() == Survival.End.WATCHING_ENDED) {
            return time.specimen() + ": not by " + Written.number(time.time(), 4);
        }
        String at = Written.number(time.time(), 4);
        return time.specimen()
                + ": "
                + (time.from() < time.time()
                        ? "between " + Written.number(time.from(), 4) + " and " + at
                        : at);
    }

    private static double curve(Chart.Brush brush, Survival.Group group, double end, double shift) {
        Path2D path = new Path2D.Double();
        double y = brush.y(1) + shift;
        path.moveTo(brush.x(0), y);
        for (LeftOver.Fall fall : group.falls()) {
            path.lineTo(brush.x(fall.after()), y);
            y = brush.y(fall.left()) + shift;
            // Between two looks nobody knows where it fell: the line goes on at the second.
            if (fall.after() == fall.until()) {
                path.lineTo(brush.x(fall.until()), y);
            } else {
                path.moveTo(brush.x(fall.until()), y);
            }
        }
        path.lineTo(brush.x(end), y);
        brush.canvas().setPaint(group.sign().colour().ink());
        float[] dashes = group.sign().hollow() ? new float[] {6, 4} : null;
        brush.canvas()
                .setStroke(new BasicStroke(
                        2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        brush.canvas().draw(path);
        return y;
    }

    /** Shades between two looks where the line may fall. */
    private static void looks(Chart.Brush brush, Survival.Group group, double shift) {
        double before = 1;
        for (LeftOver.Fall fall : group.falls()) {
            if (fall.after() < fall.until()) {
                double x = brush.x(fall.after());
                double top = brush.y(before) + shift;
                brush.hatched(
                        x,
                        top,
                        brush.x(fall.until()) - x,
                        brush.y(fall.left()) + shift - top,
                        group.sign().colour());
            }
            before = fall.left();
        }
    }

    /** Draws the pointwise limits as thin lines from each fall to the next. */
    private static void limits(Chart.Brush brush, Survival.Group group, double end, double shift) {
        List<LeftOver.Fall> falls = group.falls();
        double offset = group.sign().hollow() ? -3 : 3;
        for (int i = 0; i < falls.size(); i++) {
            LeftOver.Fall fall = falls.get(i);
            double until = i + 1 < falls.size() ? falls.get(i + 1).after() : end;
            double x = (brush.x(fall.until()) + brush.x(until)) / 2 + offset;
            brush.line(
                    x,
                    brush.y(fall.low()) + shift,
                    x,
                    brush.y(fall.high()) + shift,
                    group.sign().colour(),
                    0.8f);
        }
    }

    private String words() {
        StringBuilder words = new StringBuilder(survival.up()).append(" over time. ");
        for (Survival.Group group : survival.groups()) {
            long happened = group.times().stream()
                    .filter(time -> time.end() == Survival.End.HAPPENED)
                    .count();
            words.append(group.name()).append(": ").append(happened).append(" of ");
            words.append(group.times().size()).append(" failed while watched. ");
        }
        return words.toString().strip();
    }
}
