package org.twinbar.decision;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * A claim made measurable.
 *
 * <p>Sizes are kept as a person gives them: 0.05 for 5 % more or less, 3 for 3 °C, always above
 * zero. {@link #worth()} and {@link #claimed()} put them on the effect's scale: with {@code lower},
 * 5 % is a ratio of 0.95.
 *
 * @param subject what is compared
 * @param effect as which number
 * @param expectation which way the claim points
 * @param worthSize smallest change worth having
 * @param claimedSize size that the claim names
 * @param level what parts must clear, for {@link Effect#LEVEL} alone
 * @param resolution smallest step of the values, in their unit
 * @param beside intervals asked for beside the default one
 * @param errorRate of the default interval on both sides together; it belongs to the question
 * @param seed of everything that is drawn at random
 */
public record Question(
        Subject subject,
        Effect effect,
        Expectation expectation,
        OptionalDouble worthSize,
        OptionalDouble claimedSize,
        Optional<Level> level,
        OptionalDouble resolution,
        List<IntervalKind> beside,
        double errorRate,
        long seed) {

    private static final double USUAL_ERROR_RATE = 0.05;

    /** @throws QuestionException if it cannot be asked so, with the reason */
    public Question {
        beside = List.copyOf(beside);
        requireScale(subject, effect);
        requireSize("smallest change worth having", worthSize, effect, expectation);
        requireSize("claimed change", claimedSize, effect, expectation);
        if (!(errorRate > 0 && errorRate < 1)) {
            throw new QuestionException(
                    "The error rate must lie between 0 and 1, not be %s.".formatted(errorRate));
        }
        if (resolution.isPresent()
                && !(resolution.getAsDouble() >= 0 && Double.isFinite(resolution.getAsDouble()))) {
            throw new QuestionException(
                    "The smallest step of the values must be zero or more, not %s."
                            .formatted(resolution.getAsDouble()));
        }
        if (effect == Effect.LEVEL) {
            requireLevel(level, expectation, worthSize, claimedSize);
        } else if (level.isPresent()) {
            throw new QuestionException("A level goes with the effect 'level', not with '%s'."
                    .formatted(effect.word()));
        }
    }

    /**
     * Returns a question without sizes, at an error rate of 5 % and with seed 1.
     *
     * @throws QuestionException if it cannot be asked so; a claim of no change and a level need
     *     more: see {@link #same} and {@link #level}
     */
    public static Question of(Subject subject, Effect effect, Expectation expectation) {
        return new Draft(subject, effect, expectation).question();
    }

    /**
     * Returns the question whether nothing changed by more than a size.
     *
     * @throws QuestionException unless the size is above zero
     */
    public static Question same(Subject subject, Effect effect, double within) {
        Draft draft = new Draft(subject, effect, Expectation.SAME);
        draft.worthSize = OptionalDouble.of(within);
        return draft.question();
    }

    /** Returns the question whether a share of parts clears a level, on the side expected. */
    public static Question level(Subject subject, Level level, Expectation expectation) {
        Draft draft = new Draft(subject, Effect.LEVEL, expectation);
        draft.level = Optional.of(level);
        return draft.question();
    }

    /** Returns the same question of another property; the step of its values is its own. */
    public Question about(Subject other) {
        return with(draft -> {
            draft.subject = other;
            draft.resolution = OptionalDouble.empty();
        });
    }

    public Question withWorth(double size) {
        return with(draft -> draft.worthSize = OptionalDouble.of(size));
    }

    public Question withClaimed(double size) {
        return with(draft -> draft.claimedSize = OptionalDouble.of(size));
    }

    public Question withResolution(double step) {
        return with(draft -> draft.resolution = OptionalDouble.of(step));
    }

    public Question withBeside(List<IntervalKind> intervals) {
        return with(draft -> draft.beside = intervals);
    }

    public Question withErrorRate(double rate) {
        return with(draft -> draft.errorRate = rate);
    }

    public Question withSeed(long newSeed) {
        return with(draft -> draft.seed = newSeed);
    }

    private Question with(Consumer<Draft> change) {
        Draft draft = new Draft(subject, effect, expectation);
        draft.worthSize = worthSize;
        draft.claimedSize = claimedSize;
        draft.level = level;
        draft.resolution = resolution;
        draft.beside = beside;
        draft.errorRate = errorRate;
        draft.seed = seed;
        change.accept(draft);
        return draft.question();
    }

    /** A question in the making; it is checked when it is done. */
    private static final class Draft {
        private Subject subject;
        private final Effect effect;
        private final Expectation expectation;
        private OptionalDouble worthSize = OptionalDouble.empty();
        private OptionalDouble claimedSize = OptionalDouble.empty();
        private Optional<Level> level = Optional.empty();
        private OptionalDouble resolution = OptionalDouble.empty();
        private List<IntervalKind> beside = List.of();
        private double errorRate = USUAL_ERROR_RATE;
        private long seed = 1;

        Draft(Subject subject, Effect effect, Expectation expectation) {
            this.subject = subject;
            this.effect = effect;
            this.expectation = expectation;
        }

        Question question() {
            return new Question(
                    subject,
                    effect,
                    expectation,
                    worthSize,
                    claimedSize,
                    level,
                    resolution,
                    beside,
                    errorRate,
                    seed);
        }
    }

    /** Returns the effect's value for no change; for a level, the level itself. */
    public double none() {
        return level.map(Level::value).orElseGet(effect::none);
    }

    /**
     * Returns the smallest effect worth having on the effect's scale: the one given, else the one
     * claimed, else none. For a claim of no change it is the upper limit of what counts as none.
     */
    public double worth() {
        OptionalDouble size = worthSize.isPresent() ? worthSize : claimedSize;
        return size.isPresent() ? effect.of(size.getAsDouble(), expectation) : none();
    }

    /** Returns the claimed effect on the effect's scale, where the claim names one. */
    public OptionalDouble claimed() {
        return claimedSize.isPresent()
                ? OptionalDouble.of(effect.of(claimedSize.getAsDouble(), expectation))
                : OptionalDouble.empty();
    }

    /** Returns the level of the default interval, 0.95 for an error rate of 5 %. */
    public double confidence() {
        return 1 - errorRate;
    }

    private static void requireScale(Subject subject, Effect effect) {
        if (effect == Effect.RATIO && !subject.unit().hasTrueZero()) {
            throw new QuestionException(
                    "%s in %s has no true zero, so that a ratio would change with the unit; compare it by difference."
                            .formatted(subject.label(), subject.unit().symbol()));
        }
    }

    private static void requireSize(
            String what, OptionalDouble size, Effect effect, Expectation expectation) {
        if (size.isEmpty()) {
            if (expectation == Expectation.SAME && what.startsWith("smallest")) {
                throw new QuestionException(
                        "A claim of no change needs the smallest change that would"
                                + " matter: no data can show that there is none at all.");
            }
            return;
        }
        double value = size.getAsDouble();
        if (!(value > 0 && Double.isFinite(value))) {
            throw new QuestionException(
                    "The %s must be a size above zero, not %s; the direction is said by '%s'."
                            .formatted(what, value, expectation.word()));
        }
        double most = most(effect, expectation);
        if (!(value < most)) {
            throw new QuestionException("The %s must be below %s, not %s: no %s changes by more."
                    .formatted(what, most, value, effect.word()));
        }
        if (expectation == Expectation.SAME && what.startsWith("claimed")) {
            throw new QuestionException("A claim of no change has no claimed size.");
        }
    }

    private static double most(Effect effect, Expectation expectation) {
        return switch (effect) {
            case RATIO, RATE -> expectation == Expectation.HIGHER ? Double.POSITIVE_INFINITY : 1;
            case SHARE -> 1;
            case RANK -> 0.5;
            case DIFFERENCE, LEVEL -> Double.POSITIVE_INFINITY;
        };
    }

    private static void requireLevel(
            Optional<Level> level,
            Expectation expectation,
            OptionalDouble worthSize,
            OptionalDouble claimedSize) {
        if (level.isEmpty()) {
            throw new QuestionException(
                    "A claim about a level needs the level and the share of parts that must clear it.");
        }
        if (expectation == Expectation.SAME) {
            throw new QuestionException(
                    "Parts stay above a level or below it; 'same' says neither.");
        }
        if (worthSize.isPresent() || claimedSize.isPresent()) {
            throw new QuestionException(
                    "A level is cleared or not; a smallest or claimed change has no place in it.");
        }
    }
}
