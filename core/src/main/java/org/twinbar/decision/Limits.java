package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.twinbar.finding.Finding;

/** What limits a comparison, as findings: what was seen, why it matters, what to do. */
final class Limits {

    static final Finding.Kind NO_VALUE = Finding.Kind.note(
            "no-value", "%s (%s) has no value: %s. It stays listed and is not counted.");
    static final Finding.Kind BOUND = Finding.Kind.warning(
            "bound-not-averaged",
            "%s (%s) is known by a bound alone, and a mean leaves it aside; compare by rate or rank to use it.");
    static final Finding.Kind LEFT_OUT_BEFORE = Finding.Kind.note(
            "left-out-before", "%s (%s) was left out by %s before its value was seen: %s.");
    static final Finding.Kind LEFT_OUT_AFTER = Finding.Kind.warning(
            "left-out-after",
            "%s (%s) was left out by %s after its value was seen: %s. The weaker verdict of with and without it is given.");
    static final Finding.Kind CONFOUNDED = Finding.Kind.serious(
            "treatment-is-block",
            "%s and %s have no %s in common, and one of them comes from a single one: what the treatment did can't be"
                    + " told from what the %s did. Make both in each of several.");
    static final Finding.Kind ONE_BLOCK = Finding.Kind.warning(
            "one-block",
            "All of %s comes from one %s (%s), so that the verdict is about this %s. A second one would tell whether"
                    + " it can be repeated.");
    static final Finding.Kind BLOCKS_ARE_UNITS = Finding.Kind.note(
            "blocks-are-units",
            "No %s holds both groups, so that each %s counts as one: its specimens are repeats of one another.");
    static final Finding.Kind TWO_BLOCKS = Finding.Kind.warning(
            "two-blocks",
            "All of %s comes from two %s, which tell little of how a third would differ; where they differ much, the"
                    + " interval is narrower than it says. Make a third %s.");
    static final Finding.Kind FEW_EVENTS = Finding.Kind.note(
            "few-events",
            "The rate rests on %s events, and its interval is an approximation that gets better with their number: with"
                    + " fewer than 30 it may miss the true rate in seven studies of a hundred instead of five"
                    + " (simulated).");
    static final Finding.Kind NOT_TOLD_APART = Finding.Kind.warning(
            "blocks-not-told-apart",
            "A %s takes each specimen for itself: what those of one %s share is not told from chance. Look whether one"
                    + " %s alone makes the difference.");
    static final Finding.Kind WITHIN_BLOCKS = Finding.Kind.note(
            "rates-within-blocks",
            "Each specimen was compared with those of its own %s alone, and one ratio of rates is taken for all: how"
                    + " differently the treatment acts from one %s to the next is no part of the interval.");
    static final Finding.Kind ONE_EFFECT = Finding.Kind.warning(
            "one-effect-in-two-blocks",
            "With two %s one effect is taken for both, since two can't show how differently the treatment acts from one"
                    + " to the next. Where it varies as much as specimens scatter, one such interval in five misses the"
                    + " true effect instead of one in twenty (simulated). A third %s would show it.");
    static final Finding.Kind UNITS = Finding.Kind.note(
            "units", "%s specimens shared %s treatments, and each treatment counts once.");
    static final Finding.Kind COARSE = Finding.Kind.note(
            "coarse-readings",
            "The values of %s scatter less than their readings can show (standard uncertainty %s), so that the"
                    + " resolution stands in for the scatter. A finer instrument would tell more.");
    static final Finding.Kind STEP = Finding.Kind.note(
            "step-assumed",
            "The smallest step of the values was taken from their decimals: %s. Name the resolution if it was coarser.");
    static final Finding.Kind DOUBTED = Finding.Kind.warning(
            "doubted-specimen",
            "%s lies farther from the rest of %s than chance puts one group in twenty. Look for a cause; it is counted"
                    + " unless you leave it out with a reason.");
    static final Finding.Kind SIZES = Finding.Kind.warning(
            "unequal-numbers",
            "One group has more than twice as many specimens as the other (%s and %s); with skewed scatter the error"
                    + " rate is then not what it says.");
    static final Finding.Kind ONE_SPECIMEN = Finding.Kind.warning(
            "one-specimen",
            "%s has one specimen, which shows no scatter. Make at least three of each group.");

    private static final int MOST_DIGITS_OF_A_READING = 7;

    /** Where the share of false "supported" is no more than chance above its rate: calibration. */
    private static final int ENOUGH_EVENTS = 30;

    private Limits() {}

    /** Returns the findings on the specimens, before and after they were counted. */
    static List<Finding> of(Judge judge, Sample treated, Sample control, Judge.Judged judged) {
        List<Finding> findings = new ArrayList<>();
        for (Sample sample : List.of(treated, control)) {
            sample.observations().forEach(one -> onSpecimen(judge, one).ifPresent(findings::add));
            units(judge, sample).ifPresent(findings::add);
        }
        onLayout(judge, judged, treated, control).ifPresent(findings::add);
        for (Sample sample : List.of(judged.treated(), judged.control())) {
            onScatter(judge, sample, findings);
        }
        onNumbers(judge, judged, findings);
        return findings;
    }

    /** Returns the findings on one group that is held against a level. */
    static List<Finding> ofOne(Judge judge, Sample specimens, Sample counted) {
        List<Finding> findings = new ArrayList<>();
        specimens.observations().forEach(one -> onSpecimen(judge, one).ifPresent(findings::add));
        units(judge, specimens).ifPresent(findings::add);
        onScatter(judge, counted, findings);
        if (counted.values().length == 1) {
            findings.add(ONE_SPECIMEN.with(counted.group()));
        }
        return findings;
    }

