package org.twinbar.study.judged;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.planning.Placed;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.planning.Series;

/**
 * One specimen of the register: where it belongs, what was done to it, and what became of it.
 *
 * @param placed where the plan puts it; who reads instruments is shown {@link #group} instead
 * @param series what it is alike with but for its group
 * @param group its group, empty while the key is closed
 * @param done steps that were done, the first first
 * @param measured dimensions and masses, the last of each kind, in the order of measuring
 * @param photos the oldest first
 * @param fate what became of it
 */
public record Registered(
        Placed placed,
        Series series,
        Optional<PlannedGroup> group,
        List<Done> done,
        List<Measured> measured,
        List<Photo> photos,
        Fate fate) {

    /** What is done to a specimen, in its order. */
    public enum Step {
        PRINTED,
        TREATED,
        CURED,
        CONDITIONED,
        TESTED;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A step that was done.
     *
     * @param when it was done, or ended
     * @param what really happened; may be empty
     */
    public record Done(Step step, ZonedDateTime when, String what, String who) {}

    /** When something was measured. */
    public enum Moment {
        BEFORE,
        AFTER;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A dimension at several places, or the mass.
     *
     * @param quantity what, such as {@code width}, {@code thickness}, {@code mass}
     * @param moment before or after treatment
     * @param values at each place; mm, or g for the mass
     */
    public record Measured(String quantity, Moment moment, List<Double> values) {

        /** What is weighed rather than measured. */
        public static final String MASS = "mass";

        public Measured {
            values = List.copyOf(values);
        }

        public double mean() {
            return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        }

        public double least() {
            return values.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        }

        /** Returns the largest less the smallest. */
        public double spread() {
            return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow() - least();
        }

        public String unit() {
            return quantity.equals(MASS) ? "g" : "mm";
        }
    }

    /** What became of a specimen. */
    public record Fate(Kind kind, String why) {

        /** What can become of a specimen. */
        public enum Kind {
            TO_BE_MADE("to be made"),
            MADE("made"),
            TESTED("tested"),
            BROKEN("broken in handling"),
            MISPRINTED("misprinted"),
            LOST("lost"),
            LEFT_OUT("left out");

            private final String word;

            Kind(String word) {
                this.word = word;
            }

            public String word() {
                return word;
            }

            /** Returns whether a reading is still to be expected of it. */
            public boolean waits() {
                return this == TO_BE_MADE || this == MADE;
            }
        }
    }

    public Registered {
        done = List.copyOf(done);
        measured = List.copyOf(measured);
        photos = List.copyOf(photos);
    }

    public String code() {
        return placed.code();
    }

    /** Returns when a step was done. */
    public Optional<Done> done(Step step) {
        return done.stream().filter(each -> each.step() == step).reduce((a, b) -> b);
    }

    /** Returns what was measured of a quantity at a moment. */
    public Optional<Measured> measured(String quantity, Moment moment) {
        return measured.stream()
                .filter(each -> each.quantity().equals(quantity) && each.moment() == moment)
                .findFirst();
    }

    /** Returns the mass that it gained (g), where it was weighed before and after. */
    public OptionalDouble gained() {
        Optional<Measured> before = measured(Measured.MASS, Moment.BEFORE);
        Optional<Measured> after = measured(Measured.MASS, Moment.AFTER);
        return before.isPresent() && after.isPresent()
                ? OptionalDouble.of(after.get().mean() - before.get().mean())
                : OptionalDouble.empty();
    }

    /** Returns factors that a table may have: what parts specimens into blocks. */
    public Map<String, String> factors(boolean keyOpen) {
        Map<String, String> factors = new java.util.LinkedHashMap<>();
        factors.put("orientation", series.orientation().word());
        factors.put("print_run", Integer.toString(placed.run()));
        if (keyOpen) {
            placed.mix().ifPresent(mix -> factors.put("mix", Integer.toString(mix)));
            placed.load().ifPresent(load -> factors.put("oven_load", Integer.toString(load)));
        }
        return factors;
    }
}
