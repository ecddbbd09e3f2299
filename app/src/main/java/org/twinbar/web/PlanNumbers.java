package org.twinbar.web;

import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Answering;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Expected;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.PlannedGroup.Together;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Plan;

/** What the numbers on the form of a plan can tell, and what they take. */
final class PlanNumbers {

    static final double USUAL_POWER = 0.8;
    private static final double USUAL_SHARE = 0.9;

    /** Of PLA, g/mm³; common practice, no source, and what is printed is never quite solid. */
    private static final double USUAL_DENSITY = 1.24e-3;

    private final Workspace workspace;
    private final PlanForm form;

    PlanNumbers(Workspace workspace, PlanForm form) {
        this.workspace = workspace;
        this.form = form;
    }

    /** A scatter and where it comes from. */
    record Scattered(double value, String from) {}

    /**
     * What is known of one kind of specimens.
     *
     * @param scattered empty where parts pass or don't
     * @param chosen the number on the form
     * @param expected change, as a share for a ratio; empty where none is
     * @param reason as it is kept with the plan
     */
    record Known(
            PlanKind kind,
            Property property,
            Numbers numbers,
            Optional<Scattered> scattered,
            Numbers.Row chosen,
            OptionalDouble expected,
            Optional<Plan.NumberReason> reason) {

        boolean isRelative() {
            return property.scale() == Scale.RATIO;
        }
    }

    /** Returns what is known of a kind; empty where the form has to say more, beside its field. */
    Optional<Known> of(PlanKind kind) {
        Optional<Series> series = form.series(kind);
        Optional<Property> property = property(kind);
        if (series.isEmpty() || property.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(known(kind, series.get(), property.get()));
        } catch (PlanException e) {
            form.trouble(kind.field("expected"), String.valueOf(e.getMessage()));
        } catch (FieldTrouble e) {
            form.trouble(kind.field(e.field()), String.valueOf(e.getMessage()));
        }
        return Optional.empty();
    }

    private Known known(PlanKind kind, Series series, Property property) {
        boolean passes = property.scale() == Scale.YES_NO;
        Optional<Scattered> scattered =
                passes ? Optional.empty() : Optional.of(scatter(kind, property));
        double scatter = scattered.map(Scattered::value).orElse(0.0);
        Aim aim = passes ? allPass(kind) : aim(kind, property, scatter);
        Effort effort = effort(kind, series);
        int groups = aim.groups() == 1 ? 1 : form.groups().size();
        int taking = aim.groups() == 1 ? 0 : taking();
        Numbers numbers = Numbers.of(aim, USUAL_POWER, new Numbers.Groups(groups, taking), effort);
        int n = Math.max(Numbers.FEWEST, series.perGroup());
        Numbers.Row chosen = new Numbers.Row(
                series.perGroup(),
                aim.power(n),
                aim.smallest(n),
                effort.of(form.groups().size() * series.perGroup(), taking() * series.perGroup()));
        Optional<Plan.NumberReason> reason = scattered
                .filter(it -> !form.text(kind.field("expected")).isEmpty())
                .map(it -> new Plan.NumberReason(
                        series.name(),
                        written(it.value(), property),
                        it.from(),
                        form.text(kind.field("expected")),
                        Optional.of(form.text(kind.field("worth"))).filter(w -> !w.isEmpty()),
                        chosen.power()));
        return new Known(kind, property, numbers, scattered, chosen, expected(aim), reason);
    }

    private static OptionalDouble expected(Aim aim) {
        if (!(aim instanceof Aim.Change change)) {
            return OptionalDouble.empty();
        }
        double none = change.effect() instanceof PlannedEffect.Ratio ? 1 : 0;
        return OptionalDouble.of(change.effect().expected() - none);
    }

    private int taking() {
        return (int) form.groups().stream()
                .filter(it -> it.together().contains(Together.MIX))
                .count();
    }

    private Optional<Property> property(PlanKind kind) {
        Optional<TestMethod> method = workspace.methods().named(kind.series().method());
        return method.flatMap(it -> kind.asked()
                .flatMap(asked -> it.description().property(asked.property()))
                .or(() -> it.description().properties().stream().findFirst()));
    }

