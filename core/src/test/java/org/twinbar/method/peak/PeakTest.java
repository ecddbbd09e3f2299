package org.twinbar.method.peak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

class PeakTest {

    private static final double[] RISES_AND_FALLS = {0, 40, 90, 70, 10};

    private static Readings.Builder part() {
        return Readings.of("T1", "plain", Bench.usual());
    }

    private static Yield found(TestMethod method, Readings.Builder readings, Property property) {
        return Result.of(method, readings.build()).yields().get(property);
    }

    private static double value(TestMethod method, Readings.Builder readings, Property property) {
        Yield yield = found(method, readings, property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        throw new AssertionError(property.name() + " is " + yield);
    }

    private static List<String> texts(TestMethod method, Readings.Builder readings) {
        return Result.of(method, readings.build()).findings().stream()
                .map(Finding::text)
                .toList();
    }

    @Test
    void areFoundByTheirServiceEntries() {
        assertThat(Methods.builtIn().all())
                .hasAtLeastOneElementOfType(ThreadStrip.class)
                .hasAtLeastOneElementOfType(InsertPullout.class)
                .hasAtLeastOneElementOfType(Peel.class);
    }

    @Test
    void aReadingAndThePeakOfACurveGiveTheSame() {
        Readings.Builder read =
                part().number(InsertPullout.FORCE, 90).number(InsertPullout.DEPTH, 6);
        Readings.Builder recorded =
                part().channel(InsertPullout.TRACE, RISES_AND_FALLS).number(InsertPullout.DEPTH, 6);
        for (Readings.Builder readings : List.of(read, recorded)) {
            assertThat(value(new InsertPullout(), readings, InsertPullout.PULLOUT))
                    .isCloseTo(90, within(1e-12));
            assertThat(value(new InsertPullout(), readings, InsertPullout.PER_DEPTH))
                    .isCloseTo(15, within(1e-12));
        }
    }

    @Test
    void theBudgetIsThatOfTheLoadCellEitherWay() {
        var read = Result.of(
                        new InsertPullout(),
                        part().number(InsertPullout.FORCE, 90).build())
                .budgets()
                .get(InsertPullout.PULLOUT);
        var recorded = Result.of(
                        new InsertPullout(),
                        part().channel(InsertPullout.TRACE, RISES_AND_FALLS).build())
                .budgets()
                .get(InsertPullout.PULLOUT);
        assertThat(read.u()).isPositive().isCloseTo(recorded.u(), within(1e-12));
    }

    @Test
    void aPeakThatWasMovedCounts() {
        Readings.Builder readings = part().channel(InsertPullout.TRACE, RISES_AND_FALLS)
                .mark(InsertPullout.PEAK_MARK, 1);
        assertThat(value(new InsertPullout(), readings, InsertPullout.PULLOUT))
                .isCloseTo(40, within(1e-12));
    }

    @Test
    void whatGaveWayElsewhereMakesABound() {
        assertThat(found(
                        new ThreadStrip(),
                        part().number(ThreadStrip.TORQUE, 2).word(ThreadStrip.GAVE, "screw broke"),
                        ThreadStrip.STRIP_TORQUE))
                .isEqualTo(new Yield.AtLeast(2, "screw broke: what is tested held at least this"));
        assertThat(value(
                        new ThreadStrip(),
                        part().number(ThreadStrip.TORQUE, 2)
                                .number(ThreadStrip.ENGAGED, 8)
                                .word(ThreadStrip.GAVE, "thread stripped"),
                        ThreadStrip.PER_LENGTH))
                .isCloseTo(0.25, within(1e-12));
    }

    @Test
    void saysWhatIsMissing() {
        assertThat(found(new ThreadStrip(), part(), ThreadStrip.STRIP_TORQUE))
                .isEqualTo(new Yield.Missing("no torque was read"));
        assertThat(found(new InsertPullout(), part(), InsertPullout.STRESS))
                .isEqualTo(new Yield.Missing("no force was read"));
        assertThat(found(new Peel(), part().number(Peel.MEAN_FORCE, 5), Peel.STRENGTH))
                .isEqualTo(new Yield.Missing("the width of the strip was not measured"));
        assertThat(found(
                        new Peel(),
                        part().number(Peel.MEAN_FORCE, 5).number(Peel.WIDTH, 20),
                        Peel.LARGEST))
                .isEqualTo(new Yield.Missing("there is no curve to take the largest force from"));
    }

    @Test
    void aPeelLeavesItsStartOut() {
        double[] force = {9, 2, 2, 2, 2, 2, 2, 2};
        Readings.Builder readings = part().channel(Peel.TRACE, force).number(Peel.WIDTH, 20);
        assertThat(value(new Peel(), readings, Peel.STRENGTH)).isCloseTo(0.1, within(1e-12));
        assertThat(value(new Peel(), readings, Peel.LARGEST)).isCloseTo(0.45, within(1e-12));
        assertThat(value(new Peel(), readings.setting(Peel.SKIPPED, 0), Peel.STRENGTH))
                .isCloseTo(23.0 / 8 / 20, within(1e-12));
        assertThat(texts(new Peel(), readings.setting(Peel.SKIPPED, 25))).isEmpty();
    }

    @Test
    void aPeelMayBeUnsteady() {
        double[] force = {9, 2, 1, 8, 1, 7, 1, 8};
        assertThat(texts(new Peel(), part().channel(Peel.TRACE, force).number(Peel.WIDTH, 20)))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("While it peeled the force went from 1.00 to 8.00 N");
    }

    /** A rise in 200 steps of 1 %, and a collapse. */
    private static double[] smooth(double largest) {
        double[] rows = new double[240];
        for (int row = 0; row <= 200; row++) {
            rows[row] = largest * row / 200;
        }
        return rows;
    }

    private static Result torque(double[] rows) {
        return Result.of(
                new ThreadStrip(), part().channel(ThreadStrip.TRACE, rows).build());
    }

    @Test
    void aSoundCurveHasNothingToSay() {
        assertThat(torque(smooth(2.5)).findings()).isEmpty();
        assertThat(texts(new InsertPullout(), part().channel(InsertPullout.TRACE, smooth(900))))
                .isEmpty();
    }

    @Test
    void thePeakIsTheLastRow() {
        Result result = torque(Arrays.copyOf(smooth(2.5), 201));
        assertThat(Exactly.found(result, "peak-at-last-point")).isTrue();
        assertThat(result.findings().get(0).text())
                .isEqualTo("The largest torque, 2.50 N·m, is the last row of the record, so the"
                        + " specimen may have carried more; record until the torque has dropped.");
    }

    @Test
    void anInstrumentAtItsEndMakesABound() {
        double[] clipped =
                Arrays.stream(smooth(2.5)).map(value -> Math.min(value, 2)).toArray();
        Result result = torque(clipped);
        assertThat(Exactly.found(result, "saturated")).isTrue();
        assertThat(result.findings().get(0).text())
                .startsWith("The torque rises steeply to 2.00 N·m and stands there for 41 rows:"
                        + " the torque sensor or its amplifier is at its end");
        assertThat(result.yields().get(ThreadStrip.STRIP_TORQUE))
                .isEqualTo(new Yield.AtLeast(2, "the torque sensor was at its end"));
    }

    @Test
    void aCurveMayBeTooCoarseOrTooNoisyOrSlip() {
        assertThat(Exactly.found(torque(new double[] {0, 0.5, 1, 1.5, 2, 1, 0}), "coarse-at-peak"))
                .isTrue();
        double[] noisy = smooth(2.5);
        for (int row = 1; row < 200; row++) {
            noisy[row] += row % 2 == 0 ? 0.1 : -0.1;
        }
        assertThat(Exactly.found(torque(noisy), "noisy-force")).isTrue();
        double[] slipped = smooth(2.5);
        for (int row = 100; row < 110; row++) {
            slipped[row] *= 0.8;
        }
        assertThat(Exactly.found(torque(slipped), "grip-slip")).isTrue();
    }

    @Test
    void aSignThatIsTurnedRoundGivesNothing() {
        double[] negative = Arrays.stream(smooth(900)).map(value -> -value).toArray();
        Readings.Builder readings = part().channel(InsertPullout.TRACE, negative);
        assertThat(texts(new InsertPullout(), readings))
                .singleElement()
                .asString()
                .startsWith("The force runs to -900 N, further below zero than above");
        assertThat(found(new InsertPullout(), readings, InsertPullout.PULLOUT))
                .isEqualTo(new Yield.Missing(
                        "the force is negative throughout: its sign is turned round"));
    }

    /** A bond lets go and holds again for as long as it peels; only the end of the cell counts. */
    @Test
    void jerksOfAPeelAreNoSlips() {
        double[] force = new double[400];
        for (int row = 0; row < 400; row++) {
            force[row] = 5 + 0.5 * Math.sin(row / 10.0) + row / 400.0;
        }
        Result result = Result.of(
                new Peel(),
                part().channel(Peel.TRACE, force).number(Peel.WIDTH, 20).build());
        assertThat(Exactly.found(result, "grip-slip")).isFalse();
        Result clipped = Result.of(
                new Peel(),
                part().channel(Peel.TRACE, Arrays.copyOf(smooth(9), 201))
                        .number(Peel.WIDTH, 20)
                        .build());
        assertThat(Exactly.found(clipped, "peak-at-last-point")).isTrue();
    }

    @Test
    void thePeakIsAFewSteps() {
        assertThat(texts(new ThreadStrip(), part().number(ThreadStrip.TORQUE, 0.12)))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("The largest value, 0.120 N·m, is only 12 steps of the display");
        assertThat(texts(new ThreadStrip(), part().number(ThreadStrip.TORQUE, 2)))
                .isEmpty();
    }

    @Test
    void findingsHaveTheirCodes() {
        double[] jerks = {9, 2, 1, 8, 1, 7, 1, 8};
        assertThat(Exactly.found(
                        Result.of(
                                new Peel(),
                                part().channel(Peel.TRACE, jerks)
                                        .number(Peel.WIDTH, 20)
                                        .build()),
                        "peel-not-steady"))
                .isTrue();
        assertThat(Exactly.found(
                        Result.of(
                                new ThreadStrip(),
                                part().number(ThreadStrip.TORQUE, 0.12).build()),
                        "few-steps-of-the-display"))
                .isTrue();
    }

    @Test
    void oneRowProvesNoPeak() {
        assertThat(found(
                        new InsertPullout(),
                        part().channel(InsertPullout.TRACE, new double[] {90}),
                        InsertPullout.PULLOUT))
                .isEqualTo(new Yield.AtLeast(90, "a record of one or two rows proves no peak"));
    }
}
