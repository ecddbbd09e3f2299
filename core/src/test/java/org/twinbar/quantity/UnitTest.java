package org.twinbar.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

    @ParameterizedTest
    @CsvSource({
        "N, N",
        "kN, kN",
        "um, µm",
        "μm, µm",
        "mm2, mm²",
        "mm^2, mm²",
        "N/mm², N/mm²",
        "kJ_per_m2, kJ/m²",
        "kJ/m^2, kJ/m²",
        "J per m, J/m",
        "g/cm3, g/cm³",
        "g_per_cm3, g/cm³",
        "N*m, N·m",
        "Nm, N·m",
        "ft·lbf, ft·lbf",
        "ft_lbf, ft·lbf",
        "ft-lbf, ft·lbf",
        "C_per_min, °C/min",
        "degC, °C",
        "deg, °",
        "percent, %",
        "1/K, 1/K",
        "per_K, 1/K",
        "mm_per_N, mm/N",
        "J/kg/K, J/kg/K",
        "' h ', h",
    })
    void readsEachWayOfWriting(String text, String symbol) {
        assertThat(Unit.of(text).symbol()).isEqualTo(symbol);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "x", "mn", "NN", "1_mm", "1·mm", "2_mm", "N/", "/N", "per_", "m4", "³", "N m/"
            })
    void knowsNoUnitIn(String text) {
        assertThat(Unit.find(text)).isEmpty();
        assertThatThrownBy(() -> Unit.of(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "N", "kgf", "lbf", "mm", "in", "µm", "mm²", "MPa", "psi", "mJ", "ft·lbf", "kJ/m²",
                "J/m", "°C", "°F", "K", "min", "h", "g", "g/cm³", "°", "%", "mm/N", "°C/min",
                "N·mm", "1/K"
            })
    void readsItsOwnSymbolAndCode(String text) {
        Unit unit = Unit.of(text);
        assertThat(Unit.of(unit.symbol())).isEqualTo(unit);
        assertThat(Unit.of(unit.code())).isEqualTo(unit);
    }

    @Test
    void tellsMilliFromMega() {
        assertThat(new Quantity(1, Unit.of("MPa")).in(Unit.of("Pa"))).isEqualTo(1e6);
        assertThat(new Quantity(1, Unit.of("mN")).in(Unit.of("N"))).isEqualTo(0.001);
        assertThat(Unit.find("MN")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "3, in, mm, 76.2",
        "7, mm, m, 0.007",
        "0.3, MPa, kPa, 300",
        "21.1, cm, mm, 211",
        "100, °C, °F, 212",
        "32, °F, °C, 0",
        "90, min, h, 1.5",
        "1.1, kN, N, 1100",
        "5, %, none, 0.05"
    })
    void convertsShortFractionsToTheLastDigit(
            double value, String from, String to, double expected) {
        assertThat(new Quantity(value, Unit.of(from)).in(Unit.of(to))).isEqualTo(expected);
    }

    @Test
    void convertsDifferencesWithoutZeroPoints() {
        assertThat(new Quantity(9, Unit.of("°F")).differenceIn(Unit.of("K"))).isEqualTo(5);
        assertThat(new Quantity(9, Unit.of("K")).differenceIn(Unit.of("°C"))).isEqualTo(9);
    }

    @Test
    void convertsWholeColumnsAsSingleValues() {
        double[] column = {-40, 0, 98.6, 451};
        double[] each = new double[column.length];
        Unit.Conversion conversion = Unit.of("°F").to(Unit.of("°C"));
        for (int i = 0; i < column.length; i++) {
            each[i] = conversion.apply(column[i]);
        }
        conversion.apply(column);
        assertThat(column).isEqualTo(each);
    }

    @Test
    void refusesOtherDimension() {
        assertThatThrownBy(() -> Unit.of("mm").to(Unit.of("N")))
                .isInstanceOf(QuantityException.class)
                .hasMessage("mm is a length, not a force as N is");
        assertThatThrownBy(() -> Unit.of("lb").to(Unit.of("lbf")))
                .hasMessageContaining("a mass, not a force");
        assertThatThrownBy(() -> Unit.of("°").to(Unit.ONE)).hasMessageContaining("an angle");
    }

    @Test
    void knowsScalesWithoutTrueZero() {
        assertThat(Unit.of("°C").hasTrueZero()).isFalse();
        assertThat(Unit.of("°F").hasTrueZero()).isFalse();
        assertThat(Unit.of("K").hasTrueZero()).isTrue();
        assertThat(Unit.of("°C/min").hasTrueZero()).isTrue();
    }

    @Test
    void rejectsFactorOfZero() {
        assertThatThrownBy(
                        () -> new Unit("x", "x", Dimension.NONE, BigDecimal.ZERO, BigDecimal.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
