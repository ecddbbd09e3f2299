package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.method.Property;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Numbers;
import org.twinbar.report.Figures;
import org.twinbar.report.Reach;
import org.twinbar.report.Written;

/**
 * What the numbers of a plan can tell, as its page shows it.
 *
 * @param kinds those of which something is known
 * @param cost what all of them take together, in words; empty where nothing is known
 */
public record NumbersView(List<Kind> kinds, String cost) {

    /** Below this, "supported" is not what is likely to be found. */
    private static final double AS_LIKELY_AS_NOT = 0.5;

    public NumbersView {
        kinds = List.copyOf(kinds);
    }

    /**
     * One kind of specimens.
     *
     * @param index of the kind on the form
     * @param sentence what the chosen number tells
     * @param scatter that it was reckoned with, and where that comes from
     * @param picture the smallest change found over the number, or the chance
     */
    public record Kind(
            int index,
            String name,
            String sentence,
            String scatter,
            String picture,
            List<Row> rows,
            List<Finding> findings) {}

    /** One number of specimens: what it tells and takes. */
    public record Row(String perGroup, String chance, String smallest, String cost) {}

    /** Returns what is known of a kind. */
    public Optional<Kind> of(PlanKind kind) {
        return kinds.stream().filter(it -> it.index() == kind.index()).findFirst();
    }

    static NumbersView of(List<PlanNumbers.Known> known) {
        Optional<Effort.Cost> all =
                known.stream().map(it -> it.chosen().cost()).reduce(Effort.Cost::plus);
        return new NumbersView(
                known.stream().map(NumbersView::kind).toList(),
                all.map(it -> "%s in all: %s."
                                .formatted(Words.count(it.specimens(), "specimen"), cost(it)))
                        .orElse(""));
    }

    private static Kind kind(PlanNumbers.Known known) {
        List<Row> rows = new ArrayList<>();
        for (Numbers.Row row : known.numbers().rows()) {
            rows.add(new Row(
                    Integer.toString(row.perGroup()),
                    Written.percent(row.power()),
                    smallest(row, known).orElse("–"),
                    cost(row.cost())));
        }
        return new Kind(
                known.kind().index(),
                known.kind().series().name(),
                sentence(known),
                known.scattered()
                        .map(it -> "Scatter from specimen to specimen: %s (%s)."
                                .formatted(
                                        PlanNumbers.written(it.value(), known.property()),
                                        it.from()))
                        .orElse("Parts pass or don't, so there is no scatter to reckon with."),
                Figures.reach(reach(known)),
                rows,
                known.numbers().findings());
    }

    private static Optional<String> smallest(Numbers.Row row, PlanNumbers.Known known) {
        return row.smallest().isPresent()
                ? Optional.of(written(row.smallest().getAsDouble(), known))
                : Optional.empty();
    }

    /** A ratio's effect is a factor, another's an amount. */
    private static String written(double effect, PlanNumbers.Known known) {
        return known.isRelative()
                ? Written.ratioChange(effect)
                : PlanNumbers.written(effect, known.property());
    }

    private static String sentence(PlanNumbers.Known known) {
        Numbers.Row chosen = known.chosen();
        String many = "%s in each group".formatted(chosen.perGroup());
        String likely = chosen.power() >= AS_LIKELY_AS_NOT
                ? "the likely verdict is “supported” (chance %s)"
                        .formatted(Written.percent(chosen.power()))
                : "the likely verdict is “open”: the chance of “supported” is only %s"
                        .formatted(Written.percent(chosen.power()));
        String finds = smallest(chosen, known)
                .map(it -> " They find a change of %s or more in four studies out of five."
                        .formatted(it))
                .orElse("");
        String enough = known.numbers().enough().isPresent()
                        && known.numbers().enough().getAsInt() != chosen.perGroup()
                ? " %s would do for a chance of %s."
                        .formatted(
                                known.numbers().enough().getAsInt(),
                                Written.percent(known.numbers().power()))
                : "";
        return "With %s and the expected change true, %s.%s%s"
                .formatted(many, likely, finds, enough);
    }

    private static Reach reach(PlanNumbers.Known known) {
        List<Numbers.Row> rows = new ArrayList<>(known.numbers().rows());
        rows.removeIf(row -> row.perGroup() == known.chosen().perGroup());
        rows.add(known.chosen());
        rows.sort(java.util.Comparator.comparingInt(Numbers.Row::perGroup));
        boolean sizes = rows.stream().allMatch(row -> row.smallest().isPresent());
        Optional<Integer> chosen = Optional.of(known.chosen().perGroup());
        if (!sizes) {
            return new Reach(
                    "chance of “supported”, %",
                    rows.stream()
                            .map(row -> new Reach.Point(
                                    row.perGroup(),
                                    100 * row.power(),
                                    Written.percent(row.power())))
                            .toList(),
                    List.of(new Reach.Level(100 * known.numbers().power(), "80\u2009% wanted")),
                    chosen);
        }
        Property property = known.property();
        String unit = property.unit().symbol();
        return new Reach(
                known.isRelative()
                        ? "smallest change found, %"
                        : "smallest change found" + (unit.isEmpty() ? "" : ", " + unit),
                rows.stream()
                        .map(row -> new Reach.Point(
                                row.perGroup(),
                                size(row.smallest().getAsDouble(), known),
                                smallest(row, known).orElse("")))
                        .toList(),
                known.expected().isPresent()
                        ? List.of(new Reach.Level(
                                Math.abs(known.expected().getAsDouble())
                                        * (known.isRelative() ? 100 : 1),
                                "expected"))
                        : List.of(),
                chosen);
    }

    private static double size(double effect, PlanNumbers.Known known) {
        return known.isRelative() ? Math.abs(100 * (effect - 1)) : Math.abs(effect);
    }

    private static String cost(Effort.Cost cost) {
        List<String> parts = new ArrayList<>();
        add(parts, cost.filamentGrams(), "g of filament");
        add(parts, cost.resinGrams(), "g of resin");
        add(parts, cost.printHours(), "h of printing");
        add(parts, cost.handHours(), "h by hand");
        if (cost.money() > 0) {
            parts.add(Written.fixed(cost.money(), 2) + " in money");
        }
        return parts.isEmpty() ? "–" : String.join(", ", parts);
    }

    private static void add(List<String> parts, double amount, String what) {
        if (amount > 0) {
            parts.add(Written.number(amount, 3) + "\u2009" + what);
        }
    }
}