    private Scattered scatter(PlanKind kind, Property property) {
        String typed = form.text(kind.field("scatter"));
        if (!typed.isEmpty()) {
            return new Scattered(size(kind, "scatter", typed, property), "typed");
        }
        String method = kind.series().method();
        return workspace
                .plans()
                .earlierScatter(method, property)
                .map(it -> new Scattered(
                        it.scatter(),
                        "as in %s, %s degrees of freedom"
                                .formatted(String.join(", ", it.studies()), it.df())))
                .or(() -> usual(method, property))
                .orElseThrow(() -> new FieldTrouble(
                        "scatter",
                        "no scatter is usual for %s: type one, from pilots say"
                                .formatted(property.label())));
    }

    private Optional<Scattered> usual(String method, Property property) {
        for (Answering each : workspace.methods().named(method).orElseThrow().answering()) {
            boolean same = each.property().equals(property)
                    || each.property().family().equals(property.family());
            OptionalDouble usual = each.usualScatter();
            if (same && usual.isPresent()) {
                return Optional.of(new Scattered(
                        usual.getAsDouble(), "usual for this test: common practice, no source"));
            }
        }
        return Optional.empty();
    }

    private Aim aim(PlanKind kind, Property property, double scatter) {
        boolean relative = property.scale() == Scale.RATIO;
        if (!relative && property.scale() != Scale.INTERVAL) {
            throw new FieldTrouble(
                    "n",
                    "what so many tell of %s is said once there are results"
                            .formatted(property.label()));
        }
        String typedWorth = form.text(kind.field("worth"));
        double worth = typedWorth.isEmpty() ? 0 : size(kind, "worth", typedWorth, property);
        if (kind.said(Term.EXPECT).filter("same"::equals).isPresent()) {
            if (typedWorth.isEmpty()) {
                throw new FieldTrouble(
                        "worth",
                        "a claim of no change needs the smallest change that would matter");
            }
            return new Aim.NoChange(
                    worth,
                    scatter,
                    relative ? Aim.NoChange.Scale.RATIO : Aim.NoChange.Scale.DIFFERENCE);
        }
        String typed = form.text(kind.field("expected"));
        if (typed.isEmpty()) {
            throw new FieldTrouble("expected", "say which change is expected, such as 15 %");
        }
        double expected = size(kind, "expected", typed, property);
        if (kind.said(Term.AT).isPresent()) {
            return new Aim.Clears(expected, scatter, share(kind));
        }
        boolean down = kind.said(Term.EXPECT).filter("lower"::equals).isPresent();
        double change = down ? -Math.abs(expected) : expected;
        return new Aim.Change(
                relative
                        ? Expected.ratio(change, worth, scatter)
                        : Expected.difference(change, worth, scatter));
    }

    private Aim allPass(PlanKind kind) {
        String typed = form.text(kind.field("expected"));
        return new Aim.AllPass(typed.isEmpty() ? 1 : share(kind, "expected", typed), share(kind));
    }

    private double share(PlanKind kind) {
        return kind.said(Term.OF).map(it -> share(kind, "n", it)).orElse(USUAL_SHARE);
    }

    private static double share(PlanKind kind, String field, String text) {
        try {
            return Quantity.parseShare(text);
        } catch (QuantityException e) {
            throw new FieldTrouble(field, String.valueOf(e.getMessage()));
        }
    }

    private static double size(PlanKind kind, String field, String text, Property property) {
        if (property.scale() == Scale.RATIO) {
            return share(kind, field, text);
        }
        try {
            Quantity quantity = Quantity.parse(text);
            return quantity.unit().equals(Unit.ONE)
                    ? quantity.value()
                    : quantity.differenceIn(property.unit());
        } catch (QuantityException e) {
            throw new FieldTrouble(field, String.valueOf(e.getMessage()));
        }
    }

    /** Returns a size as people read it, relative or with its unit. */
    static String written(double value, Property property) {
        if (property.scale() == Scale.RATIO) {
            return Written.percent(value);
        }
        String symbol = property.unit().symbol();
        return Written.number(value, 3) + (symbol.isEmpty() ? "" : "\u2009" + symbol);
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

    /** What is wrong with one field. */
    private static final class FieldTrouble extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String field;

        FieldTrouble(String field, String sentence) {
            super(sentence);
            this.field = field;
        }

        String field() {
            return field;
        }
    }
}
