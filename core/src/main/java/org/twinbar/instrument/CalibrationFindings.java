package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Calibration.Point;

/** What a person should know of a calibration; numbers are in the instrument's unit. */
final class CalibrationFindings {

    static final Finding.Kind FEW_POINTS = Finding.Kind.warning(
            "few-calibration-points",
            "The line stands on %s points at %s values of the reference, so that its own"
                    + " uncertainty is large and a bend could not be seen; take five values at"
                    + " least, up and down again.");
    static final Finding.Kind BENT = Finding.Kind.warning(
            "calibration-bends",
            "The points do not lie along a line (%s, p = %s): the farthest reading, at %s, lies %s"
                    + " from it. Readings there are corrected wrongly by that much; calibrate over"
                    + " a shorter range, or keep to where the points lie close.");
    static final Finding.Kind BEYOND_LIMIT = Finding.Kind.warning(
            "calibration-beyond-limit",
            "At %s the reading lies %s from the line, more than the %s (%s) that were stated for"
                    + " it.");
    static final Finding.Kind REVERSAL = Finding.Kind.warning(
            "calibration-reversal",
            "On the way down it shows %s more than on the way up, on average over %s values (%s at"
                    + " %s); read in one direction only, the one of the test.");
    static final Finding.Kind COARSE_REFERENCE = Finding.Kind.note(
            "coarse-reference",
            "The reference is known to %s (standard uncertainty), worse than the line through the"
                    + " points (%s): a better reference would do more than further points.");

    /** Five values up and down are common practice; no source. */
    private static final int FEW_LEVELS = 4;

    private static final int FEW = 5;

    private CalibrationFindings() {}

    static List<Finding> of(Calibration calibration) {
        List<Finding> findings = new ArrayList<>();
        int n = calibration.points().size();
        if (n < FEW || calibration.levels() < FEW_LEVELS) {
            findings.add(FEW_POINTS.with(n, calibration.levels()));
        }
        calibration
                .straightness()
                .filter(Straightness::bends)
                .ifPresent(it -> findings.add(bent(calibration, it)));
        calibration
                .reversal()
                .filter(Reversal::differs)
                .ifPresent(it -> findings.add(REVERSAL.with(
                        signed(it.mean()),
                        it.pairs(),
                        signed(it.largest()),
                        Figures.three(it.at()))));
        double middle = calibration.line().meanX();
        double ofReference = calibration.reference().at(middle);
        double ofLine = calibration.heightUncertainty() / calibration.line().slope();
        if (ofReference > ofLine) {
            findings.add(COARSE_REFERENCE.with(Figures.two(ofReference), Figures.two(ofLine)));
        }
        return findings;
    }

    private static Finding bent(Calibration calibration, Straightness straightness) {
        int worst = calibration.worst();
        Point point = calibration.points().get(worst);
        double p = straightness.test().p();
        return BENT.with(
                straightness.kind().word(),
                p < 0.001 ? "below 0.001" : Figures.two(p),
                Figures.three(point.reference()),
                signed(calibration.residuals()[worst]));
    }

    static Optional<Finding> against(Calibration calibration, Allowed allowed) {
        int worst = calibration.worst();
        double residual = calibration.residuals()[worst];
        return Math.abs(residual) > allowed.limit()
                ? Optional.of(BEYOND_LIMIT.with(
                        Figures.three(calibration.points().get(worst).reference()),
                        signed(residual),
                        Figures.two(allowed.limit()),
                        allowed.words()))
                : Optional.empty();
    }

    private static String signed(double value) {
        return (value < 0 ? "−" : "") + Figures.two(Math.abs(value));
    }
}
