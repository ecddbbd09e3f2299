package org.twinbar.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import org.twinbar.decision.Aims;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Subject;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.finding.Finding.Kind;
import org.twinbar.method.Answering;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Expected;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.Sizing;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.StandardDeviation;
import org.twinbar.study.NumbersAsked.Wish;
import org.twinbar.study.NumbersTold.Origin;
import org.twinbar.study.NumbersTold.Scatter;
import org.twinbar.study.calculation.EarlierScatter;
import org.twinbar.study.calculation.EarlierShare;
import org.twinbar.study.file.OwnMethods;

/** Reckons how many specimens tell what, for every kind of effect. */
public final class HowMany {

    private static final Kind FEW = Kind.note(
            "plan-scatter-from-few",
            "The scatter of earlier studies rests on %s degrees of freedom: in one of five such"
                    + " cases the true one is above %s, so make some more.");

    /** From so many on a scatter of one's own is believed as it is. Source: METHODS.md I.4. */
    private static final int ENOUGH_OF_ONES_OWN = 9;

    private static final double CAUTION = 0.8;

    private static final double USUAL_SHARE = 0.9;
    private static final Unit GRAMS = Unit.of("g");
    private static final Unit HOURS = Unit.of("h");

    private final Methods methods;
    private final EarlierStudies bench;
    private final NumbersAsked asked;
    private final Optional<Property> property;
    private final Effect effect;
    private final List<Finding> findings = new ArrayList<>();
    private final List<String> assuming = new ArrayList<>();
    /** What the aim hangs on beside what was asked. */
    private final List<Double> told = new ArrayList<>();

    private HowMany(Methods methods, EarlierStudies bench, NumbersAsked asked) {
        this.methods = methods;
        this.bench = bench;
        this.asked = asked;
        this.property = property();
        this.effect = effect();
    }

    /**
     * Returns what so many tell where there is no workspace, so that no earlier study tells a
     * scatter.
     *
     * @throws InputException where something is missing, can't be read, or proves nothing
     */
    public static NumbersTold withoutBench(Methods methods, NumbersAsked asked) {
        return told(methods, EarlierStudies.NONE, asked);
    }

    static NumbersTold told(Methods methods, EarlierStudies bench, NumbersAsked asked) {
        try {
            return new HowMany(methods, bench, asked).told();
        } catch (PlanException | QuestionException e) {
            throw new InputException(String.valueOf(e.getMessage()));
        }
    }

    private NumbersTold told() {
        Expectation expectation = expectation();
        Optional<Scatter> scatter = counted() ? Optional.empty() : Optional.of(scatter());
        scatter.map(Scatter::value).ifPresent(told::add);
        Aim fresh = aim(expectation, scatter.map(Scatter::value).orElse(0.0));
        Aim aim = bench.reckoned(asked, List.copyOf(told), fresh);
        int coated = whole(Wish.COATED, 1);
        Numbers numbers = Numbers.of(
                aim,
                share(Wish.POWER, Sizing.USUAL_POWER),
                aim.groups() == 1
                        ? new Numbers.Groups(1, Math.min(1, coated))
                        : new Numbers.Groups(whole(Wish.GROUPS, 2), coated),
                effort(),
                asked.said(Wish.PER_GROUP).isEmpty()
                        ? OptionalInt.empty()
                        : OptionalInt.of(whole(Wish.PER_GROUP, 0)));
        findings.addAll(numbers.findings());
        return new NumbersTold(
                numbers,
                effect,
                expectation,
                relative() ? NumbersTold.Sizes.RELATIVE : NumbersTold.Sizes.AMOUNTS,
                unit().symbol(),
                scatter,
                assuming,
                findings);
    }

