package org.twinbar.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "20g|20|g",
                "0.1 g|0.1|g",
                "150um|150|µm",
                "0,5 mm|0.5|mm",
                "5%|5|%",
                "5 %|5|%",
                "-3 °C|-3|°C",
                "1e3 N|1000|N",
                "1'250 N|1250|N",
                "12|12|",
                "1.1 g/cm3|1.1|g/cm³",
                "1,234.5 N|1234.5|N",
                "2 kJ/m²|2|kJ/m²",
                "1\u00a0250\u00a0N|1250|N",
                "10 mm|10|mm"
            })
    void readsNumberAndUnit(String text, double value, String symbol) {
        Quantity quantity = Quantity.parse(text);
        assertThat(quantity.value()).isEqualTo(value);
        assertThat(quantity.unit().symbol()).isEqualTo(symbol == null ? "" : symbol);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "mm", "5 furlongs", "five mm", "5 mm 3", "1,234 N", "±5 N", "NaN N"})
    void refusesWhatIsNoQuantity(String text) {
        assertThatThrownBy(() -> Quantity.parse(text)).isInstanceOf(QuantityException.class);
    }

    @Test
    void givesBareNumberTheUnitThatIsAskedFor() {
        assertThat(Quantity.parse("25", Unit.of("mm"))).isEqualTo(25);
        assertThat(Quantity.parse("2.5cm", Unit.of("mm"))).isEqualTo(25);
        assertThat(Quantity.parse("1 in", Unit.of("mm"))).isEqualTo(25.4);
        assertThatThrownBy(() -> Quantity.parse("5 N", Unit.of("mm")))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("N is a force, not a length");
    }

    @Test
    void readsSharesInPerCentOrBelowOne() {
        assertThat(Quantity.parseShare("5%")).isEqualTo(0.05);
        assertThat(Quantity.parseShare("0.05")).isEqualTo(0.05);
        assertThat(Quantity.parseShare("0,05")).isEqualTo(0.05);
        assertThat(Quantity.parseShare("150 %")).isEqualTo(1.5);
        assertThat(Quantity.parseShare("-5%")).isEqualTo(-0.05);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "5", "-5", "1.05"})
    void refusesShareThatMayBeAFactor(String text) {
        assertThatThrownBy(() -> Quantity.parseShare(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("may be per cent or a factor")
                .hasMessageContaining(text + "%");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5 mm", "3 GU", "0.05 °C"})
    void refusesShareInAnotherUnit(String text) {
        assertThatThrownBy(() -> Quantity.parseShare(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("not a share");
    }

    @Test
    void rejectsWhatIsNotFinite() {
        assertThatThrownBy(() -> new Quantity(Double.NaN, Unit.ONE))
                .isInstanceOf(QuantityException.class);
        assertThatThrownBy(() -> new Quantity(Double.POSITIVE_INFINITY, Unit.ONE))
                .isInstanceOf(QuantityException.class);
    }
}
