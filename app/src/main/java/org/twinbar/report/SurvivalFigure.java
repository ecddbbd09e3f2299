package org.twinbar.report;

import java.awt.BasicStroke;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;

/** Draws step curves: each event a step down, each end of watching a tick upon the line. */
final class SurvivalFigure {

    private static final int HEIGHT = 270;

    private final Survival survival;

    private SurvivalFigure(Survival survival) {
        this.survival = survival;
    }

    /** The product-limit share from a time on (E. L. Kaplan and P. Meier, 1958). */
    record Step(double time, double share) {}

    static List<Step> steps(List<Survival.Time> times) {
        List<Survival.Time> sorted = times.stream()
                .sorted(Comparator.comparingDouble(Survival.Time::time))
                .toList();
        List<Step> steps = new ArrayList<>(List.of(new Step(0, 1)));
        double share = 1;
        int at = 0;
        while (at < sorted.size()) {
            double time = sorted.get(at).time();
            int watched = sorted.size() - at;
            int happened = 0;
            while (at < sorted.size() && sorted.get(at).time() == time) {
                happened += sorted.get(at).end() == Survival.End.HAPPENED ? 1 : 0;
                at++;
            }
            if (happened > 0) {
                share *= (watched - happened) / (double) watched;
                steps.add(new Step(time, share));
            }
        }
        return steps;
    }

    private static double shareAt(List<Step> steps, double time) {
        double share = 1;
        for (Step step : steps) {
            share = step.time() <= time ? step.share() : share;
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
        List<Step> steps = steps(group.times());
        Path2D path = new Path2D.Double();
        path.moveTo(brush.x(0), brush.y(1) + shift);
        double y = brush.y(1) + shift;
        for (Step step : steps) {
            path.lineTo(brush.x(step.time()), y);
            y = brush.y(step.share()) + shift;
            path.lineTo(brush.x(step.time()), y);
        }
        double end =
                group.times().stream().mapToDouble(Survival.Time::time).max().orElse(0);
        path.lineTo(brush.x(end), y);
        brush.canvas().setPaint(group.sign().colour().ink());
        float[] dashes = group.sign().hollow() ? new float[] {6, 4} : null;
        brush.canvas()
                .setStroke(new BasicStroke(
                        2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0));
        brush.canvas().draw(path);
        for (Survival.Time time : group.times()) {
            double x = brush.x(time.time());
            double at = brush.y(shareAt(steps, time.time())) + shift;
            boolean happened = time.end() == Survival.End.HAPPENED;
            String name = time.specimen()
                    + (happened ? ": " : ": not by ")
                    + Written.number(time.time(), 4);
            brush.named(name, x, at, 7, () -> {
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