    private Optional<Property> property() {
        Optional<String> method = asked.said(Wish.METHOD);
        if (method.isEmpty()) {
            return Optional.empty();
        }
        TestMethod test = OwnMethods.named(methods, method.get());
        Optional<String> name = asked.said(Wish.PROPERTY);
        if (name.isEmpty()) {
            return Optional.of(test.description().properties().get(0));
        }
        Optional<Property> found = test.description().properties().stream()
                .filter(it -> it.name().equals(name.get()) || it.column().equals(name.get()))
                .findFirst();
        List<String> names =
                test.description().properties().stream().map(Property::name).toList();
        return Optional.of(found.orElseThrow(() ->
                new InputException("property: the test %s yields no '%s' among %s%s"
                        .formatted(
                                method.get(),
                                name.get(),
                                String.join(", ", names),
                                org.twinbar.exchange.Spelling.hint(name.get(), names)))));
    }

    private Effect effect() {
        Optional<String> word = asked.said(Wish.EFFECT);
        if (word.isPresent()) {
            return Arrays.stream(Effect.values())
                    .filter(it -> it.word().equals(word.get()))
                    .findFirst()
                    .orElseThrow(() -> new InputException("effect: '%s' is none of %s"
                            .formatted(
                                    word.get(),
                                    String.join(
                                            ", ",
                                            Arrays.stream(Effect.values())
                                                    .map(Effect::word)
                                                    .toList()))));
        }
        if (asked.said(Wish.ABOVE).isPresent()) {
            return Effect.LEVEL;
        }
        if (property.isEmpty()) {
            return inPerCent() ? Effect.RATIO : Effect.DIFFERENCE;
        }
        return switch (property.get().scale()) {
            case RATIO -> Effect.RATIO;
            case INTERVAL -> Effect.DIFFERENCE;
            case YES_NO -> againstControl() ? Effect.SHARE : Effect.LEVEL;
            case TIME_TO_EVENT -> Effect.RATE;
            case RANK -> Effect.RANK;
        };
    }

    private boolean againstControl() {
        return asked.said(Wish.EXPECTED).isPresent()
                || asked.said(Wish.CONTROL_SHARE).isPresent();
    }

    private boolean inPerCent() {
        return asked.said(Wish.SCATTER)
                .map(it -> it.contains("%") || !it.matches(".*[A-Za-z°].*"))
                .orElse(true);
    }

    private boolean yesNo() {
        return property.filter(it -> it.scale() == Scale.YES_NO).isPresent();
    }

    /** Whether parts are counted or put in order, so that no scatter plays a part. */
    private boolean counted() {
        return effect == Effect.SHARE
                || effect == Effect.RATE
                || effect == Effect.RANK
                || effect == Effect.LEVEL && yesNo();
    }

    private Expectation expectation() {
        if (effect == Effect.LEVEL) {
            return Expectation.HIGHER;
        }
        if (asked.said(Wish.EXPECTED).isPresent()) {
            return expected() < 0 ? Expectation.LOWER : Expectation.HIGHER;
        }
        boolean same = asked.said(Wish.EXPECT).orElse(NumbersAsked.SAME).equals(NumbersAsked.SAME);
        if (!same || asked.said(Wish.WORTH).isEmpty()) {
            throw new InputException(
                    "say the change that is expected; for a claim of no change what is worth having; for a level how far above it the mean lies");
        }
        return Expectation.SAME;
    }

    /** The change that is expected, with the sign of the direction that was said. */
    private double expected() {
        double size = size(Wish.EXPECTED);
        return switch (asked.said(Wish.EXPECT).orElse("")) {
            case NumbersAsked.LOWER -> -Math.abs(size);
            case NumbersAsked.HIGHER -> Math.abs(size);
            case "" -> size;
            default ->
                throw new InputException(
                        "expect: where a change is expected it is 'higher' or 'lower', not '%s'"
                                .formatted(asked.said(Wish.EXPECT).orElse("")));
        };
    }

