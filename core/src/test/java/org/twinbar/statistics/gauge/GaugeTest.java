package org.twinbar.statistics.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.statistics.gauge.ControlChart.Rule;
import org.twinbar.statistics.gauge.ControlChart.Signal;

class GaugeTest {

    @Test
    void aNegativeVarianceIsZeroAndNamed() {
        double[][][] operatorsAlike = {
            {{10.0, 10.4}, {12.1, 11.7}, {14.2, 13.8}},
            {{10.3, 10.1}, {11.8, 12.0}, {13.9, 14.1}}
        };

        GaugeStudy study = GaugeStudy.crossed(operatorsAlike);

        assertThat(study.reproducibility()).isZero();
        assertThat(study.setToZero()).containsExactly("operators");
        assertThat(study.gauge()).isEqualTo(study.repeatability());
        assertThat(GaugeStudy.byRanges(operatorsAlike).setToZero()).containsExactly("operators");
    }

    @Test
    void anInteractionBeyondChanceIsKept() {
        double[][][] eachSeesPartsItsOwnWay = {
            {{10.0, 10.1}, {14.0, 14.1}, {12.0, 12.1}},
            {{13.0, 13.1}, {11.0, 11.1}, {12.5, 12.6}}
        };

        GaugeStudy study = GaugeStudy.crossed(eachSeesPartsItsOwnWay);

        assertThat(study.method()).contains("kept");
        assertThat(study.reproducibility()).isGreaterThan(10 * study.repeatability());
    }

    @Test
    void unitsChangeNoShare() {
        double[][][] readings = {
            {{1.0, 1.2}, {2.1, 1.9}, {3.2, 3.0}}, {{1.3, 1.1}, {2.4, 2.2}, {3.1, 3.4}}
        };
        double[][][] inMicrometres = new double[2][3][2];
        for (int o = 0; o < 2; o++) {
            for (int p = 0; p < 3; p++) {
                for (int t = 0; t < 2; t++) {
                    inMicrometres[o][p][t] = 1000 * readings[o][p][t];
                }
            }
        }

        assertThat(GaugeStudy.crossed(inMicrometres).share())
                .isCloseTo(GaugeStudy.crossed(readings).share(), within(1e-12));
        assertThat(GaugeStudy.byRanges(inMicrometres).share())
                .isCloseTo(GaugeStudy.byRanges(readings).share(), within(1e-12));
    }

    @Test
    void eachRuleOfRunsSpeaksAtItsPoint() {
        assertThat(ControlChart.individuals(new double[] {0.1, 3.1, -0.2}, 0, 1).signals())
                .containsExactly(new Signal(1, Rule.BEYOND_LIMITS));
        assertThat(ControlChart.individuals(new double[] {2.1, -0.5, 2.2}, 0, 1).signals())
                .containsExactly(new Signal(2, Rule.TWO_OF_THREE));
        assertThat(ControlChart.individuals(new double[] {-1.1, -1.2, 0.4, -1.1, -1.3}, 0, 1)
                        .signals())
                .containsExactly(new Signal(4, Rule.FOUR_OF_FIVE));
        assertThat(ControlChart.individuals(new double[] {.1, .3, .2, .4, .1, .2, .5, .1}, 0, 1)
                        .signals())
                .containsExactly(new Signal(7, Rule.EIGHT_ON_ONE_SIDE));
        assertThat(ControlChart.individuals(new double[] {-.5, -.3, -.1, .1, .3, .5}, 0, 1)
                        .signals())
                .containsExactly(new Signal(5, Rule.SIX_IN_ONE_DIRECTION));
        assertThat(ControlChart.individuals(new double[] {2.1, -2.1, 0.5, -0.4}, 0, 1)
                        .isInControl())
                .isTrue();
    }

    @Test
    void aWeightOfOneDrawsTheValuesThemselves() {
        double[] values = {49, 51, 57};

        ControlChart chart = ControlChart.weighted(values, 50, 2, 1);

        assertThat(chart.points()).containsExactly(49.0, 51.0, 57.0);
        assertThat(chart.high()).isEqualTo(56);
        assertThat(chart.signals()).containsExactly(new Signal(2, Rule.BEYOND_LIMITS));
    }

    @Test
    void laboratoriesThatAgreeCompletelyHaveNoLimits() {
        double[] same = {5, 5};

        Interlaboratory agreed = Interlaboratory.of(same, same, same);

        assertThat(agreed.reproducibilityLimit()).isZero();
        assertThat(agreed.laboratories()).containsOnly(new Interlaboratory.Laboratory(0, 0));
    }

    @Test
    void refusesWhatHasNoAnswer() {
        double[][][] uneven = {{{1, 2}, {3, 4}}, {{1, 2}, {3}}};
        double[][][] fourTrials = {{{1, 2, 3, 4}, {3, 4, 5, 6}}, {{1, 2, 3, 4}, {3, 4, 5, 6}}};

        assertThatThrownBy(() -> GaugeStudy.crossed(uneven))
                .hasMessage("In a crossed study every operator reads all 2 parts 2 times.");
        assertThatThrownBy(() -> GaugeStudy.byRanges(fourTrials))
                .hasMessageContaining("2 to 3 trials, not 4");
        assertThatThrownBy(() -> ControlChart.individuals(new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ControlChart.weighted(new double[] {1}, 0, 1, Double.NaN))
                .hasMessageContaining("weight");
        assertThatThrownBy(() -> Interlaboratory.of(
                        new double[] {1, 2}, new double[] {1, 2, 3}, new double[] {1, 2}))
                .hasMessage("Every laboratory must have 2 values, but one has 3.");
    }

    /**
     * All rules together, limits known: simulated in NumPy 1.26 (PCG64, seed 1, 3000 charts), a
     * steady bench is called out of control after 75.8 values in the mean.
     */
    @Test
    void aSteadyBenchIsSeldomCalledOutOfControl() {
        java.util.Random random = new java.util.Random(1);
        double sum = 0;
        int charts = 1500;
        for (int chart = 0; chart < charts; chart++) {
            double[] values = random.doubles(800).map(it -> normal(it)).toArray();
            int single = ControlChart.individuals(values, 0, 1).signals().stream()
                    .mapToInt(ControlChart.Signal::index)
                    .min()
                    .orElse(799);
            int weighted = ControlChart.weighted(values, 0, 1, 0.25).signals().stream()
                    .mapToInt(ControlChart.Signal::index)
                    .min()
                    .orElse(799);
            sum += 1 + Math.min(single, weighted);
        }
        assertThat(sum / charts).isBetween(68.0, 84.0);
    }

    private static double normal(double uniform) {
        return org.twinbar.statistics.Normal.STANDARD.quantile(Math.max(uniform, 1e-300));
    }
}
