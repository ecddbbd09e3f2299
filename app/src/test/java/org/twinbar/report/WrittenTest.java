package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WrittenTest {

    @ParameterizedTest
    @CsvSource({
        "30.8, 0.22, 30.80 ± 0.22",
        "30.8, 0.2, 30.80 ± 0.20",
        "30.8, 0.0996, 30.80 ± 0.10",
        "1755.4, 14.2, 1755 ± 14",
        "1755.4, 142, 1760 ± 140",
        "-0.0312, 0.0041, −0.0312 ± 0.0041",
        "175540, 1420, 175 500 ± 1400",
        "0.00012345, 0.0000031, 0.0001234 ± 0.0000031",
        "5, 0.96, 5.00 ± 0.96",
        "5, 0.5, 5.00 ± 0.50",
        "30, 8, 30.0 ± 8.0",
        "5, 9.96, 5 ± 10"
    })
    void givesValueAndUncertaintyTheirLastDigitInCommon(double value, double u, String expected) {
        assertThat(Written.value(value, u, "").replace(Written.THIN, " ")).isEqualTo(expected);
    }

    /** JCGM 100:2008, 7.2.2: m = 100.02147 g with u = 0.35 mg. */
    @Test
    void writesTheGuidesOwnExample() {
        assertThat(Written.value(100.02147, 0.00035, "g"))
                .isEqualTo("100.02147 ± 0.00035" + Written.THIN + "g");
    }

    @ParameterizedTest
    @CsvSource({
        "1.13, +13 %",
        "1.0429, +4.3 %",
        "0.956, −4.4 %",
        "1, 0 %",
        "1.00001, 0 %",
        "1.0996, +10 %",
        "2.5, +150 %"
    })
    void writesARatioAsPerCentOfChange(double ratio, String expected) {
        assertThat(Written.ratioChange(ratio).replace(Written.THIN, " ")).isEqualTo(expected);
    }

    @Test
    void writesNoDigitsThatNobodyMeasured() {
        assertThat(Written.number(0.1 + 0.2, 4)).isEqualTo("0.3");
        assertThat(Written.number(-12345.678, 4)).isEqualTo("−12" + Written.THIN + "350");
        assertThat(Written.fixed(-0.0001, 2)).isEqualTo("0.00");
    }

    @Test
    void aBoundShowsAnUncertaintyThatIsWorthALook() {
        assertThat(Written.bound(24, 8e-5, 24)).isEqualTo(Written.number(24, 4));
        assertThat(Written.bound(0, 8e-5, 1)).isEqualTo(Written.number(0, 4));
        assertThat(Written.bound(19.08, 0.21, 19.08)).isEqualTo("19.08 ± 0.21");
    }
}