    private Scatter scatter() {
        Scatter raw = rawScatter();
        if (asked.said(Wish.RESOLUTION).isEmpty()) {
            return raw;
        }
        double step = size(Wish.RESOLUTION);
        findings.addAll(Numbers.resolution(raw.value(), step));
        return new Scatter(Numbers.seenScatter(raw.value(), step), raw.origin(), raw.words());
    }

    private Scatter rawScatter() {
        if (asked.said(Wish.SCATTER).isPresent()) {
            return new Scatter(size(Wish.SCATTER), Origin.GIVEN, "given");
        }
        Property known = property.orElseThrow(
                () -> new InputException("say the scatter, or the test with its property"));
        if (relative() != (known.scale() == Scale.RATIO)) {
            throw new InputException(
                    "what is known of the scatter of %s is a share of its mean: give one in %s"
                            .formatted(known.label(), unit().symbol()));
        }
        Optional<EarlierScatter> earlier = bench.scatter(method(), known);
        if (earlier.isPresent()) {
            EarlierScatter own = earlier.get();
            if (own.df() < ENOUGH_OF_ONES_OWN) {
                double cautious = StandardDeviation.upperLimit(own.scatter(), own.df(), CAUTION);
                findings.add(FEW.with(
                        own.df(),
                        relative()
                                ? Figures.two(100 * cautious) + " %"
                                : (Figures.two(cautious) + " " + unit().symbol()).strip()));
            }
            return new Scatter(
                    own.scatter(),
                    Origin.EARLIER_STUDIES,
                    "of %s, %s degrees of freedom"
                            .formatted(String.join(", ", own.studies()), own.df()));
        }
        return usual(known)
                .orElseThrow(() ->
                        new InputException("no scatter is usual for %s: give one, from pilots say"
                                .formatted(known.label())));
    }

    private Optional<Scatter> usual(Property known) {
        for (Answering each : OwnMethods.named(methods, method()).answering()) {
            boolean same = each.property().equals(known)
                    || each.property().family().equals(known.family());
            OptionalDouble usual = each.usualScatter();
            if (same && usual.isPresent()) {
                return Optional.of(new Scatter(
                        usual.getAsDouble(),
                        Origin.USUAL_FOR_THE_TEST,
                        "usual for the test (common practice, no source)"));
            }
        }
        return Optional.empty();
    }

    private Aim aim(Expectation expectation, double scatter) {
        if (effect == Effect.LEVEL) {
            double share = share(Wish.OF, USUAL_SHARE);
            if (yesNo()) {
                assuming.add("%s %% of all parts are to be shown to pass, with none that fails"
                        .formatted(Figures.two(100 * share)));
            }
            return yesNo()
                    ? new Aim.AllPass(share(Wish.ABOVE, 1), share)
                    : new Aim.Clears(margin(), scatter, share);
        }
        double worth = asked.said(Wish.WORTH).isPresent() ? size(Wish.WORTH) : 0;
        if (counted()) {
            return counted(expectation, worth);
        }
        if (expectation == Expectation.SAME) {
            return new Aim.NoChange(
                    worth,
                    scatter,
                    relative() ? Aim.NoChange.Scale.RATIO : Aim.NoChange.Scale.DIFFERENCE);
        }
        return new Aim.Change(
                relative()
                        ? Expected.ratio(expected(), worth, scatter)
                        : Expected.difference(expected(), worth, scatter));
    }

    private double margin() {
        if (asked.said(Wish.ABOVE).isEmpty()) {
            throw new InputException(
                    "say how far above the level the mean is expected to lie, such as 6 %s"
                            .formatted(unit().symbol())
                            .strip());
        }
        return size(Wish.ABOVE);
    }

