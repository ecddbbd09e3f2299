package org.twinbar.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * A unit of measurement.
 *
 * <p>A value x in this unit is {@code x * factor + offset} in the coherent SI unit of the dimension.
 * Factors are decimal numbers, so that a conversion from µm to mm divides by exactly 1000.
 *
 * @param symbol what people read, such as {@code kJ/m²}; empty for a plain number
 * @param code what stands at the end of a column's name, such as {@code kJ_per_m2}
 * @param dimension what is measured
 * @param factor size in SI units, above zero
 * @param offset SI value of zero in this unit; zero but for °C and °F
 */
public record Unit(
        String symbol, String code, Dimension dimension, BigDecimal factor, BigDecimal offset) {

    /** A plain number. */
    public static final Unit ONE =
            new Unit("", "", Dimension.NONE, BigDecimal.ONE, BigDecimal.ZERO);

    public Unit {
        if (factor.signum() <= 0) {
            throw new IllegalArgumentException("factor of " + symbol + " is not above 0");
        }
    }

    /**
     * Reads a unit in any of the ways that people write it: {@code kJ/m²}, {@code kJ_per_m2},
     * {@code N·m}, {@code um}, {@code degC}.
     *
     * @throws QuantityException where the text is not a unit that Twinbar knows
     */
    public static Unit of(String text) {
        return find(text)
                .orElseThrow(() -> new QuantityException("unit '" + text + "' is not known"));
    }

    /** Reads a unit as {@link #of} does; empty where the text is none that Twinbar knows. */
    public static Optional<Unit> find(String text) {
        return Units.find(text);
    }

    public boolean measuresSameAs(Unit other) {
        return dimension.equals(other.dimension);
    }

    /**
     * Returns how values of this unit become values of another one.
     *
     * @throws QuantityException where the dimensions differ
     */
    public Conversion to(Unit other) {
        if (!measuresSameAs(other)) {
            throw new QuantityException(
                    "%s is %s, not %s as %s is"
                            .formatted(
                                    named(),
                                    dimension.describe(),
                                    other.dimension.describe(),
                                    other.named()));
        }
        return Conversion.between(this, other);
    }

    /** Returns the conversion of differences, in which zero points play no part. */
    public Conversion differenceTo(Unit other) {
        return to(other).withoutOffset();
    }

    /** Returns whether a ratio of two values makes sense: not for °C and °F. */
    public boolean hasTrueZero() {
        return offset.signum() == 0;
    }

    /** Returns the symbol, or "a plain number" where there is none. */
    public String named() {
        return symbol.isEmpty() ? "a plain number" : symbol;
    }

    /** How values of one unit become values of another: {@code x * multiplier / divisor + shift}. */
    public record Conversion(double multiplier, double divisor, double shift) {

        static final Conversion NOTHING = new Conversion(1, 1, 0);

        static Conversion between(Unit from, Unit to) {
            if (from.equals(to)) {
                return NOTHING;
            }
            MathContext precision = MathContext.DECIMAL128;
            BigDecimal ratio = from.factor.divide(to.factor, precision);
            BigDecimal inverse = to.factor.divide(from.factor, precision);
            double shift =
                    from.offset.subtract(to.offset).divide(to.factor, precision).doubleValue();
            // Dividing by 1000 rounds once, multiplying by 0.001 twice.
            boolean wholeInverse = inverse.stripTrailingZeros().scale() <= 0;
            return wholeInverse
                    ? new Conversion(1, inverse.doubleValue(), shift)
                    : new Conversion(ratio.doubleValue(), 1, shift);
        }

        public double apply(double value) {
            return value * multiplier / divisor + shift;
        }

        /** Converts every value in place. */
        public void apply(double[] values) {
            if (equals(NOTHING)) {
                return;
            }
            for (int i = 0; i < values.length; i++) {
                values[i] = apply(values[i]);
            }
        }

        Conversion withoutOffset() {
            return new Conversion(multiplier, divisor, 0);
        }
    }
}
