package org.twinbar.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.statistics.StudentT;

/** What holds for any calibration; the seed of what is drawn is 1. */
class CalibrationLawsTest {

    private static final double SLOPE = 1.013;
    private static final double OFFSET = 2.4;
    private static final double SCATTER = 0.8;

    /** The interval of a corrected reading holds the true value as often as it says. */
    @ParameterizedTest(name = "{0} steps up and down, true value {1}")
    @CsvSource({"4, 0", "4, 120", "6, 200", "10, 60"})
    void theStatedUncertaintyCoversTheTruth(int steps, double truth) {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(1L);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        int runs = 4000;
        int held = 0;
        for (int run = 0; run < runs; run++) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i <= 2 * steps; i++) {
                double reference = 200.0 * (i <= steps ? i : 2 * steps - i) / steps;
                points.add(new Point(
                        reference, OFFSET + SLOPE * reference + SCATTER * normal.sample()));
            }
            Correction correction = Calibration.of(points, 0, Reference.exact("weights"))
                    .correction("cell", "drawn");
            double value = correction.of(OFFSET + SLOPE * truth + SCATTER * normal.sample());
            double half = new StudentT(correction.scatterDf()).twoSided(0.95)
                    * correction.uncertaintyAt(value);
            if (Math.abs(value - truth) <= half) {
                held++;
            }
        }
        // Three standard errors of a share of 0.95 among 4000 are 0.0103.
        assertThat((double) held / runs).isBetween(0.9397, 0.9603);
    }

    /** A straight instrument is said to bend about as often as the test says, 5 in 100. */
    @Test
    void aStraightInstrumentIsRarelySaidToBend() {
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(1L);
        ZigguratSampler.NormalizedGaussian normal = ZigguratSampler.NormalizedGaussian.of(random);
        int bends = 0;
        int runs = 2000;
        for (int run = 0; run < runs; run++) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i <= 10; i++) {
                double reference = 40.0 * (i <= 5 ? i : 10 - i);
                points.add(new Point(reference, reference + SCATTER * normal.sample()));
            }
            Calibration drawn = Calibration.of(points, 0, Reference.exact("weights"));
            bends += drawn.straightness().orElseThrow().bends() ? 1 : 0;
        }
        assertThat((double) bends / runs).isBetween(0.035, 0.065);
    }
}
