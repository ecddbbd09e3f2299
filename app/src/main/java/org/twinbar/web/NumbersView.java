package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.finding.Finding;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Numbers;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.report.Figures;
import org.twinbar.report.Reach;
import org.twinbar.report.Written;
import org.twinbar.report.WrittenNumbers;
import org.twinbar.study.NumbersTold;

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
     * @param assuming what else is taken for true; empty where nothing is
     * @param header of the smallest effects
     * @param picture the smallest change found over the number, or the chance
     */
    public record Kind(
            int index,
            String name,
            String sentence,
            String scatter,
            String assuming,
            String picture,
            String header,
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
                known.stream().map(PlanNumbers.Known::cost).reduce(Effort.Cost::plus);
        return new NumbersView(
                known.stream().map(NumbersView::kind).toList(),
                all.map(it -> "%s in all: %s."
                                .formatted(Words.count(it.specimens(), "specimen"), cost(it)))
                        .orElse(""));
    }

    private static Kind kind(PlanNumbers.Known known) {
        NumbersTold told = known.told();
        List<Row> rows = new ArrayList<>();
        for (Numbers.Row row : told.numbers().rows()) {
            rows.add(new Row(
                    Integer.toString(row.perGroup()),
                    Written.percent(row.power()),
                    WrittenNumbers.smallest(told, row),
                    cost(row.cost())));
        }
        return new Kind(
                known.kind().index(),
                known.kind().series().name(),
                sentence(known),
                WrittenNumbers.scatter(told)
                        .map(it -> PlanForm.heading(it) + ".")
                        .orElse("Parts are counted or put in order, so no scatter plays a part."),
                told.assuming().isEmpty() ? "" : "If " + String.join("; ", told.assuming()) + ".",
                Figures.reach(reach(known)),
                WrittenNumbers.smallestHeader(told),
                rows,
                told.findings());
    }

    private static String sentence(PlanNumbers.Known known) {
        NumbersTold told = known.told();
        Numbers.Row chosen = known.chosen();
        String likely = chosen.power() >= AS_LIKELY_AS_NOT
                ? "the likely verdict is “supported” (chance %s)"
                        .formatted(Written.percent(chosen.power()))
                : "the likely verdict is “open”: the chance of “supported” is only %s"
                        .formatted(Written.percent(chosen.power()));
        String truth = told.expectation() == Expectation.SAME
                ? "no change at all"
                : known.kind().isOfLevel() ? "what is expected true" : "the expected change true";
        String finds = chosen.smallest().isEmpty()
                ? ""
                : " In four studies out of five so many %s %s."
                        .formatted(finding(known), WrittenNumbers.smallest(told, chosen));
        String enough = told.numbers().enough().isPresent()
                        && told.numbers().enough().getAsInt() != chosen.perGroup()
                ? " %s would do for a chance of %s."
                        .formatted(
                                told.numbers().enough().getAsInt(),
                                Written.percent(told.numbers().power()))
                : "";
        return "With %s in each group and %s, %s.%s%s"
                .formatted(chosen.perGroup(), truth, likely, finds, enough);
    }

    private static String finding(PlanNumbers.Known known) {
        if (known.told().expectation() == Expectation.SAME) {
            return "show a change to lie within";
        }
        return known.kind().isOfLevel() ? "need" : "find a change from";
    }

    private static Reach reach(PlanNumbers.Known known) {
        NumbersTold told = known.told();
        List<Numbers.Row> rows = told.numbers().rows();
        Optional<Integer> chosen = Optional.of(known.chosen().perGroup());
        List<Reach.Point> sizes = new ArrayList<>();
        for (Numbers.Row row : rows) {
            row.smallest()
                    .ifPresent(it -> sizes.add(new Reach.Point(
                            row.perGroup(),
                            WrittenNumbers.onPicture(told, it),
                            WrittenNumbers.smallest(told, row))));
        }
        if (sizes.isEmpty()) {
            return new Reach(
                    "chance of “supported”, %",
                    rows.stream()
                            .map(row -> new Reach.Point(
                                    row.perGroup(),
                                    100 * row.power(),
                                    Written.percent(row.power())))
                            .toList(),
                    List.of(new Reach.Level(
                            100 * told.numbers().power(),
                            Written.percent(told.numbers().power()) + " wanted")),
                    chosen);
        }
        String unit = WrittenNumbers.unitOnPicture(told);
        return new Reach(
                PlanForm.heading(WrittenNumbers.smallestHeader(told))
                        + (unit.isEmpty() ? "" : ", " + unit),
                sizes,
                expected(known),
                chosen);
    }

    private static List<Reach.Level> expected(PlanNumbers.Known known) {
        Effect effect = known.told().effect();
        if (known.expected().isEmpty() || effect == Effect.RATE || effect == Effect.RANK) {
            return List.of();
        }
        boolean percent =
                !WrittenNumbers.unitOnPicture(known.told()).equals(known.told().unit())
                        || effect == Effect.RATIO;
        try {
            double size = percent
                    ? 100 * Quantity.parseShare(known.expected())
                    : Quantity.parse(known.expected()).value();
            return List.of(new Reach.Level(Math.abs(size), "expected"));
        } catch (QuantityException e) {
            return List.of();
        }
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