    private static Optional<Finding> onSpecimen(Judge judge, Observation one) {
        if (one.leftOut().isPresent()) {
            LeftOut out = one.leftOut().get();
            Finding.Kind kind = out.sight() == LeftOut.Sight.AFTER_VALUE_WAS_SEEN
                    ? LEFT_OUT_AFTER
                    : LEFT_OUT_BEFORE;
            return Optional.of(kind.with(one.specimen(), one.group(), out.who(), stop(out.why())));
        }
        if (one.observed() instanceof Observed.Unknown unknown) {
            return Optional.of(NO_VALUE.with(one.specimen(), one.group(), stop(unknown.reason())));
        }
        boolean averaged = judge.question().effect() == Effect.RATIO
                || judge.question().effect() == Effect.DIFFERENCE;
        boolean bound = one.observed() instanceof Observed.AtLeast
                || one.observed() instanceof Observed.Below
                || one.observed() instanceof Observed.Between;
        return averaged && bound
                ? Optional.of(BOUND.with(one.specimen(), one.group()))
                : Optional.empty();
    }

    private static Optional<Finding> units(Judge judge, Sample sample) {
        Sample counted = sample.counted();
        int specimens = counted.size();
        int units = Units.named(counted, judge.question()).size();
        return units < specimens ? Optional.of(UNITS.with(specimens, units)) : Optional.empty();
    }

    private static Optional<Finding> onLayout(
            Judge judge, Judge.Judged judged, Sample treated, Sample control) {
        String kind = Layout.kind(treated);
        Effect effect = judge.question().effect();
        boolean means = effect == Effect.RATIO || effect == Effect.DIFFERENCE;
        boolean crossed = judged.layout() == Layout.CROSSED;
        if (effect == Effect.RATE && crossed) {
            return Optional.of(WITHIN_BLOCKS.with(kind, kind));
        }
        if (effect == Effect.RATE ? judged.layout().countsBlocks() : !means && crossed) {
            return Optional.of(NOT_TOLD_APART.with(effect.word(), kind, kind));
        }
        if (judged.layout() == Layout.TREATED_IN_SEVERAL && judged.treated().size() == 2) {
            return Optional.of(TWO_BLOCKS.with(treated.group(), Written.plural(kind), kind));
        }
        return switch (judged.layout()) {
            case CONFOUNDED ->
                Optional.of(CONFOUNDED.with(treated.group(), control.group(), kind, kind));
            case TREATED_IN_ONE ->
                Optional.of(ONE_BLOCK.with(
                        treated.group(),
                        kind,
                        Layout.first(treated).map(Block::name).orElse(kind),
                        kind));
            case SEPARATE, TREATED_IN_SEVERAL -> Optional.of(BLOCKS_ARE_UNITS.with(kind, kind));
            case CROSSED ->
                Layout.holdingBoth(judged.treated(), judged.control()) == 2
                        ? Optional.of(ONE_EFFECT.with(Written.plural(kind), kind))
                        : Optional.empty();
            case PLAIN -> Optional.empty();
        };
    }

    private static void onScatter(Judge judge, Sample sample, List<Finding> findings) {
        if (!judge.question().effect().readsDistances()) {
            return;
        }
        double u = sample.coarseness(judge.step());
        if (u > 0) {
            findings.add(COARSE.with(
                    sample.group(),
                    Written.exact(u) + Written.unit(judge.question().subject().unit())));
        }
        Doubts.doubted(sample)
                .forEach(one -> findings.add(DOUBTED.with(one.specimen(), one.group())));
    }

    private static void onNumbers(Judge judge, Judge.Judged judged, List<Finding> findings) {
        int ours = counted(judge, judged.treated());
        int others = counted(judge, judged.control());
        for (Sample sample : List.of(judged.treated(), judged.control())) {
            if (counted(judge, sample) == 1) {
                findings.add(ONE_SPECIMEN.with(sample.group()));
            }
        }
        if (judge.question().effect() == Effect.RATE) {
            long events = Stream.of(judged.treated(), judged.control())
                    .flatMap(sample -> Rates.lives(sample).stream())
                    .filter(life -> !life.isCensored())
                    .count();
            if (events > 0 && events < ENOUGH_EVENTS) {
                findings.add(FEW_EVENTS.with(events));
            }
        }
        if (Math.min(ours, others) > 1 && Math.max(ours, others) > 2 * Math.min(ours, others)) {
            findings.add(SIZES.with(ours, others));
        }
    }

    /** A test that ended first counts for a rate, though it gave no number. */
    private static int counted(Judge judge, Sample sample) {
        return judge.question().effect() == Effect.RATE
                ? Rates.lives(sample).size()
                : sample.values().length;
    }

    /**
     * Returns the finding that the step was taken from the values, where it looks like one of a
     * reading.
     */
    static Optional<Finding> step(Judge judge, Sample treated, Sample control) {
        boolean given = judge.question().resolution().isPresent()
                || treated.hasOwnUncertainties()
                || control.hasOwnUncertainties();
        double largest = 0;
        for (Sample sample : List.of(treated, control)) {
            for (double value : sample.values()) {
                largest = Math.max(largest, Math.abs(value));
            }
        }
        boolean reading = judge.step() * StrictMath.pow(10, MOST_DIGITS_OF_A_READING) > largest;
        boolean read = judge.question().effect().readsDistances();
        return given || largest == 0 || !reading || !read
                ? Optional.empty()
                : Optional.of(STEP.with(Written.exact(judge.step())
                        + Written.unit(judge.question().subject().unit())));
    }

    /** Returns a reason without its own full stop, since the sentence has one. */
    private static String stop(String reason) {
        return reason.endsWith(".") ? reason.substring(0, reason.length() - 1) : reason;
    }
}
