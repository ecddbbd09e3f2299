package org.twinbar.method.heating;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class BrokenStickTest {

    private static BrokenStick drawn(int points, double bend, double noise, Random random) {
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = 30 + 50.0 * i / (points - 1);
            y[i] = 0.004 * x[i] + 0.1 * Math.max(0, x[i] - bend) + noise * random.nextGaussian();
        }
        return BrokenStick.through(x, y).orElseThrow();
    }

    @Test
    void theOrderOfThePointsDoesNotMatter() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8, 9};
        double[] y = {0, 0.1, 0, 0.1, 0, 1.1, 2.0, 3.1, 4.0};
        double[] backX = {9, 8, 7, 6, 5, 4, 3, 2, 1};
        double[] backY = {4.0, 3.1, 2.0, 1.1, 0, 0.1, 0, 0.1, 0};
        assertThat(BrokenStick.through(backX, backY).orElseThrow().bend())
                .isEqualTo(BrokenStick.through(x, y).orElseThrow().bend());
    }

    @Test
    void theUnitsMoveTheBendAlone() {
        Random random = new Random(2);
        double[] celsius = new double[40];
        double[] fahrenheit = new double[40];
        double[] y = new double[40];
        for (int i = 0; i < 40; i++) {
            celsius[i] = 30 + i;
            fahrenheit[i] = celsius[i] * 1.8 + 32;
            y[i] = 0.2 * Math.max(0, celsius[i] - 51.3) + 0.05 * random.nextGaussian();
        }
        BrokenStick one = BrokenStick.through(celsius, y).orElseThrow();
        BrokenStick other = BrokenStick.through(fahrenheit, y).orElseThrow();
        assertThat(other.bend()).isCloseTo(one.bend() * 1.8 + 32, within(1e-9));
        assertThat(other.safeUncertainty()).isCloseTo(one.safeUncertainty() * 1.8, within(1e-7));
    }

    @Test
    void limitsHoldTheBendBetweenThem() {
        Random random = new Random(4);
        for (int run = 0; run < 200; run++) {
            BrokenStick stick = drawn(25, 45 + 20 * random.nextDouble(), 0.4, random);
            assertThat(stick.lower()).as("run %s, seed 4", run).isLessThanOrEqualTo(stick.bend());
            assertThat(stick.upper())
                    .as("run %s, seed 4", run)
                    .isGreaterThanOrEqualTo(stick.bend());
        }
    }

    @Test
    void limitsHoldTheTruthAsOftenAsTheySay() {
        Random random = new Random(7);
        int covered = 0;
        for (int run = 0; run < 1000; run++) {
            BrokenStick stick = drawn(41, 57, 0.1, random);
            covered += stick.lower() <= 57 && stick.upper() >= 57 ? 1 : 0;
        }
        // 95 % of 1000; the binomial's own 99.9 % range is 927 to 971.
        assertThat(covered).as("of 1000, seed 7").isBetween(927, 975);
    }

    @Test
    void straightLinesAreTakenForBentAsRarelyAsStated() {
        Random random = new Random(8);
        int bent = 0;
        for (int run = 0; run < 400; run++) {
            double[] x = new double[20];
            double[] y = new double[20];
            for (int i = 0; i < 20; i++) {
                x[i] = i;
                y[i] = 0.3 * i + random.nextGaussian();
            }
            BrokenStick stick = BrokenStick.through(x, y).orElseThrow();
            bent += stick.straightLineProbability(199, run) <= 0.05 ? 1 : 0;
        }
        // 5 % of 400 are 20; the binomial's own 99.9 % range is 7 to 36.
        assertThat(bent).as("of 400, seed 8").isBetween(7, 36);
    }

    @Test
    void anExactLineHasNoBend() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        double[] y = {1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2.0};
        assertThat(BrokenStick.through(x, y).orElseThrow().straightLineProbability(99, 1))
                .isEqualTo(1);
    }

    @Test
    void aBendAtTheEndHasNoLimitThere() {
        double[] x = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10};
        double[] y = {0.1, -0.2, 0.1, 0, -0.1, 0.2, 0, 0.4, 0.4, 1.6};
        assertThat(BrokenStick.through(x, y).orElseThrow().isOpenAbove()).isTrue();
    }

    @Test
    void fewPointsGiveNothing() {
        assertThat(BrokenStick.through(new double[7], new double[7])).isEmpty();
        assertThat(BrokenStick.through(new double[30], new double[30])).isEmpty();
    }

    @Test
    void aCurvedBranchHasFewRuns() {
        double[] x = new double[60];
        double[] y = new double[60];
        for (int i = 0; i < 60; i++) {
            x[i] = i;
            y[i] = 0.01 * Math.pow(Math.max(0, i - 20), 2);
        }
        assertThat(BrokenStick.through(x, y).orElseThrow().runsScore()).isLessThan(-4);
    }
}
