package org.twinbar.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class UnitLawsTest {

    private static final List<String> SYMBOLS = List.of(
            "N",
            "kN",
            "kgf",
            "lbf",
            "mm",
            "cm",
            "in",
            "µm",
            "mm²",
            "in²",
            "MPa",
            "kPa",
            "psi",
            "N/mm²",
            "J",
            "mJ",
            "ft·lbf",
            "kJ/m²",
            "ft·lbf/in²",
            "J/m",
            "°C",
            "°F",
            "K",
            "s",
            "min",
            "h",
            "g",
            "kg",
            "oz",
            "g/cm³",
            "lb/in³",
            "°",
            "rad",
            "%",
            "mm/N",
            "°C/min",
            "°F/min");

    /** Of every unit into every other one of its dimension, and back. */
    @Test
    void comesBackFromEveryUnitOfItsDimension() {
        Random random = new Random(20260101);
        int pairs = 0;
        for (String a : SYMBOLS) {
            for (String b : SYMBOLS) {
                Unit from = Unit.of(a);
                Unit to = Unit.of(b);
                if (!from.measuresSameAs(to)) {
                    continue;
                }
                pairs++;
                for (int i = 0; i < 50; i++) {
                    double value = 500 * random.nextGaussian();
                    double back = to.to(from).apply(from.to(to).apply(value));
                    // Zero points of up to 460 degrees cancel in the middle, and their rounding
                    // stays.
                    assertThat(back)
                            .as("%s from %s to %s and back, seed 20260101", value, a, b)
                            .isCloseTo(value, within(4 * Math.ulp(Math.abs(value) + 500)));
                }
            }
        }
        assertThat(pairs).isGreaterThan(2 * SYMBOLS.size());
    }

    @Test
    void convertsByWayOfAThirdUnitAlike() {
        double direct = Unit.of("psi").to(Unit.of("kPa")).apply(1234.5);
        double around = Unit.of("MPa")
                .to(Unit.of("kPa"))
                .apply(Unit.of("psi").to(Unit.of("MPa")).apply(1234.5));
        assertThat(around).isCloseTo(direct, within(4 * Math.ulp(direct)));
    }
}