    private Aim counted(Expectation expectation, double worth) {
        Subject subject = Subject.of(property.map(Property::label).orElse(effect.word()), unit());
        Question question = expectation == Expectation.SAME
                ? Question.same(subject, effect, worth)
                : Question.of(subject, effect, expectation);
        if (worth > 0 && expectation != Expectation.SAME) {
            question = question.withWorth(worth);
        }
        double expected = expectation == Expectation.SAME ? 0 : expected();
        if (effect == Effect.SHARE) {
            return Aims.shares(question, controlShare(), expected);
        }
        if (effect == Effect.RATE) {
            double seen = share(Wish.SEEN, 1);
            assuming.add("rates stay in proportion at all times");
            assuming.add(
                    seen == 1
                            ? "all are watched until it has happened"
                            : "the test goes on until it has happened to %s %% of the control"
                                    .formatted(Figures.two(100 * seen)));
            return Aims.rate(question, 1 + expected, seen);
        }
        assuming.add("no two specimens read alike: ties take more specimens");
        assuming.add("the treated are like the best or the worst of several of the control");
        return Aims.rank(question, Effect.RANK.none() + expected);
    }

    private double controlShare() {
        if (asked.said(Wish.CONTROL_SHARE).isPresent()) {
            assuming.add("the share of the control is as given");
            return share(Wish.CONTROL_SHARE, 0);
        }
        EarlierShare earlier = property.flatMap(it -> bench.controlShare(method(), it))
                .orElseThrow(
                        () -> new InputException(
                                "say the share of the control that says yes (control-share), such as 40%: no earlier study tells it"));
        assuming.add("%s of %s of the control said yes in %s"
                .formatted(earlier.yes(), earlier.all(), String.join(", ", earlier.studies())));
        told.add(earlier.share());
        return earlier.share();
    }

    /** A level of what has a true zero is told by how far past it the mean lies, as a share. */
    private boolean relative() {
        return effect == Effect.LEVEL
                ? property.map(it -> it.scale() == Scale.RATIO).orElseGet(this::inPerCent)
                : effect.sizedInPercent();
    }

    private Unit unit() {
        if (property.isPresent()) {
            return property.get().unit();
        }
        return relative() || asked.said(Wish.SCATTER).isEmpty()
                ? Unit.ONE
                : read(Wish.SCATTER, Quantity::parse).unit();
    }

    private String method() {
        return asked.said(Wish.METHOD).orElse("");
    }

    private double size(Wish wish) {
        return relative() ? read(wish, Quantity::parseShare) : amount(wish);
    }

    /** A bare number is in the unit of the property, or of the scatter. */
    private double amount(Wish wish) {
        Quantity quantity = read(wish, Quantity::parse);
        return quantity.unit().equals(Unit.ONE)
                ? quantity.value()
                : read(wish, text -> quantity.differenceIn(unit()));
    }

    private double share(Wish wish, double unlessSaid) {
        return asked.said(wish).isPresent() ? read(wish, Quantity::parseShare) : unlessSaid;
    }

    private int whole(Wish wish, int unlessSaid) {
        return asked.said(wish).isEmpty() ? unlessSaid : read(wish, Integer::parseInt);
    }

    private Effort effort() {
        return new Effort(
                inUnit(Wish.FILAMENT, GRAMS),
                inUnit(Wish.RESIN, GRAMS),
                inUnit(Wish.PRINT_TIME, HOURS),
                inUnit(Wish.HAND_TIME, HOURS),
                new Effort.Prices(
                        inUnit(Wish.FILAMENT_PRICE, Unit.ONE), inUnit(Wish.RESIN_PRICE, Unit.ONE)));
    }

    private double inUnit(Wish wish, Unit unit) {
        return asked.said(wish).isEmpty() ? 0 : read(wish, text -> Quantity.parse(text, unit));
    }

    private <T> T read(Wish wish, Function<String, T> reading) {
        String text = asked.said(wish).orElse("");
        try {
            return reading.apply(text);
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(wish.key(), e.getMessage()));
        } catch (NumberFormatException e) {
            throw new InputException("%s: '%s' is not a whole number".formatted(wish.key(), text));
        }
    }
}
