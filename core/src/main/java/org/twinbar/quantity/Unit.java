package org.twinbar.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Optional;

/**
 * A unit of measurement.
 *
 * <p>A value x in this unit is {@code x * factor + offset} in the coherent SI unit of the
 * dimension. Factors are decimal numbers, so that a conversion from µm to mm divides by exactly
 * 1000.
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

    /** A hundredth. */
    public static final Unit PERCENT =
            new Unit("%", "percent", Dimension.NONE, new BigDecimal("0.01"), BigDecimal.ZERO);

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
            throw new QuantityException("%s is %s, not %s as %s is"
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

    /** By code alone: what is in this unit is looked up more often than it is compared. */
    @Override
    public int hashCode() {
        return code.hashCode();
    }

    /** Returns the symbol, or "a plain number" where there is none. */
    public String named() {
        return symbol.isEmpty() ? "a plain number" : symbol;
    }

    /**
     * How values of one unit become values of another: {@code (x + before) * multiplier / divisor +
     * after}.
     *
     * <p>Where the ratio of two units is a fraction of short numbers, such as 5/9 from °F to °C or
     * 254/10 from inches to millimetres, it is kept as one: 3 in are 76.2 mm, and not
     * 76.19999999999999.
     */
    public record Conversion(double before, double multiplier, double divisor, double after) {

        static final Conversion NOTHING = new Conversion(0, 1, 1, 0);

        private static final MathContext PRECISION = MathContext.DECIMAL128;

        /** Digits that are left of a difference of two 34-digit numbers beyond doubt. */
        private static final MathContext SURE = new MathContext(25);

        /** Whole numbers up to this many bits are exact as doubles. */
        private static final int EXACT_BITS = 53;

        static Conversion between(Unit from, Unit to) {
            if (from.equals(to)) {
                return NOTHING;
            }
            BigDecimal ratio = from.factor.divide(to.factor, PRECISION).round(SURE);
            BigDecimal inverse = to.factor.divide(from.factor, PRECISION).round(SURE);
            BigDecimal shift = from.offset.subtract(to.offset);
            BigDecimal before = shift.divide(from.factor, PRECISION).round(SURE);
            BigDecimal after = shift.divide(to.factor, PRECISION).round(SURE);
            boolean shorter = digits(before) < digits(after);
            Conversion scale = isShort(ratio)
                    ? fraction(ratio)
                    : isShort(inverse)
                            ? fraction(inverse).inverse()
                            : new Conversion(0, ratio.doubleValue(), 1, 0);
            return new Conversion(
                    shorter ? before.doubleValue() : 0,
                    scale.multiplier,
                    scale.divisor,
                    shorter ? 0 : after.doubleValue());
        }

        private static int digits(BigDecimal number) {
            return number.stripTrailingZeros().precision();
        }

        private static boolean isShort(BigDecimal number) {
            BigDecimal plain = number.stripTrailingZeros();
            BigInteger top = plain.scale() > 0 ? plain.unscaledValue() : plain.toBigInteger();
            return top.bitLength() <= EXACT_BITS
                    && BigInteger.TEN.pow(Math.max(plain.scale(), 0)).bitLength() <= EXACT_BITS;
        }

        private static Conversion fraction(BigDecimal number) {
            BigDecimal plain = number.stripTrailingZeros();
            BigInteger top = plain.scale() > 0 ? plain.unscaledValue() : plain.toBigInteger();
            BigInteger bottom = BigInteger.TEN.pow(Math.max(plain.scale(), 0));
            BigInteger common = top.gcd(bottom);
            return new Conversion(
                    0, top.divide(common).doubleValue(), bottom.divide(common).doubleValue(), 0);
        }

        private Conversion inverse() {
            return new Conversion(0, divisor, multiplier, 0);
        }

        public double apply(double value) {
            return (value + before) * multiplier / divisor + after;
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
            return new Conversion(0, multiplier, divisor, 0);
        }
    }
}
