package org.twinbar.method;

/** What became of a property: a value, a bound, a word, or the reason why there is none. */
public sealed interface Yield {

    /**
     * Returns a calculated number, or the reason why it is none where the readings led to a
     * division by zero or the like: no reading may end a method with an exception.
     */
    static Yield of(double calculated) {
        return Double.isFinite(calculated)
                ? new Value(calculated)
                : new Missing("these readings give no finite number");
    }

    /** A number. */
    record Value(double value) implements Yield {
        public Value {
            requireFinite(value);
        }
    }

    /**
     * A number from a fit, with the standard uncertainty that the scatter about the fit gives it.
     *
     * @param standardUncertainty from the scatter alone, zero or more
     * @param degreesOfFreedom of that scatter
     */
    record Fitted(double value, double standardUncertainty, double degreesOfFreedom)
            implements Yield {
        public Fitted {
            requireFinite(value);
            if (!(standardUncertainty >= 0) || !(degreesOfFreedom > 0)) {
                throw new IllegalArgumentException(
                        "a fit needs u of zero or more and degrees of freedom above 0, not %s and %s"
                                .formatted(standardUncertainty, degreesOfFreedom));
            }
        }
    }

    /** The true value is at least this. */
    record AtLeast(double bound, String reason) implements Yield {
        public AtLeast {
            requireFinite(bound);
        }
    }

    /** The true value is below this. */
    record Below(double bound, String reason) implements Yield {
        public Below {
            requireFinite(bound);
        }
    }

    /** The true value lies between two looks. */
    record Between(double from, double to, String reason) implements Yield {
        public Between {
            requireFinite(from);
            requireFinite(to);
            if (!(from <= to)) {
                throw new IllegalArgumentException("between %s and %s".formatted(from, to));
            }
        }
    }

    /** A word, such as "yes". */
    record Word(String word) implements Yield {}

    /** There is no value. */
    record Missing(String reason) implements Yield {
        public Missing {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("a missing value needs its reason");
            }
        }
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a result must be a finite number, not " + value);
        }
    }
}
