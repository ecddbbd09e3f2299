package org.twinbar.study.bench;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Correction;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Unit;

/**
 * An instrument of the workspace with its history.
 *
 * @param calibrations those that count, the oldest first
 * @param withdrawn those that don't
 * @param zeroChecks the oldest first
 * @param references specimens that are tested on it again and again
 */
public record KeptInstrument(
        UUID id,
        InstrumentSheet sheet,
        List<KeptCalibration> calibrations,
        List<KeptCalibration.Withdrawn> withdrawn,
        List<ZeroCheck> zeroChecks,
        List<KeptReference> references) {

    static final Finding.Kind NOT_CALIBRATED = Finding.Kind.note(
            "instrument-not-calibrated",
            "%s was never calibrated here, so the usual gain (known to %s %%) and zero (known to"
                    + " %s) of its kind are assumed.");
    static final Finding.Kind EXPIRED = Finding.Kind.warning(
            "calibration-expired",
            "The calibration of %s was %s days old at the test on %s; it was said to hold %s."
                    + " Check it against a reference before the next test.");
    static final Finding.Kind AFTER_TEST = Finding.Kind.warning(
            "calibration-after-test",
            "%s was calibrated on %s, after the test on %s: that it was the same before is taken"
                    + " for granted.");
    static final Finding.Kind UNDATED = Finding.Kind.note(
            "test-date-unknown",
            "When the test was made was not said (date), so that nobody can tell whether the"
                    + " calibration of %s, of %s, held then.");
    static final Finding.Kind DRIFTED = Finding.Kind.note(
            "instrument-drifted",
            "Between %s and %s, %s drifted by %s at the upper end of its range; that is in the"
                    + " budget.");
    static final Finding.Kind ZERO_WANDERS = Finding.Kind.warning(
            "zero-wanders",
            "On %s the zero of %s stood at %s, more than twice what its calibration leaves open"
                    + " (%s). Set it to zero before each test, or calibrate it anew.");
    static final Finding.Kind DOUBTFUL =
            Finding.Kind.warning("calibration-doubtful", "The calibration of %s: %s");

    public KeptInstrument {
        calibrations = List.copyOf(calibrations);
        withdrawn = List.copyOf(withdrawn);
        zeroChecks = List.copyOf(zeroChecks);
        references = List.copyOf(references);
    }

    /**
     * An instrument as it was at a test.
     *
     * @param findings what a person should know of it
     */
    record InUse(Instrument instrument, List<Finding> findings) {}

    public String name() {
        return sheet.name();
    }

    public Unit unit() {
        return sheet.inUnit();
    }

    /** Returns the step of its display, in its unit. */
    public double resolution() {
        return sheet.step();
    }

    public OptionalInt validDays() {
        return sheet.validDays();
    }

    public Optional<KeptCalibration> latest() {
        return calibrations.isEmpty()
                ? Optional.empty()
                : Optional.of(calibrations.get(calibrations.size() - 1));
    }

    /** Returns what a person should know of one of its calibrations. */
    public List<Finding> findings(KeptCalibration kept) {
        return sheet.findings(kept.calibration());
    }

    /** Returns its correction by one calibration, with what drifted since the one before. */
    public Correction correction(KeptCalibration kept) {
        Correction correction = plain(kept);
        Optional<KeptCalibration> before = before(kept);
        if (before.isPresent()) {
            correction = correction.withDrift(name(), plain(before.get()));
        }
        double farthest = 0;
        for (ZeroCheck check : zeroChecks) {
            if (!check.date().isBefore(kept.sheet().date())) {
                double off = correction.of(check.reading());
                farthest = Math.abs(off) > Math.abs(farthest) ? off : farthest;
            }
        }
        return farthest == 0 ? correction : correction.withWanderingZero(name(), farthest);
    }

    private Correction plain(KeptCalibration kept) {
        return kept.calibration().correction(name(), kept.words(unit()));
    }

    private Optional<KeptCalibration> before(KeptCalibration kept) {
        int at = calibrations.indexOf(kept);
        return at > 0 ? Optional.of(calibrations.get(at - 1)) : Optional.empty();
    }

    /**
     * Returns the instrument at a test: corrected by the last calibration before it, else by the
     * first one after it.
     *
     * @param tested when the test was made, where somebody said
     */
    InUse at(Optional<LocalDate> tested) {
        Optional<KeptCalibration> kept = tested.isPresent() ? heldOn(tested.get()) : latest();
        return kept.map(it -> calibrated(it, tested)).orElseGet(this::usual);
    }

    private Optional<KeptCalibration> heldOn(LocalDate day) {
        Optional<KeptCalibration> last = calibrations.stream()
                .filter(it -> !it.sheet().date().isAfter(day))
                .reduce((one, later) -> later);
        return last.or(() -> calibrations.stream().findFirst());
    }

    private InUse usual() {
        Instrument usual = sheet.knownKind()
                .map(kind -> kind.usual(unit()))
                .orElseGet(() -> Instrument.none(unit()));
        Instrument given = new Instrument(
                name(),
                unit(),
                resolution(),
                usual.gainUncertainty(),
                usual.zeroUncertainty(),
                Double.POSITIVE_INFINITY,
                Instrument.Origin.GIVEN,
                Optional.empty());
        return new InUse(
                given,
                List.of(NOT_CALIBRATED.with(
                        name(),
                        Figures.two(100 * usual.gainUncertainty()),
                        amount(usual.zeroUncertainty()))));
    }

    private InUse calibrated(KeptCalibration kept, Optional<LocalDate> tested) {
        Correction correction = correction(kept);
        Calibration calibration = kept.calibration();
        Instrument instrument = new Instrument(
                name(),
                unit(),
                resolution(),
                calibration.slopeUncertainty() / calibration.line().slope(),
                calibration.heightUncertainty() / calibration.line().slope(),
                calibration.line().df(),
                Instrument.Origin.CALIBRATED,
                Optional.of(correction));
        List<Finding> findings = new ArrayList<>();
        tested.ifPresentOrElse(
                day -> age(kept, day).ifPresent(findings::add),
                () -> findings.add(UNDATED.with(name(), kept.sheet().date())));
        findings(kept).stream()
                .filter(it -> it.level() != Finding.Level.NOTE)
                .map(it -> DOUBTFUL.with(name(), it.text()))
                .forEach(findings::add);
        before(kept).ifPresent(it -> findings.add(drifted(it, kept)));
        wandering(kept).ifPresent(findings::add);
        return new InUse(instrument, findings);
    }

    private Optional<Finding> age(KeptCalibration kept, LocalDate day) {
        LocalDate date = kept.sheet().date();
        if (date.isAfter(day)) {
            return Optional.of(AFTER_TEST.with(name(), date, day));
        }
        long days = ChronoUnit.DAYS.between(date, day);
        return validDays().isPresent() && days > validDays().getAsInt()
                ? Optional.of(EXPIRED.with(name(), days, day, validDays().getAsInt()))
                : Optional.empty();
    }

    private Finding drifted(KeptCalibration from, KeptCalibration to) {
        double high = to.calibration().highest();
        double shown = to.calibration().line().at(high);
        double drift = plain(from).of(shown) - high;
        return DRIFTED.with(from.sheet().date(), to.sheet().date(), name(), amount(drift));
    }

    private Optional<Finding> wandering(KeptCalibration kept) {
        if (zeroChecks.isEmpty()) {
            return Optional.empty();
        }
        ZeroCheck last = zeroChecks.get(zeroChecks.size() - 1);
        Correction correction = plain(kept);
        double off = correction.of(last.reading());
        double leavesOpen = correction.uncertaintyAt(0);
        boolean since = !last.date().isBefore(kept.sheet().date());
        return since && Math.abs(off) > 2 * leavesOpen
                ? Optional.of(
                        ZERO_WANDERS.with(last.date(), name(), amount(off), amount(leavesOpen)))
                : Optional.empty();
    }

    private String amount(double value) {
        return (value < 0 ? "−" : "") + Figures.two(Math.abs(value)) + " " + unit().symbol();
    }

    /**
     * Whether a reading of this kind may be read on it: one of its own kind may, and where either
     * is a kind of nobody's list, their units decide.
     */
    public boolean reads(Kind wanted) {
        return wanted == Kind.NONE
                || sheet.knownKind().map(known -> known == wanted).orElse(true);
    }
}
