package org.twinbar.treatment;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * How long specimens wait between treatment and test, the same for all of a study.
 *
 * @param cure from the end of the treatment until it has cured; of a specimen that is not treated,
 *     from its print, so that all are of one age
 * @param condition in the air that they are tested in, after that
 */
public record Waiting(Duration cure, Duration condition) {

    private static final Duration LONGEST = Duration.ofDays(3650);

    /** A week at 23 °C, or what the data sheet says: METHODS.md G. */
    public static final Duration USUAL_CURE = Duration.ofDays(7);

    /** At 23 °C and 50 % humidity, where nothing else is said: ISO 291, METHODS.md L. */
    public static final Duration USUAL_CONDITION = Duration.ofHours(88);

    public static final Waiting USUAL = new Waiting(USUAL_CURE, USUAL_CONDITION);

    /** @throws TreatmentException unless both are zero or more, and no more than ten years */
    public Waiting {
        require(cure, "curing");
        require(condition, "conditioning");
    }

    /** What a specimen waits for. */
    public enum For {
        PRINT("to be printed"),
        TREATMENT("to be treated"),
        CURE("curing"),
        CONDITION("conditioning"),
        NOTHING("may be tested"),
        TESTED("tested");

        private final String words;

        For(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * What is known of a specimen.
     *
     * @param printed when it was
     * @param treated when the last treatment ended; empty where it was not, or is not to be
     * @param toBeTreated whether it is to be
     * @param cured when somebody saw it cured, earlier or later than the clock says
     * @param conditioned when its conditioning ended by what somebody noted
     * @param tested when it was
     */
    public record Known(
            Optional<Instant> printed,
            Optional<Instant> treated,
            boolean toBeTreated,
            Optional<Instant> cured,
            Optional<Instant> conditioned,
            Optional<Instant> tested) {}

    /**
     * Where a specimen stands.
     *
     * @param until when that ends, where time alone ends it
     */
    public record Stand(For waits, Optional<Instant> until) {}

    /** Returns where a specimen stands at a moment. */
    public Stand at(Instant now, Known known) {
        if (known.tested().isPresent()) {
            return new Stand(For.TESTED, Optional.empty());
        }
        if (known.printed().isEmpty() && known.treated().isEmpty()) {
            return new Stand(For.PRINT, Optional.empty());
        }
        if (known.toBeTreated() && known.treated().isEmpty()) {
            return new Stand(For.TREATMENT, Optional.empty());
        }
        if (known.conditioned().isPresent()) {
            return new Stand(For.NOTHING, Optional.empty());
        }
        Instant from = known.treated().or(known::printed).orElseThrow();
        Instant curedAt = known.cured().orElse(from.plus(cure));
        if (now.isBefore(curedAt)) {
            return new Stand(For.CURE, Optional.of(curedAt));
        }
        Instant ready = curedAt.plus(condition);
        return now.isBefore(ready)
                ? new Stand(For.CONDITION, Optional.of(ready))
                : new Stand(For.NOTHING, Optional.empty());
    }

    private static void require(Duration duration, String what) {
        if (duration.isNegative() || duration.compareTo(LONGEST) > 0) {
            throw new TreatmentException("The time of %s must lie from 0 to 3650 days, not at %s h."
                    .formatted(what, duration.toHours()));
        }
    }
}
