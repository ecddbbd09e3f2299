package org.twinbar.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.instrument.Correction;
import org.twinbar.instrument.Reversal;
import org.twinbar.instrument.Straightness;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.statistics.Estimate;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptInstrument;

/**
 * A calibration as text and as JSON.
 *
 * @param of the instrument, or the table that was fitted
 * @param kept where it is kept, with what it stands on
 */
record CalibrationView(
        String of,
        Unit unit,
        Calibration calibration,
        Optional<KeptCalibration> kept,
        List<Finding> findings) {

    static CalibrationView of(KeptInstrument instrument, KeptCalibration kept) {
        return new CalibrationView(
                instrument.name(),
                instrument.unit(),
                kept.calibration(),
                Optional.of(kept),
                instrument.findings(kept));
    }

    private Correction correction() {
        return calibration.correction(of, of);
    }

    private Estimate slope() {
        return interval(calibration.line().slope(), calibration.slopeUncertainty(), "slope");
    }

    private Estimate offset() {
        return interval(calibration.line().intercept(), calibration.offsetUncertainty(), "offset");
    }

    private Estimate interval(double value, double u, String what) {
        double half = calibration.factor() * u;
        return new Estimate(
                value,
                value - half,
                value + half,
                Calibration.LEVEL,
                calibration.line().df(),
                calibration.line().n(),
                "least squares, " + what);
    }

    String text() {
        StringBuilder text = new StringBuilder();
        text.append(kept.map(it -> "%s, calibrated on %s against %s\n"
                        .formatted(
                                of, it.sheet().date(), calibration.reference().name()))
                .orElse("%s, against %s\n".formatted(of, calibration.reference().name())));
        Estimate slope = slope();
        Estimate offset = offset();
        Aligned rows = new Aligned();
        rows.row(
                "it shows",
                "%s times the value (95 %% interval %s to %s)"
                        .formatted(
                                Written.rounded(slope.value(), calibration.slopeUncertainty()),
                                Written.rounded(slope.low(), calibration.slopeUncertainty()),
                                Written.rounded(slope.high(), calibration.slopeUncertainty())));
        rows.row(
                "plus",
                "%s (%s to %s)"
                        .formatted(
                                amount(Written.rounded(
                                        offset.value(), calibration.offsetUncertainty())),
                                Written.rounded(offset.low(), calibration.offsetUncertainty()),
                                Written.rounded(offset.high(), calibration.offsetUncertainty())));
        rows.row("one reading scatters", amount(Written.uncertainty(calibration.scatter())));
        rows.row(
                "calibrated from",
                "%s to %s"
                        .formatted(
                                Written.number(calibration.lowest(), 4),
                                amount(Written.number(calibration.highest(), 4))));
        rows.row(
                "straight",
                calibration
                        .straightness()
                        .map(it -> "%s (%s, p = %s)"
                                .formatted(
                                        it.bends() ? "no" : "as far as these points tell",
                                        it.kind().word(),
                                        Written.number(it.test().p(), 2)))
                        .orElse("too few points to tell"));
        calibration
                .reversal()
                .ifPresent(it -> rows.row(
                        "down less up",
                        "%s on average, %s at %s"
                                .formatted(
                                        amount(Written.number(it.mean(), 2)),
                                        amount(Written.number(it.largest(), 2)),
                                        amount(Written.number(it.at(), 4)))));
        text.append(rows).append('\n').append(points());
        for (Finding finding : findings) {
            text.append('\n')
                    .append(ComparisonsText.wrapped(
                            finding.level().word() + ": " + finding.text(), ""));
        }
        return text.toString();
    }

    private String points() {
        String in = unit.symbol().isEmpty() ? "" : ", " + unit.symbol();
        Aligned rows = new Aligned()
                .row("reference" + in, "reading" + in, "from the line" + in, "corrected" + in);
        double[] residuals = calibration.residuals();
        Correction correction = correction();
        for (int i = 0; i < residuals.length; i++) {
            Point point = calibration.points().get(i);
            double corrected = correction.of(point.reading());
            rows.row(
                    Written.number(point.reference(), 6),
                    Written.number(point.reading(), 6),
                    Written.rounded(residuals[i], calibration.scatter()),
                    Written.value(corrected, correction.uncertaintyAt(corrected), ""));
        }
        return rows.toString();
    }

    private String amount(String number) {
        return (number + " " + unit.symbol()).strip();
    }

    void into(Json json) throws IOException {
        json.put("instrument", of).put("unit", unit.symbol());
        if (kept.isPresent()) {
            json.put("date", kept.get().sheet().date().toString());
        } else {
            json.reason("date", "it was not kept");
        }
        json.put("against", calibration.reference().name());
        line(json);
        straightness(json);
        Optional<Reversal> reversal = calibration.reversal();
        if (reversal.isPresent()) {
            json.object(
                    "reversal",
                    it -> it.put("mean", reversal.get().mean())
                            .put("largest", reversal.get().largest())
                            .put("at", reversal.get().at())
                            .put("p", reversal.get().p()));
        } else {
            json.reason("reversal", "no value of the reference was reached both ways");
        }
        points(json);
        json.findings(findings);
    }

    private void line(Json json) throws IOException {
        Estimate slope = slope();
        Estimate offset = offset();
        json.object("slope", it -> estimate(it, slope, calibration.slopeUncertainty()))
                .object("offset", it -> estimate(it, offset, calibration.offsetUncertainty()))
                .put("scatter", calibration.scatter())
                .put("df", calibration.line().df())
                .object(
                        "range",
                        it -> it.put("from", calibration.lowest())
                                .put("to", calibration.highest()));
    }

    private void straightness(Json json) throws IOException {
        Optional<Straightness> straightness = calibration.straightness();
        if (straightness.isPresent()) {
            json.object("straightness", it -> {
                it.put("test", straightness.get().kind().word());
                double f = straightness.get().test().f();
                if (Double.isFinite(f)) {
                    it.put("f", f);
                } else {
                    it.reason("f", "readings at one reference do not scatter at all");
                }
                it.put("p", straightness.get().test().p())
                        .put("bends", straightness.get().bends());
            });
        } else {
            json.reason("straightness", "too few points to tell");
        }
    }

    private static void estimate(Json json, Estimate estimate, double u) throws IOException {
        json.put("value", estimate.value())
                .put("u", u)
                .put("low", estimate.low())
                .put("high", estimate.high());
    }

    private void points(Json json) throws IOException {
        double[] residuals = calibration.residuals();
        Correction correction = correction();
        json.list("points", list -> {
            for (int i = 0; i < residuals.length; i++) {
                Point point = calibration.points().get(i);
                double residual = residuals[i];
                double corrected = correction.of(point.reading());
                list.object(one -> one.put("reference", point.reference())
                        .put("reading", point.reading())
                        .put("residual", residual)
                        .put("corrected", corrected)
                        .put("u", correction.uncertaintyAt(corrected)));
            }
        });
    }
}
