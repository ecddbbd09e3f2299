package org.twinbar.statistics.assumption;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.Significance;
import org.twinbar.statistics.assumption.Outliers.Side;
import org.twinbar.statistics.assumption.Outliers.Suspect;
import org.twinbar.statistics.groups.FTest;

class AssumptionReferenceTest {

    /** The short sets of assumption.R. */
    private static final Map<String, double[]> SETS = Map.of(
            "three",
            new double[] {1.2, 3.4, 3.9},
            "five",
            new double[] {31.2, 35.6, 38.9, 40.1, 52.3},
            "twelve",
            new double[] {49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1, 48.8, 58.0},
            "precip",
            Published.values("precip", "all"));

    private final Checks checks = Checks.of(AssumptionReferenceTest.class);

    @Test
    void grubbsOfTheMassSpectrometer() {
        Suspect suspect =
                Outliers.grubbs(Published.values("mass spectrometer", "all"), Side.HIGH, 0.05);

        checks.row("M-97-G").expects(suspect.statistic());
        checks.row("M-97-critical").expects(suspect.critical());
        checks.row("M-98-5").expects(Outliers.criticalGrubbs(5, Side.EITHER, 0.05));
        checks.row("M-98-10").expects(Outliers.criticalGrubbs(10, Side.EITHER, 0.05));
        assertThat(suspect.isBeyondChance()).isTrue();
        assertThat(suspect.index()).isEqualTo(7);
    }

    @Test
    void dixonOfTenValues() {
        double[] values = {0.189, 0.167, 0.187, 0.183, 0.186, 0.182, 0.181, 0.184, 0.181, 0.177};

        Suspect atTen = Outliers.dixon(values, 0.10);

        checks.row("M-99-Q").expects(atTen.statistic());
        checks.row("M-99-90").expects(atTen.critical());
        assertThat(atTen.isBeyondChance()).isTrue();
        assertThat(Outliers.dixon(values, 0.05).isBeyondChance()).isFalse();
        assertThat(atTen.index()).isEqualTo(1);
    }

    @Test
    void rosnersThreeThatHideEachOther() {
        List<Suspect> steps = Outliers.generalized(Published.values("Rosner", "all"), 10, 0.05);

        checks.row("M-100-R3").expects(steps.get(2).statistic());
        checks.row("M-100-lambda3").expects(steps.get(2).critical());
        checks.row("M-100-count").expects(Outliers.beyondChance(steps));
        assertThat(steps.get(0).isBeyondChance()).isFalse();
        assertThat(steps.subList(0, 3)).extracting(Suspect::index).containsExactly(53, 52, 51);
    }

    @Test
    void weightsOfElevenMen() {
        double[] weights = Published.values("weights", "all");

        checks.row("M-101-W").expects(Normality.shapiroWilk(weights).statistic());
        checks.row("M-101-p").expects(Normality.shapiroWilk(weights).p());
        checks.row("M-102-A").expects(Normality.andersonDarling(weights).statistic());
        checks.row("M-102-p").expects(Normality.andersonDarling(weights).p());
    }

    @ParameterizedTest
    @ValueSource(strings = {"three", "five", "twelve", "precip"})
    void shapesAgreeWithR(String set) {
        Significance shapiro = Normality.shapiroWilk(SETS.get(set));

        checks.row("R-shapiro-w-" + set).expects(shapiro.statistic());
        checks.row("R-shapiro-p-" + set).expects(shapiro.p());
        if (SETS.get(set).length >= 8) {
            Significance anderson = Normality.andersonDarling(SETS.get(set));
            checks.row("R-anderson-a-" + set).expects(anderson.statistic());
            checks.row("R-anderson-p-" + set).expects(anderson.p());
        }
    }

    @Test
    void spreadOfGearsAndSprays() {
        double[][] gear = Published.groups("gear");
        double[][] sprays = Published.groups("InsectSprays");

        checks.row("M-103-F").expects(Spread.brownForsythe(gear).f());
        checks.row("M-104-gear").expects(Spread.bartlett(gear).statistic());
        checks.row("M-104-sprays").expects(Spread.bartlett(sprays).statistic());
        FTest test = Spread.brownForsythe(sprays);
        checks.row("M-105-F").expects(test.f());
        checks.row("M-105-p").expects(test.p());
    }

    @Test
    void driftAgreesWithR() {
        double[] tied = {3, 3, 4, 2, 5, 5, 5, 6, 7, 6, 8, 8};

        checks.row("R-kendall-tau").expects(Order.trend(SETS.get("twelve")).statistic());
        checks.row("R-kendall-p").expects(Order.trend(SETS.get("twelve")).p());
        checks.row("R-kendall-tied-tau").expects(Order.trend(tied).statistic());
        checks.row("R-kendall-tied-p").expects(Order.trend(tied).p());
    }
}
