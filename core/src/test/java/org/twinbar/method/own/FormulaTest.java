package org.twinbar.method.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.quantity.Unit;

/** What a formula may say, what it means, and what is refused. */
class FormulaTest {

    private static final Map<String, Kind> VARIABLES = new HashMap<>(Map.of(
            "width", Kind.of(Unit.of("mm")),
            "height", Kind.of(Unit.of("mm")),
            "force", Kind.of(Unit.of("N")),
            "share", Kind.of(Unit.of("%")),
            "angle", Kind.of(Unit.of("°")),
            "air", Kind.of(Unit.of("°C")),
            "part", Kind.of(Unit.of("°C")),
            "rise", Kind.of(Unit.of("K"))));

    private static final Map<String, Kind> CHANNELS = Map.of("load", Kind.of(Unit.of("N")));

    private static Term parse(String formula) {
        return FormulaParser.parse(formula, VARIABLES.keySet(), CHANNELS.keySet());
    }

    private static Kind kind(String formula) {
        return new UnitCheck(VARIABLES, CHANNELS).of(parse(formula));
    }

    private static double value(String formula) {
        Evaluation evaluation = new Evaluation(Planned.specimen().build(), Map.of());
        evaluation.put("width", 2);
        evaluation.put("height", 3);
        return evaluation.of(parse(formula));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 + 2 * 3 | 7",
                "(1 + 2) * 3 | 9",
                "2 - 3 - 4 | -5",
                "16 / 4 / 2 | 2",
                "2 ^ 3 ^ 2 | 512",
                "-2 ^ 2 | -4",
                "2 ^ (-1) | 0.5",
                "(-2) ^ 2 | 4",
                "+3 - -3 | 6",
                "width² · height − 1 | 11",
                "width³ ÷ 2 × 1 | 4",
                "1.5e2 | 150",
                "sqrt(9) + abs(-1) | 4",
                "min(3, width, 5) + max(1, height) | 5",
                "exp(ln(5)) | 5",
                "log10(1000) | 3",
                "sin(π / 6) * 2 | 1",
                "cos(0) + tan(0) | 1",
                "asin(1) * 2 / pi | 1",
                "acos(1) + atan(0) | 0",
                "radians(3) | 3"
            })
    void meansWhatMathematicsMeans(String formula, double expected) {
        assertThat(value(formula)).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "1 + width | '1 + width' adds a plain number and a length",
                "force - width | 'force - width' subtracts a length from a force",
                "width + height * height | adds a length and an area",
                "sqrt(width) | 'sqrt(width)' is the root of a length, which has no unit",
                "ln(width) | 'ln(width)' is taken of a length, must be of a plain number",
                "sin(width) | 'sin(width)' is taken of a length, must be of a plain number",
                "2 ^ width | has an exponent that is a length, must be a plain number",
                "width ^ share | raises a length to a power that is no whole number from -8 to 8",
                "width ^ 0.5 | raises a length to a power that is no whole number from -8 to 8",
                "width ^ 9 | raises a length to a power that is no whole number",
                "max(width, force) | 'max(width, force)' compares a length and a force",
                "air + part | adds two temperatures, of which only the difference means something",
                "max(air, rise) | compares a temperature and a difference of temperatures",
                "peak(load) + width | 'peak(load) + width' adds a force and a length"
            })
    void unitsMustGoTogether(String formula, String sentence) {
        assertThatThrownBy(() -> kind(formula))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining(sentence);
    }

    @Test
    void unitsFollowTheFormula() {
        assertThat(kind("force / (width * height)")).isEqualTo(Kind.of(Unit.of("MPa")));
        assertThat(kind("sqrt(width^2 + height^2)")).isEqualTo(Kind.of(Unit.of("mm")));
        assertThat(kind("force * width")).isEqualTo(Kind.of(Unit.of("J")));
        assertThat(kind("share ^ 0.3 * exp(width / height)")).isEqualTo(Kind.NUMBER);
        assertThat(kind("radians(angle) * width")).isEqualTo(Kind.of(Unit.of("mm")));
        assertThat(kind("atan(width / height)")).isEqualTo(Kind.of(Unit.of("rad")));
        assertThat(kind("width ^ (-2)"))
                .isEqualTo(Kind.amount(Unit.of("mm").dimension().power(-2)));
    }

    @Test
    void temperaturesAreSubtractedNotAdded() {
        assertThat(kind("part - air")).isEqualTo(Kind.of(Unit.of("K")));
        assertThat(kind("air + rise")).isEqualTo(Kind.of(Unit.of("°C")));
        assertThat(kind("rise + air")).isEqualTo(Kind.of(Unit.of("°C")));
        assertThat(kind("air - rise")).isEqualTo(Kind.of(Unit.of("°C")));
        assertThat(kind("min(air, part)")).isEqualTo(Kind.of(Unit.of("°C")));
        assertThat(kind("part / air")).isEqualTo(Kind.NUMBER);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "widht | names 'widht', which is none of what stands before it: air, angle",
                "Width | names 'Width', which is none",
                "load * 2 | names the channel 'load' by itself; say which number of it, such as peak(load)",
                "peak(width) | peak() takes a channel of the curve, which 'width' is not; channels are: load",
                "peak(load + 1) | peak() takes a channel of the curve, which '+' is not",
                "0x1F | which is no decimal number",
                "1e999 | which is no decimal number",
                "1,5 * width | a formula needs the decimal point, its comma parts arguments",
                "2 ^ -1 | can't be read at '^', place 3; a negative exponent needs brackets, as in x^(-1)",
                "width * | can't be read",
                "(width | can't be read",
                "width) | can't be read",
                "2 width | can't be read",
                "sqrt(1, 2) | can't be read",
                "peak() | can't be read",
                "at_peak(load) | can't be read",
                "width % 2 | can't be read",
                "width > 2 | can't be read",
                "width && height | can't be read",
                "random() | can't be read",
                "fact(100000) | can't be read",
                "now() | can't be read",
                "width.class | can't be read",
                "[1] | can't be read",
                "$ | can't be read"
            })
    void whatIsNotMathematicsIsRefused(String formula, String sentence) {
        assertThatThrownBy(() -> parse(formula))
                .isInstanceOf(FormulaException.class)
                .hasMessageContaining(sentence);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"text\"",
                "'text'",
                "if(1, 2, 3)",
                "java.lang.Runtime",
                "system(1)",
                "width = 3",
                "width; height",
                "",
                "   ",
                "()",
                ",",
                "\u0000",
                "width\n\n*"
            })
    void nothingElseIsRead(String formula) {
        assertThatThrownBy(() -> parse(formula)).isInstanceOf(FormulaException.class);
    }

    @Test
    void anEndlessFormulaIsRefused() {
        assertThatThrownBy(() -> parse("1 +".repeat(200) + " 1"))
                .hasMessage("the formula has 602 characters, at most 500 are allowed");
        assertThatThrownBy(() -> parse("(".repeat(249) + "1" + ")".repeat(249) + "+"))
                .isInstanceOf(FormulaException.class);
        assertThatThrownBy(() -> parse("-".repeat(60) + "1"))
                .hasMessageContaining("deeper than 40");
        assertThatThrownBy(() -> parse("max(" + "1,".repeat(220) + "1)"))
                .hasMessageContaining("more than 200 parts");
    }

    @Test
    void aHugeFormulaEndsAtOnce() {
        Assertions.assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            assertThat(value("9^9^9^9^9^9^9^9")).isInfinite();
            assertThat(value("exp(exp(exp(exp(99))))")).isInfinite();
        });
    }

    @Test
    void namesOfFunctionsAreReserved() {
        assertThat(Set.of("pi", "sqrt", "peak", "at_peak", "area"))
                .allMatch(FormulaParser::isReserved);
        assertThat(FormulaParser.isReserved("width")).isFalse();
    }
}
