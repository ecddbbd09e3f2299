package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.instrument.Correction;
import org.twinbar.report.Figures;
import org.twinbar.report.Written;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.ZeroCheck;

/** An instrument as its pages show it. */
public final class InstrumentView {

    private final KeptInstrument instrument;

    private InstrumentView(KeptInstrument instrument) {
        this.instrument = instrument;
    }

    static InstrumentView of(KeptInstrument instrument) {
        return new InstrumentView(instrument);
    }

    public KeptInstrument instrument() {
        return instrument;
    }

    public String link() {
        return "/instruments/" + instrument.id();
    }

    /** Returns how well it is known, in a line. */
    public String state() {
        return instrument
                        .latest()
                        .map(it -> "calibrated on %s against %s"
                                .formatted(
                                        it.sheet().date(),
                                        it.calibration().reference().name()))
                        .orElse("never calibrated")
                + instrument.validDays().stream()
                        .mapToObj(days -> "; a calibration holds " + Words.count(days, "day"))
                        .findFirst()
                        .orElse("");
    }

    public String step() {
        return amount(Written.number(instrument.resolution(), 4));
    }

    private String amount(String number) {
        String unit = instrument.unit().symbol();
        return unit.isEmpty() ? number : number + "\u2009" + unit;
    }

    public Optional<KeptCalibration> latest() {
        return instrument.latest();
    }

    /** Returns what the latest calibration says, as a sentence. */
    public String sentence() {
        return latest().map(this::sentence)
                .orElse("Nothing is known of it but its display. Hold it against something better,"
                        + " and results will say how far it can be trusted.");
    }

    private String sentence(KeptCalibration kept) {
        Calibration calibration = kept.calibration();
        Correction correction = instrument.correction(kept);
        double middle = (calibration.lowest() + calibration.highest()) / 2;
        double gain = calibration.line().slope() - 1;
        boolean gainShows = Math.abs(gain) > calibration.factor() * calibration.slopeUncertainty();
        boolean offsetShows = Math.abs(calibration.line().intercept())
                > calibration.factor() * calibration.offsetUncertainty();
        List<String> shows = new ArrayList<>();
        if (gainShows) {
            shows.add("%s too %s"
                    .formatted(Written.percent(Math.abs(gain)), gain > 0 ? "much" : "little"));
        }
        if (offsetShows) {
            shows.add("%s where there is nothing"
                    .formatted(amount(Written.rounded(
                            calibration.line().intercept(), calibration.offsetUncertainty()))));
        }
        String first = shows.isEmpty()
                ? "Nothing was found wrong with its gain or its zero"
                : "It shows " + String.join(" and ", shows);
        return "%s. A corrected reading of %s is uncertain by %s; readings outside %s to %s stand on nothing."
                .formatted(
                        first,
                        amount(Written.number(middle, 4)),
                        amount(Written.uncertainty(correction.uncertaintyAt(middle))),
                        Written.number(calibration.lowest(), 4),
                        amount(Written.number(calibration.highest(), 4)));
    }

    /** Returns what a person should know of the latest calibration. */
    public List<Finding> findings() {
        return latest().map(instrument::findings).orElse(List.of());
    }

    public String line() {
        return latest().map(it ->
                        Figures.calibration(it.calibration(), instrument.unit().symbol()))
                .orElse("");
    }

    public String residuals() {
        return latest().map(it -> Figures.residuals(
                        it.calibration(),
                        instrument.unit().symbol(),
                        instrument.sheet().allowed(it.calibration())))
                .orElse("");
    }

    /** One reading of the latest calibration. */
    public record Row(String reference, String reading, String residual, String corrected) {}

    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        latest().ifPresent(kept -> {
            Calibration calibration = kept.calibration();
            Correction correction = instrument.correction(kept);
            double[] residuals = calibration.residuals();
            for (int i = 0; i < residuals.length; i++) {
                Point point = calibration.points().get(i);
                double corrected = correction.of(point.reading());
                rows.add(new Row(
                        Written.number(point.reference(), 6),
                        Written.number(point.reading(), 6),
                        Written.rounded(residuals[i], calibration.scatter()),
                        Written.value(corrected, correction.uncertaintyAt(corrected), "")));
            }
        });
        return rows;
    }

    /**
     * A calibration in a line.
     *
     * @param withdrawn why it doesn't count; empty where it does
     */
    public record Done(String id, String words, String withdrawn) {}

    /** Returns each calibration, the newest first, and then those that were withdrawn. */
    public List<Done> history() {
        List<Done> done = new ArrayList<>();
        for (KeptCalibration kept : instrument.calibrations()) {
            done.add(0, new Done(kept.id().toString(), words(kept), ""));
        }
        for (KeptCalibration.Withdrawn gone : instrument.withdrawn()) {
            done.add(new Done(
                    gone.calibration().id().toString(),
                    words(gone.calibration()) + ", withdrawn",
                    gone.why()));
        }
        return done;
    }

    private String words(KeptCalibration kept) {
        Calibration calibration = kept.calibration();
        return "%s against %s: %s × value + %s, %s"
                .formatted(
                        kept.sheet().date(),
                        calibration.reference().name(),
                        Written.rounded(calibration.line().slope(), calibration.slopeUncertainty()),
                        amount(Written.rounded(
                                calibration.line().intercept(), calibration.offsetUncertainty())),
                        Words.count(calibration.points().size(), "point"));
    }

    public List<String> zeroChecks() {
        List<String> lines = new ArrayList<>();
        for (ZeroCheck check : instrument.zeroChecks()) {
            lines.add(
                    0,
                    "%s: %s".formatted(check.date(), amount(Written.number(check.reading(), 4))));
        }
        return lines;
    }
}
