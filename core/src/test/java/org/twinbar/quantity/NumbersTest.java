package org.twinbar.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12|12",
                "-3|-3",
                "−3|-3",
                "+3|3",
                "12.5|12.5",
                "12,5|12.5",
                ".5|0.5",
                ",5|0.5",
                "5.|5",
                "0,123|0.123",
                "1.234|1.234",
                "1,2345|1.2345",
                "1234,567|1234.567",
                "1e3|1000",
                "1,5E-3|0.0015",
                "1,234.5|1234.5",
                "1.234,5|1234.5",
                "1,234,567|1234567",
                "1.234.567|1234567",
                "1,234,567.25|1234567.25",
                "1'234.5|1234.5",
                "1’234,5|1234.5",
                "12\u202f345|12345",
                "1\u00a0234,5|1234.5",
                "0.123\u2009456|0.123456",
                "' 7 '|7"
            })
    void readsEitherMark(String text, double expected) {
        assertThat(Numbers.parse(text)).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,234", "-1,234", "999,000"})
    void refusesWhatMayBeAThousand(String text) {
        assertThatThrownBy(() -> Numbers.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining(text)
                .hasMessageContaining("a thousand or one and a bit")
                .hasMessageContaining(text.replace(',', '.'))
                .hasMessageContaining(text.replace(",", ""));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "abc",
                "1 2",
                "1.2.3",
                "1,2,3",
                "12.05.2026",
                "1e",
                "e3",
                "--1",
                "1.234,5,6",
                "1,2.3",
                "NaN",
                "Infinity",
                "0x10",
                "1d",
                "1f",
                "1'2",
                "1,23,456",
                "١٢"
            })
    void refusesWhatIsNoNumber(String text) {
        assertThatThrownBy(() -> Numbers.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("is not a number");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,234|,|1.234",
                "1,234|.|1234",
                "1.234|,|1234",
                "1.234|.|1.234",
                "1.234,5|,|1234.5",
                "1,234.5|.|1234.5",
                "12|,|12",
                "1,234,567|.|1234567"
            })
    void takesTheMarkThatIsKnown(String text, char mark, double expected) {
        assertThat(Numbers.parse(text, mark)).isEqualTo(expected);
    }

    /** Passing over a mark that parts no three digits would make fifteen of one and a half. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1.5|,", "1,5|.", "12.25|,", "1234.567|,", "0,5|."})
    void refusesTheOtherMark(String text, char mark) {
        assertThatThrownBy(() -> Numbers.parse(text, mark))
                .isInstanceOf(QuantityException.class)
                .hasMessage(
                        "'%s' is not a number with a decimal %s",
                        text, mark == ',' ? "comma" : "point");
    }

    @Test
    void refusesNumberBeyondDoubles() {
        assertThatThrownBy(() -> Numbers.parse("1e400"))
                .hasMessage("'1e400' is too large for a number");
    }

    @Test
    void readsBackWhatJavaWrites() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = Double.toString(value);
                assertThat(Numbers.parse(text, '.')).as("seed 7: %s", text).isEqualTo(value);
                assertThat(Numbers.parse(text.replace('.', ','), ','))
                        .as("seed 7: %s", text)
                        .isEqualTo(value);
            }
        }
    }

    @Test
    void readsAlikeInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Numbers.parse("1.5")).isEqualTo(1.5);
            assertThat(Numbers.parse("1,5")).isEqualTo(1.5);
        } finally {
            Locale.setDefault(before);
        }
    }
}
