package org.twinbar.decision;

/** A calculated number, or the reason why there is none. */
public sealed interface Amount {

    /** A finite number. */
    record Known(double value) implements Amount {
        public Known {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "A known amount must be finite, not " + value + ".");
            }
        }
    }

    /** There is none, for this reason. */
    record None(String reason) implements Amount {
        public None {
            if (reason.isBlank()) {
                throw new IllegalArgumentException("An amount that isn't there needs its reason.");
            }
        }
    }

    static Amount of(double value) {
        return new Known(value);
    }

    static Amount none(String reason) {
        return new None(reason);
    }

    /** Returns the number where it is finite, or else the reason. */
    static Amount finite(double value, String otherwise) {
        return Double.isFinite(value) ? new Known(value) : new None(otherwise);
    }

    default boolean isKnown() {
        return this instanceof Known;
    }

    /** Returns the number, or what stands for it in a calculation where there is none. */
    default double orElse(double other) {
        return this instanceof Known known ? known.value() : other;
    }
}
