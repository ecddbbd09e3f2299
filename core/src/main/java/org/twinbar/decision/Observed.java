package org.twinbar.decision;

/** What one specimen gave. */
public sealed interface Observed {

    /** A number. */
    record Number(double value) implements Observed {
        public Number {
            requireFinite(value);
        }
    }

    /** It had not happened by then, or it held up to there. */
    record AtLeast(double bound) implements Observed {
        public AtLeast {
            requireFinite(bound);
        }
    }

    /** It lies below this, which was the least that could be told. */
    record Below(double bound) implements Observed {
        public Below {
            requireFinite(bound);
        }
    }

    /** It lies between two looks. */
    record Between(double from, double to) implements Observed {
        public Between {
            requireFinite(from);
            requireFinite(to);
            if (!(from <= to)) {
                throw new IllegalArgumentException(
                        "A value between two looks runs upwards, not from %s to %s."
                                .formatted(from, to));
            }
        }
    }

    /** Whether it is so. */
    record YesNo(boolean yes) implements Observed {}

    /** There is no value, for this reason. */
    record Unknown(String reason) implements Observed {
        public Unknown {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("A missing value needs its reason.");
            }
        }
    }

    private static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(
                    "An observed value must be finite, not " + value + ".");
        }
    }
}
