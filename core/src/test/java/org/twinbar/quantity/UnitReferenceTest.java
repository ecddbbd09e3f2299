package org.twinbar.quantity;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.Checks;

class UnitReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @ParameterizedTest
    @CsvSource({
        "inch, 1, in, mm",
        "foot, 1, ft, m",
        "kgf, 1, kgf, N",
        "lbf, 1, lbf, N",
        "psi, 1, psi, Pa",
        "ft-lbf, 1, ft·lbf, J",
        "pound, 1, lb, kg",
        "ounce, 1, oz, kg",
        "degree, 1, °, rad",
        "bar, 1, bar, Pa",
        "lb-in3, 1, lb/in3, kg/m3",
        "litre, 1, L, cm3",
        "day, 1, d, s",
        "zero-celsius, 0, °C, K",
        "boiling, 212, °F, °C",
        "body, 98.6, °F, K",
        "crossing, -40, °C, °F",
        "lbf-16, 1, lbf, N",
        "psi-16, 1, psi, Pa",
        "degree-16, 1, °, rad",
        "pound-16, 1, lb, kg",
        "izod-length, 1, ft·lbf/in, J/m",
        "izod-area, 1, ft·lbf/in², kJ/m²",
    })
    void convertsAsPublished(String row, double value, String from, String to) {
        checks.row(row).expects(new Quantity(value, Unit.of(from)).in(Unit.of(to)));
    }
}
