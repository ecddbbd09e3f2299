package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.instrument.Calibration.Point;

/** Calibrations against JCGM 100:2008, H.3, and R. */
class CalibrationReferenceTest {

    private final Checks checks = Checks.of(getClass());

    /** METHODS N.15: what the thermometer showed, and what had to be added. */
    private static final double[] SHOWN = {
        21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
    };

    private static final double[] ADDED = {
        -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
    };

    private static Calibration thermometer() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < SHOWN.length; i++) {
            points.add(new Point(SHOWN[i] + ADDED[i], SHOWN[i]));
        }
        return Calibration.of(points, 0.001, Reference.exact("reference thermometer"));
    }

    @Test
    void thermometerOfTheGuide() {
        Calibration calibration = thermometer();
        Correction correction = calibration.correction("thermometer", "H.3");
        double at20 = correction.of(20);
        double at30 = correction.of(30);
        checks.row("H3-y1").expects(at20 - 20);
        checks.row("H3-y1-u").expects(correction.sharedUncertaintyAt(at20));
        checks.row("H3-y2").expects((at30 - at20) / 10 - 1);
        checks.row("H3-y2-u")
                .expects(calibration.slopeUncertainty() / calibration.line().slope());
        checks.row("H3-s").expects(calibration.scatter());
        checks.row("H3-b30").expects(at30 - 30);
        checks.row("H3-b30-u").expects(correction.sharedUncertaintyAt(at30));
    }

    /** The correlation is never carried; it follows from the two faults as their sum does. */
    @Test
    void heightAndSlopeHoldTheCorrelationOfTheGuide() {
        Calibration calibration = thermometer();
        Correction correction = calibration.correction("thermometer", "H.3");
        double covariance = 0;
        double squares = 0;
        double perDegree = 0;
        for (Fault fault : correction.faults()) {
            double u = fault.source().standardUncertainty();
            double at20 = fault.of(u, correction.of(20));
            covariance += at20 * u * fault.slope();
            squares += at20 * at20;
            perDegree += u * fault.slope() * u * fault.slope();
        }
        checks.row("H3-r").expects(covariance / Math.sqrt(squares * perDegree));
    }

    @Test
    void loadCellUpAndDown() {
        Calibration cell = Cells.upAndDown();
        checks.row("R-slope").expects(cell.line().slope());
        checks.row("R-slope-u").expects(cell.slopeUncertainty());
        checks.row("R-offset").expects(cell.line().intercept());
        checks.row("R-offset-u").expects(cell.offsetUncertainty());
        checks.row("R-scatter").expects(cell.scatter());
        Straightness straightness = cell.straightness().orElseThrow();
        checks.row("R-lack-of-fit-f").expects(straightness.test().f());
        checks.row("R-lack-of-fit-p").expects(straightness.test().p());
        Reversal reversal = cell.reversal().orElseThrow();
        checks.row("R-reversal").expects(reversal.mean());
        checks.row("R-reversal-p").expects(reversal.p());
        Correction correction = cell.correction("cell", "R");
        checks.row("R-value").expects(correction.of(120));
        checks.row("R-value-u").expects(correction.sharedUncertaintyAt(correction.of(120)));
    }

    @Test
    void thermometerThatBends() {
        Straightness bend = Cells.bent().straightness().orElseThrow();
        checks.row("R-curvature-f").expects(bend.test().f());
        checks.row("R-curvature-p").expects(bend.test().p());
    }
}
