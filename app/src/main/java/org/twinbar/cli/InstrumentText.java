package org.twinbar.cli;

import java.io.IOException;
import java.util.List;
import org.twinbar.report.Written;
import org.twinbar.study.bench.KeptCalibration;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.bench.ZeroCheck;

/** Instruments of a workspace as text and as JSON. */
final class InstrumentText {

    private InstrumentText() {}

    static String listed(List<KeptInstrument> all) {
        if (all.isEmpty()) {
            return "no instrument yet; 'twinbar instrument add' makes one\n";
        }
        Aligned rows = new Aligned().row("instrument", "kind", "step", "calibrated");
        for (KeptInstrument one : all) {
            rows.row(
                    one.name(),
                    one.sheet().kind(),
                    amount(one.resolution(), one),
                    one.latest().map(it -> it.sheet().date().toString()).orElse("never"));
        }
        return rows.toString();
    }

    static String of(KeptInstrument instrument) {
        StringBuilder text = new StringBuilder();
        text.append(instrument.name()).append(", ").append(instrument.sheet().kind());
        text.append(", steps of ").append(amount(instrument.resolution(), instrument));
        instrument
                .validDays()
                .ifPresent(days -> text.append(", a calibration holds %s days".formatted(days)));
        text.append('\n');
        if (!instrument.sheet().note().isBlank()) {
            text.append(ComparisonsText.wrapped(instrument.sheet().note(), "  "));
        }
        for (ZeroCheck check : instrument.zeroChecks()) {
            text.append("  zero on %s: %s\n"
                    .formatted(check.date(), amount(check.reading(), instrument)));
        }
        instrument
                .withdrawn()
                .forEach(it -> text.append("  calibration of %s, withdrawn: %s\n"
                        .formatted(it.calibration().sheet().date(), it.why())));
        instrument
                .latest()
                .ifPresentOrElse(
                        it -> text.append('\n')
                                .append(CalibrationView.of(instrument, it).text()),
                        () -> text.append("  never calibrated\n"));
        return text.toString();
    }

    private static String amount(double value, KeptInstrument instrument) {
        return (Written.number(value, 4) + " " + instrument.unit().symbol()).strip();
    }

    static void into(Json json, KeptInstrument instrument) throws IOException {
        json.put("name", instrument.name())
                .put("kind", instrument.sheet().kind())
                .put("unit", instrument.unit().symbol())
                .put("resolution", instrument.resolution());
        if (instrument.validDays().isPresent()) {
            json.put("validDays", instrument.validDays().getAsInt());
        } else {
            json.reason("validDays", "nobody said how long a calibration holds");
        }
        json.put("note", instrument.sheet().note())
                .list("zeroChecks", list -> {
                    for (ZeroCheck check : instrument.zeroChecks()) {
                        list.object(one -> one.put("date", check.date().toString())
                                .put("reading", check.reading()));
                    }
                })
                .list("withdrawn", list -> {
                    for (KeptCalibration.Withdrawn gone : instrument.withdrawn()) {
                        list.object(one -> one.put(
                                        "date",
                                        gone.calibration().sheet().date().toString())
                                .put("why", gone.why()));
                    }
                })
                .list("calibrations", list -> {
                    for (KeptCalibration kept : instrument.calibrations()) {
                        list.object(CalibrationView.of(instrument, kept)::into);
                    }
                });
    }
}
