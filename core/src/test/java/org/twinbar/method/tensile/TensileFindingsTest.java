package org.twinbar.method.tensile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.method.conditioning.Conditioning;

/** Each finding is raised by readings that deserve it, and not by a clean pull. */
class TensileFindingsTest {

    private static final SimulatedPull CLEAN = SimulatedPull.brittle().withToe(0.02);

    private static String text(Result result, String code) {
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    private static Readings.Builder force(double... rows) {
        return Pulled.bar(10, 4).channel(PullForm.FORCE, rows);
    }

    private static double[] times(int rows, double step) {
        double[] times = new double[rows];
        for (int row = 0; row < rows; row++) {
            times[row] = step * row;
        }
        return times;
    }

    @Test
    void aCleanPullHasNothingToSayButWhatTheCrossheadIs() {
        Result result = Pulled.pull(CLEAN.readings().channel(PullForm.TIME, times(600, 0.2)));
        assertThat(result.findings())
                .extracting(Finding::code)
                .containsExactlyInAnyOrder("apparent-modulus", "toe-corrected");
    }

    @Test
    void peakAtTheLastPoint() {
        Result result = Pulled.pull(force(0, 100, 200, 300, 400));
        assertThat(text(result, "peak-at-last-point"))
                .startsWith("The largest force, 400 N, is the last");
        assertThat(Exactly.value(result, PullForm.STRENGTH)).isEqualTo(10);
    }

    @Test
    void gripsThatSlipAndCatchAgain() {
        Result result = Pulled.pull(CLEAN.withSlip().readings());
        assertThat(text(result, "grip-slip"))
                .startsWith("Before the peak the force dropped and came back once");
        assertThat(Exactly.found(Pulled.pull(CLEAN.withNoise(2, 3).readings()), "grip-slip"))
                .isFalse();
    }

    @Test
    void aLargeToe() {
        Result result = Pulled.pull(SimulatedPull.brittle().withToe(0.6).readings());
        assertThat(Exactly.found(result, "toe-large")).isTrue();
        assertThat(text(result, "toe-corrected")).contains("a toe of 0.5");
        assertThat(Exactly.found(Pulled.pull(CLEAN.readings()), "toe-large")).isFalse();
    }

    @Test
    void aLoadCellAtItsEndMakesABound() {
        double[] rows = CLEAN.force();
        double[] clipped =
                Arrays.stream(rows).map(value -> Math.min(value, 700)).toArray();
        Result result = Pulled.pull(force(clipped));
        assertThat(text(result, "saturated"))
                .startsWith("The force rises steeply to 700 N and stands");
        assertThat(result.yields().get(PullForm.STRENGTH))
                .isEqualTo(new Yield.AtLeast(17.5, "the load cell was at its end"));
    }

    @Test
    void aRoundPeakOnACoarseScaleIsNotSaturated() {
        double[] rows = new double[400];
        for (int row = 0; row < 400; row++) {
            double off = (row - 200) / 200.0;
            rows[row] = 5 * Math.rint(1000 * (1 - off * off) / 5);
        }
        assertThat(Exactly.found(Pulled.pull(force(rows)), "saturated")).isFalse();
    }

    @Test
    void samplingTooCoarseForThePeak() {
        Result result = Pulled.pull(force(0, 200, 400, 600, 800, 790, 20));
        assertThat(text(result, "coarse-at-peak"))
                .contains("changes by 200 N from one row to the next");
        assertThat(Exactly.found(Pulled.pull(CLEAN.readings()), "coarse-at-peak"))
                .isFalse();
    }

    @Test
    void noise() {
        Result result = Pulled.pull(CLEAN.withNoise(40, 5).readings());
        assertThat(text(result, "noisy-force")).contains("standard deviation");
        assertThat(Exactly.found(Pulled.pull(CLEAN.withNoise(2, 5).readings()), "noisy-force"))
                .isFalse();
    }

    @Test
    void aGapInTheRecordAndTimeThatFalls() {
        double[] gap = times(600, 0.2);
        for (int row = 300; row < 600; row++) {
            gap[row] += 7;
        }
        Result holed = Pulled.pull(CLEAN.readings().channel(PullForm.TIME, gap));
        assertThat(text(holed, "gap-in-record"))
                .isEqualTo(
                        "The record has a gap of 7.20 s before or next to its peak,"
                                + " where its rows are 0.200 s apart otherwise; what happened there is not known.");
        double[] falling = times(600, 0.2);
        falling[300] = 1;
        Result backwards = Pulled.pull(CLEAN.readings().channel(PullForm.TIME, falling));
        assertThat(text(backwards, "time-falls"))
                .startsWith("Time runs backwards once in the record");
    }

    @Test
    void rowsWithoutANumberArePassedOver() {
        double[] rows = CLEAN.force();
        rows[0] = Double.NaN;
        rows[200] = Double.NaN;
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, SimulatedPull.LENGTH)
                .channel(PullForm.FORCE, rows)
                .channel(PullForm.DISPLACEMENT, CLEAN.travel()));
        assertThat(text(result, "rows-without-number"))
                .startsWith("2 rows of the record without a number were passed over");
        assertThat(Exactly.value(result, PullForm.STRENGTH))
                .isEqualTo(CLEAN.trueForceAtBreak() / SimulatedPull.AREA);
        assertThat(Exactly.value(result, PullForm.MODULUS)).isGreaterThan(2000);
    }

    @Test
    void forceOfTheWrongSign() {
        double[] rows = Arrays.stream(CLEAN.force()).map(value -> -value).toArray();
        Result result = Pulled.pull(force(rows));
        assertThat(text(result, "force-negative")).startsWith("The force runs to -1");
        assertThat(Exactly.reason(result, PullForm.STRENGTH))
                .isEqualTo("the force is negative throughout: its sign is turned round");
    }

    @Test
    void aLoadCellThatWasNotTared() {
        double[] rows = new double[120];
        for (int row = 0; row < 120; row++) {
            rows[row] = 30 + (row < 80 ? 10.0 * row : 0);
        }
        Result result = Pulled.pull(force(rows));
        assertThat(text(result, "zero-after-break"))
                .startsWith("Behind the break the force stands at 30.0 N");
    }

    @Test
    void breakOutsideTheGaugeLength() {
        Result result = Pulled.pull(Pulled.bar(10, 4)
                .number(PullForm.PEAK_FORCE, 800)
                .word(PullForm.BROKE_AT, PullForm.BROKE_AT_SHOULDER));
        assertThat(text(result, "break-outside-gauge")).contains("at the shoulder", "ISO 527-1");
    }

    @Test
    void aRateOutsideTheStandards() {
        Result quick = Pulled.pull(CLEAN.readings().channel(PullForm.TIME, times(600, 0.01)));
        assertThat(text(quick, "rate-outside-standard")).contains("ASTM D638", "30 to 300 s");
        Result slow = Pulled.pull(CLEAN.readings().channel(PullForm.TIME, times(600, 1)));
        assertThat(Exactly.found(slow, "rate-outside-standard")).isTrue();
    }

    @Test
    void aMachineThatGivesMoreThanTheSpecimen() {
        Result result = Pulled.pull(
                CLEAN.withCompliance(1e-3).readings().number(PullForm.COMPLIANCE, 1e-3));
        assertThat(text(result, "compliance-large")).contains("% of the travel");
        assertThat(text(result, "apparent-modulus")).contains("less the machine's compliance");
        Result stiff = Pulled.pull(
                CLEAN.withCompliance(1e-5).readings().number(PullForm.COMPLIANCE, 1e-5));
        assertThat(Exactly.found(stiff, "compliance-large")).isFalse();
    }

    @Test
    void theRecordEndsBeforeTheBreak() {
        Readings.Builder readings = Pulled.bar(10, 4)
                .number(PullForm.GRIP_DISTANCE, 100)
                .channel(PullForm.FORCE, new double[] {0, 100, 200, 300, 400, 395})
                .channel(PullForm.DISPLACEMENT, new double[] {0, 0.1, 0.2, 0.3, 0.4, 0.5});
        Result result = Pulled.pull(readings);
        assertThat(result.yields().get(PullForm.STRAIN_AT_BREAK)).isInstanceOf(Yield.AtLeast.class);
        assertThat(Exactly.reason(result, PullForm.ENERGY))
                .isEqualTo("the record ends before the load collapses");
    }

    @Test
    void aShortConditioningIsSaid() {
        Readings.Builder day =
                Pulled.bar(10, 4).number(PullForm.PEAK_FORCE, 800).number(Conditioning.HOURS, 24);
        assertThat(Exactly.text(Pulled.pull(day), "conditioned-briefly"))
                .startsWith("It lay in the climate of the test room for 24 h");
        Readings.Builder enough =
                Pulled.bar(10, 4).number(PullForm.PEAK_FORCE, 800).number(Conditioning.HOURS, 88);
        assertThat(Pulled.pull(enough).findings()).isEmpty();
    }
}
