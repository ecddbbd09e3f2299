package org.twinbar.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.finding.Finding;
import org.twinbar.quantity.Unit;

class CalibrationTest {

    private static final double[] FIVE = {0, 50, 100, 150, 200};

    private static List<String> codes(Calibration calibration) {
        return calibration.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aPerfectInstrumentIsCorrectedByNothing() {
        Calibration perfect = Cells.of(0, FIVE, FIVE);
        Correction correction = perfect.correction("cell", "today");
        assertThat(correction.of(123.4)).isCloseTo(123.4, within(1e-12));
        assertThat(correction.uncertaintyAt(123.4)).isCloseTo(0, within(1e-12));
        assertThat(perfect.findings()).isEmpty();
    }

    @Test
    void whatItShowsAtAReferenceIsCorrectedToIt() {
        Correction correction =
                Cells.of(0, FIVE, new double[] {3, 54, 105, 156, 207}).correction("cell", "today");
        assertThat(correction.slope()).isCloseTo(1.02, within(1e-12));
        assertThat(correction.offset()).isCloseTo(3, within(1e-10));
        assertThat(correction.of(new double[] {54, 207}))
                .containsExactly(new double[] {50, 200}, within(1e-10));
    }

    /** Five readings that all round to the line still have the rounding of each. */
    @Test
    void scatterIsNotBelievedBelowTheStep() {
        Calibration coarse = Cells.of(1, FIVE, FIVE);
        double u = 1 / Math.sqrt(12);
        assertThat(coarse.scatter()).isCloseTo(u, within(1e-15));
        assertThat(coarse.heightUncertainty()).isCloseTo(u / Math.sqrt(5), within(1e-12));
        assertThat(coarse.slopeUncertainty()).isCloseTo(u / Math.sqrt(25_000), within(1e-12));
    }

    @Test
    void theReferenceMovesAllValuesAlike() {
        Calibration known = Cells.of(0, FIVE, FIVE, new Reference("weights", 0.3, 0.002));
        Correction correction = known.correction("cell", "today");
        assertThat(correction.sharedUncertaintyAt(150))
                .isCloseTo(Math.hypot(0.3, 0.3), within(1e-9));
        assertThat(codes(known)).containsExactly("coarse-reference");
    }

    @Test
    void aBendIsTold() {
        Calibration bent = Cells.bent();
        assertThat(codes(bent)).containsExactly("calibration-bends");
        assertThat(bent.findings().get(0).text())
                .contains("curvature", "at 70.0, lies 0.50 from it")
                .doesNotContain("NaN");
    }

    @Test
    void roundingIsNoBend() {
        Calibration rounded = Cells.of(
                1, new double[] {0, 0, 10, 10, 20.4, 20.4}, new double[] {0, 0, 10, 10, 20, 20});
        assertThat(rounded.straightness().orElseThrow().bends()).isFalse();
    }

    @Test
    void upAndDownThatDifferAreTold() {
        assertThat(codes(Cells.upAndDown())).containsExactly("calibration-reversal");
        assertThat(Cells.of(0.01, FIVE, new double[] {0, 50, 100, 150, 200}).reversal())
                .isEmpty();
    }

    @Test
    void fewPointsAreTold() {
        assertThat(codes(Cells.of(0.1, new double[] {0, 100, 200}, new double[] {0, 101, 201})))
                .containsExactly("few-calibration-points");
    }

    @Test
    void aStatedLimitIsHeldAgainstTheFarthestReading() {
        Calibration bent = Cells.bent();
        assertThat(bent.against(new Allowed(0.2, "1 % of the range"))
                        .orElseThrow()
                        .text())
                .contains("At 70.0", "0.50", "1 % of the range");
        assertThat(bent.against(new Allowed(0.6, "0.6 K"))).isEmpty();
    }

    @Test
    void driftLiesBetweenTwoCalibrations() {
        Correction before = Cells.of(0, FIVE, FIVE).correction("cell", "spring");
        Correction now = Cells.of(0, FIVE, new double[] {3, 54, 105, 156, 207})
                .correction("cell", "autumn")
                .withDrift("cell", before);
        // A value of 100 shows 105 now, which the line of spring takes for 105.
        assertThat(now.sharedUncertaintyAt(100)).isCloseTo(5 / Math.sqrt(3), within(1e-9));
        assertThat(now.withWanderingZero("cell", -2).sharedUncertaintyAt(100))
                .isCloseTo(Math.hypot(5, 2) / Math.sqrt(3), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-10, 21.5, 40, 90})
    void anotherUnitIsTheSameCalibration(double celsius) {
        Correction c = Cells.of(
                        0.1,
                        new double[] {20, 40, 60, 80},
                        new double[] {20.9, 40.6, 60.1, 79.9},
                        new Reference("probe", 0.2, 0.001))
                .correction("probe", "today");
        Unit fahrenheit = Unit.of("°F");
        Correction f = c.in(Unit.of("°C"), fahrenheit);
        double shown = 1.8 * celsius + 32;
        assertThat(f.of(shown)).isCloseTo(1.8 * c.of(celsius) + 32, within(1e-9));
        assertThat(f.uncertaintyAt(f.of(shown)))
                .isCloseTo(1.8 * c.uncertaintyAt(c.of(celsius)), within(1e-9));
        assertThat(f.lowest()).isCloseTo(68, within(1e-9));
    }

    @Test
    void whatIsNoCalibrationIsRefusedInASentence() {
        assertThatThrownBy(() -> Cells.of(0.1, new double[] {0, 1}, new double[] {0, 1}))
                .hasMessage("a line with its uncertainty needs 3 points, not 2");
        assertThatThrownBy(() -> Cells.of(0.1, new double[] {5, 5, 5}, new double[] {1, 2, 3}))
                .hasMessageContaining("All x are 5.0");
        assertThatThrownBy(() -> Cells.of(0.1, FIVE, new double[] {4, 3, 2, 1, 0}))
                .hasMessageContaining("do not grow with the reference");
        assertThatThrownBy(() -> new Reference("weights", Double.NaN, 0))
                .hasMessageContaining("weights");
        assertThatThrownBy(() -> new Allowed(0, "nothing")).hasMessageContaining("above 0");
    }
}
