package org.twinbar.exchange;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalsTest {

    /**
     * The JDK's own reading is correctly rounded, and knows nothing of the short way taken here.
     */
    @Test
    void agreesWithTheJdkToTheLastBit() {
        Random random = new Random(17);
        for (int i = 0; i < 200_000; i++) {
            agrees(written(random));
        }
        for (int i = 0; i < 50_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                agrees(Double.toString(value));
            }
        }
    }

    /** Halfway cases and ends of the range: where a number that is rounded twice goes wrong. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "9007199254740992",
                "9007199254740993",
                "9007199254740995",
                "0.1",
                "-0",
                "0.0",
                "5.",
                ".5",
                "+7",
                "1e22",
                "1e23",
                "8.5e22",
                "123456789012345678",
                "1234567890123456789",
                "99999999999999999999",
                "4.9e-324",
                "2.4703282292062327e-324",
                "2.4703282292062328e-324",
                "1.7976931348623157e308",
                "2.2250738585072011e-308",
                "0.000000000000000000000000000001",
                "62.132666666666665",
                "58.80566666666667",
                "1E5",
                "1e+5",
                "000123.4500",
                "9355950000000000000.00000000000000000000000000000000001844674407370955161600000184467440737095516161844674"
            })
    void agreesWithTheJdkOnHardNumbers(String text) {
        agrees(text);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "+",
                ".",
                "e5",
                "1e",
                "1e+",
                "1e5.5",
                "1.2.3",
                "1,5",
                "1 2",
                "0x10",
                "0x1p3",
                "1d",
                "1f",
                "1D",
                "NaN",
                "Infinity",
                "1e400",
                "-1e999999999999",
                "--1",
                "1-",
                "1,234.5",
                "\t1",
                "1_000"
            })
    void takesNothingElseForANumber(String text) {
        assertThat(parse(text, '.')).as("'%s'", text).isNaN();
    }

    private static void agrees(String text) {
        double expected = Double.parseDouble(text);
        assertThat(Double.doubleToRawLongBits(parse(text, '.')))
                .as("%s, seed 17", text)
                .isEqualTo(Double.doubleToRawLongBits(expected));
        assertThat(Double.doubleToRawLongBits(parse(text.replace('.', ','), ',')))
                .as("%s with a comma, seed 17", text)
                .isEqualTo(Double.doubleToRawLongBits(expected));
    }

    private static String written(Random random) {
        StringBuilder text = new StringBuilder(random.nextInt(3) == 0 ? "-" : "");
        int digits = 1 + random.nextInt(20);
        int mark = random.nextInt(digits + 1);
        for (int i = 0; i < digits; i++) {
            text.append(i == mark ? "." : "").append(random.nextInt(10));
        }
        return random.nextInt(4) == 0 ? text + "e" + (random.nextInt(60) - 30) : text.toString();
    }

    /** Reads from the middle of a buffer, as it is done. */
    private static double parse(String text, char mark) {
        byte[] bytes = ("7" + text + "7").getBytes(US_ASCII);
        Decimals decimals = new Decimals();
        double value = decimals.read(bytes, 1, bytes.length - 1, (byte) mark);
        return decimals.end() == bytes.length - 1 ? value : Double.NaN;
    }
}
