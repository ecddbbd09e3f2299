package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Found;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Trend;
import org.twinbar.finding.Finding;
import org.twinbar.report.Sheet.Item;
import org.twinbar.study.judged.Answer;

/** What a report says of a property that goes with an amount, or does not. */
final class LinedAnswer {

    private final Answer.Lined lined;
    private final Trend trend;

    private LinedAnswer(Answer.Lined lined) {
        this.lined = lined;
        this.trend = lined.trend();
    }

    static Sheet.Answer of(Answer.Lined lined, String anchor) {
        LinedAnswer answer = new LinedAnswer(lined);
        List<String> reasons = lined.trend().reasons();
        return new Sheet.Answer(
                anchor,
                Answers.capital(lined.question()),
                lined.question(),
                lined.trend().verdict().word(),
                answer.mark(),
                String.join(" ", reasons),
                String.join(" ", reasons.subList(0, Math.min(2, reasons.size()))),
                answer.trend.points().isEmpty() ? List.of() : List.of(answer.picture()),
                answer.items());
    }

    /** Nothing but "no change" is asked of a slope. */
    private Optional<String> mark() {
        if (!(trend.overAll().estimate() instanceof Amount.Known known)) {
            return Optional.empty();
        }
        VerdictMark mark = new VerdictMark(
                0,
                List.of(),
                OptionalDouble.of(known.value()),
                trend.overAll().low().orElse(Double.NEGATIVE_INFINITY),
                trend.overAll().high().orElse(Double.POSITIVE_INFINITY));
        return Optional.of(Figures.mark(
                mark, trend.verdict().word() + ": " + trend.reasons().get(0)));
    }

    private Sheet.Picture picture() {
        Map<String, List<Line.Point>> points = new LinkedHashMap<>();
        // The control stands first, whatever its amounts are.
        lined.control().ifPresent(control -> points.put(control, new ArrayList<>()));
        for (Trend.Point point : trend.points()) {
            points.computeIfAbsent(point.group(), unused -> new ArrayList<>())
                    .add(new Line.Point(
                            point.specimen(), point.amount(), point.value(), written(point)));
        }
        points.values().removeIf(List::isEmpty);
        List<Line.Group> groups = new ArrayList<>();
        int treated = 0;
        for (Map.Entry<String, List<Line.Point>> group : points.entrySet()) {
            boolean control = lined.control().filter(group.getKey()::equals).isPresent();
            Sign sign = control ? Sign.CONTROL : Sign.ofTreatment(treated++);
            groups.add(new Line.Group(group.getKey(), sign, group.getValue()));
        }
        Line line = new Line(
                axis(trend.amount()),
                axis(trend.question().subject()),
                groups,
                trend.line().stream()
                        .map(at -> new Line.Place(at.amount(), at.middle(), at.low(), at.high()))
                        .toList());
        String caption = "Each ring or shape is a specimen.";
        return new Sheet.Picture(
                Figures.line(line),
                trend.line().isEmpty()
                        ? caption
                        : caption
                                + " Line: fitted; band: its %s interval."
                                        .formatted(Written.percent(trend.slope().level())));
    }

    private static String axis(Subject subject) {
        String unit = subject.unit().symbol();
        return Answers.capital(subject.label()) + (unit.isEmpty() ? "" : " in " + unit);
    }

    private String written(Trend.Point point) {
        return Written.number(point.value(), 4)
                + Written.behind(trend.question().subject().unit().symbol())
                + " at "
                + Written.number(point.amount(), 4)
                + Written.behind(trend.amount().unit().symbol());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        if (!trend.findings().isEmpty()) {
            items.add(new Item(
                    "What limits it",
                    trend.findings().stream().map(Finding::text).distinct().toList()));
        }
        items.add(new Item("How it was calculated", calculation(trend.slope())));
        return items;
    }

    private static List<String> calculation(Found slope) {
        List<String> lines = new ArrayList<>();
        String df = slope.df() instanceof Amount.Known known
                ? ", " + Written.number(known.value(), 3) + " degrees of freedom"
                : "";
        lines.add(Answers.capital(slope.method()) + df + ".");
        if (slope.p() instanceof Amount.Known p) {
            lines.add("For reference only: p " + Written.p(p.value())
                    + " of a slope of zero; no verdict reads it.");
        }
        return lines;
    }
}
