package org.twinbar.treatment;

import java.math.BigDecimal;
import java.math.MathContext;

/** Guards of amounts, written so that NaN fails them, and how their sentences write a number. */
final class Amounts {

    /** Lighter than any resin, thinner or foam of them (g/cm³); common practice, no source. */
    static final double LEAST_DENSITY = 0.1;

    /** Osmium, the densest metal, has 22.59 g/cm³ (from memory). */
    static final double MOST_DENSITY = 23;

    private Amounts() {}

    static double requirePositive(double value, String name, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new TreatmentException("The %s must be above zero, not %s%s."
                    .formatted(name, written(value), unit.isEmpty() ? "" : " " + unit));
        }
        return value;
    }

    static double requireDensity(double value, String name) {
        requirePositive(value, name, "g/cm³");
        if (!(value >= LEAST_DENSITY && value <= MOST_DENSITY)) {
            throw new TreatmentException(
                    "The %s must lie from %s to %s g/cm³, not at %s: is it given in kg/m³?"
                            .formatted(
                                    name,
                                    written(LEAST_DENSITY),
                                    written(MOST_DENSITY),
                                    written(value)));
        }
        return value;
    }

    static double requireShare(double value, String name) {
        if (!(value > 0 && value <= 1)) {
            throw new TreatmentException("The %s must lie above 0 and up to 100 %%, not at %s %%."
                    .formatted(name, written(100 * value)));
        }
        return value;
    }

    /** Four figures, never as a power of ten, without idle zeros. */
    static String written(double value) {
        if (!Double.isFinite(value)) {
            return "no number";
        }
        return BigDecimal.valueOf(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
