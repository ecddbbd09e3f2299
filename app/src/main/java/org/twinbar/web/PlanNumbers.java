package org.twinbar.web;

import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.study.NumbersAsked;
import org.twinbar.study.NumbersAsked.Wish;
import org.twinbar.study.NumbersTold;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Plan;

/** What the numbers on the form of a plan can tell, and what they take. */
final class PlanNumbers {

    /** Of PLA, g/mm³; common practice, no source, and what is printed is never quite solid. */
    private static final double USUAL_DENSITY = 1.24e-3;

    private final Workspace workspace;
    private final PlanForm form;

    PlanNumbers(Workspace workspace, PlanForm form) {
        this.workspace = workspace;
        this.form = form;
    }

    /**
     * What is known of one kind of specimens.
     *
     * @param chosen the number on the form
     * @param cost of all groups of this kind
     * @param expected as it was typed; empty where nothing was
     * @param reason as it is kept with the plan
     */
    record Known(
            PlanKind kind,
            NumbersTold told,
            Numbers.Row chosen,
            Effort.Cost cost,
            String expected,
            Optional<Plan.NumberReason> reason) {}

    /** Returns what is known of a kind; empty where the form has to say more, beside its field. */
    Optional<Known> of(PlanKind kind) {
        Optional<Series> series = form.series(kind);
        if (series.isEmpty()) {
            return Optional.empty();
        }
        Effort effort = effort(kind, series.get());
        try {
            NumbersAsked asked = asked(kind, series.get(), effort);
            NumbersTold told = workspace.plans().numbers(asked);
            Numbers.Row chosen = told.numbers().row(series.get().perGroup()).orElseThrow();
            int groups = form.groups().size();
            return Optional.of(new Known(
                    kind,
                    told,
                    chosen,
                    effort.of(
                            groups * series.get().perGroup(),
                            taking() * series.get().perGroup()),
                    form.text(kind.field("expected")),
                    workspace.plans().reason(form.study(), series.get(), asked)));
        } catch (InputException e) {
            trouble(kind, String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private NumbersAsked asked(PlanKind kind, Series series, Effort effort) {
        NumbersAsked asked = kind.questions().stream()
                .findFirst()
                .map(NumbersAsked::of)
                .orElseGet(() -> NumbersAsked.nothing().with(Wish.METHOD, series.method()));
        return asked.with(
                        kind.isOfLevel() ? Wish.ABOVE : Wish.EXPECTED,
                        form.text(kind.field("expected")))
                .with(Wish.WORTH, form.text(kind.field("worth")))
                .with(Wish.SCATTER, form.text(kind.field("scatter")))
                .with(Wish.CONTROL_SHARE, form.text(kind.field("control")))
                .with(Wish.PER_GROUP, Integer.toString(series.perGroup()))
                .with(Wish.GROUPS, Integer.toString(form.groups().size()))
                .with(Wish.COATED, Integer.toString(taking()))
                .with(Wish.FILAMENT, effort.filamentGrams() + " g")
                .with(Wish.RESIN, effort.resinGrams() + " g")
                .with(Wish.PRINT_TIME, effort.printHours() + " h")
                .with(Wish.HAND_TIME, effort.handHours() + " h")
                .with(Wish.FILAMENT_PRICE, Double.toString(effort.prices().filamentPerKilogram()))
                .with(Wish.RESIN_PRICE, Double.toString(effort.prices().resinPerKilogram()));
    }

    private void trouble(PlanKind kind, String sentence) {
        String field = sentence.startsWith("worth") || sentence.contains("would matter")
                ? "worth"
                : sentence.contains("control-share")
                        ? "control"
                        : sentence.contains("A group has from")
                                ? "n"
                                : sentence.contains("scatter") ? "scatter" : "expected";
        form.missing(kind.field(field), sentence.replaceAll("^[a-z-]+: ", ""));
    }

    private int taking() {
        return (int) form.groups().stream()
                .filter(it -> it.together().contains(Together.MIX))
                .count();
    }

    private Effort effort(PlanKind kind, Series series) {
        return new Effort(
                amount(kind.field("filament"), "g").orElse(solid(series)),
                amount("resin", "g").orElse(0),
                amount(kind.field("print"), "min").orElse(0) / 60,
                amount(kind.field("hand"), "min").orElse(0) / 60,
                new Effort.Prices(
                        amount("filament_price", "").orElse(0),
                        amount("resin_price", "").orElse(0)));
    }

    /** Returns what a shape weighs as solid PLA (g); 0 where it is not known. */
    private static double solid(Series series) {
        return StandardShapes.named(series.shape())
                .map(Shape::solid)
                .map(it -> it.volume() * USUAL_DENSITY)
                .orElse(0.0);
    }

    private OptionalDouble amount(String field, String unit) {
        String typed = form.text(field);
        if (typed.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double amount = unit.isEmpty()
                    ? Quantity.parse(typed).value()
                    : Quantity.parse(typed, Unit.of(unit));
            if (amount < 0) {
                form.trouble(field, "'%s' must be zero or more".formatted(typed));
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(amount);
        } catch (QuantityException e) {
            form.trouble(field, String.valueOf(e.getMessage()));
            return OptionalDouble.empty();
        }
    }
}
