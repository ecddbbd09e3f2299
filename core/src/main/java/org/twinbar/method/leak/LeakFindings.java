package org.twinbar.method.leak;

import java.util.Locale;
import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Yield;

/** What a person should know about one vessel. */
final class LeakFindings {

    static final Finding.Kind NO_CLAIM_TIME = Finding.Kind.note(
            "no-claim-time",
            "No time was claimed, so dry means dry until the end of its own test, %s.");
    static final Finding.Kind EVAPORATION_UNKNOWN = Finding.Kind.warning(
            "evaporation-unknown",
            "No tight vessel stood beside it, so what evaporated counts as leaked; weigh one of"
                    + " the same shape and filling too.");
    static final Finding.Kind GAINED_MASS = Finding.Kind.warning(
            "gained-mass",
            "It lost %s g/h less than the tight vessel, more than weighing explains; control and"
                    + " vessel did not stand alike.");
    static final Finding.Kind LOOKS_FAR_APART = Finding.Kind.note(
            "looks-far-apart",
            "It was dry at %s and wet at %s, and leaked somewhere between; look more often to"
                    + " know when.");
    static final Finding.Kind HEAD_FELL = Finding.Kind.warning(
            "head-fell",
            "The head fell from %s to %s mm, so the leak rate is one under about %s mm.");
    static final Finding.Kind MAY_YET_WET = Finding.Kind.note(
            "dry-pores-may-hold",
            "A head of %s mm presses with %s kPa; pores up to %s µm that repel water hold that"
                    + " without being closed, until they are wetted or soap is in the water.");
    static final Finding.Kind ONE_PORE = Finding.Kind.note(
            "as-one-pore", "That much runs through one round pore of %s µm in a wall of %s mm.");
    static final Finding.Kind BELOW_DETECTION = Finding.Kind.note(
            "below-detection-limit",
            "The loss is below %s g/h, three standard uncertainties of the weighings or the scatter"
                    + " of the tight vessels; weigh after a longer time, or on a finer scale.");
    static final Finding.Kind LIQUID_UNKNOWN = Finding.Kind.note(
            "liquid-not-stated", "Which liquid it held was not noted; state it with the result.");

    /** Looks further apart than this share of the time are worth a sentence; our own. */
    private static final double FAR_APART = 0.5;

    private static final double FELL = 0.10;

    /** Contact angle of water on a resin that repels it (°): METHODS E. */
    private static final double REPELLING = 110;

    private static final double SECONDS_PER_HOUR = 3600;

    private final Readings readings;
    private final Outcome.Builder out;

    private LeakFindings(Readings readings, Outcome.Builder out) {
        this.readings = readings;
        this.out = out;
    }

    static void of(Readings readings, Optional<Looks> looks, Yield rate, Outcome.Builder out) {
        LeakFindings findings = new LeakFindings(readings, out);
        looks.ifPresent(findings::lookAtTimes);
        findings.lookAtRate(rate);
        findings.lookAtHead(looks);
    }

    private void lookAtTimes(Looks looks) {
        if (!readings.has(LeakForm.CLAIM_TIME)) {
            out.found(NO_CLAIM_TIME.with(
                    Looks.hours(looks.leaked() ? looks.firstWet() : looks.lastDry())));
        }
        if (looks.leaked() && looks.firstWet() - looks.lastDry() > FAR_APART * looks.firstWet()) {
            out.found(LOOKS_FAR_APART.with(
                    Looks.hours(looks.lastDry()), Looks.hours(looks.firstWet())));
        }
        if (!readings.has(LeakForm.LIQUID)) {
            out.found(LIQUID_UNKNOWN.with());
        }
    }

    private void lookAtRate(Yield rate) {
        if (rate instanceof Yield.Below) {
            out.found(BELOW_DETECTION.with(Figures.two(Leak.detection(readings).limit())));
        }
        if (rate instanceof Yield.Missing) {
            return;
        }
        if (!readings.has(LeakForm.CONTROL_LOSS)) {
            out.found(EVAPORATION_UNKNOWN.with());
        }
        if (rate instanceof Yield.Below) {
            double seen = Leak.rateSeen(readings);
            if (-seen > Leak.detection(readings).limit()) {
                out.found(GAINED_MASS.with(Figures.two(-seen)));
            }
        }
        if (rate instanceof Yield.Value value
                && readings.has(LeakForm.HEAD)
                && readings.has(LeakForm.WALL)
                && isWater()) {
            double wall = readings.number(LeakForm.WALL);
            double flow = value.value() / 1000 / Water.DENSITY / SECONDS_PER_HOUR;
            double pore = Water.poreFor(flow, wall / 1000, pressure());
            out.found(ONE_PORE.with(Figures.two(1e6 * pore), Figures.two(wall)));
        }
    }

    private void lookAtHead(Optional<Looks> looks) {
        if (!readings.has(LeakForm.HEAD)) {
            return;
        }
        double head = readings.number(LeakForm.HEAD);
        if (readings.has(LeakForm.HEAD_AT_END)) {
            double end = readings.number(LeakForm.HEAD_AT_END);
            if (end < (1 - FELL) * head) {
                out.found(HEAD_FELL.with(
                        Figures.three(head), Figures.three(end), Figures.three((head + end) / 2)));
            }
        }
        boolean dry = looks.isPresent() && !looks.get().leaked();
        if (dry && isWater()) {
            double pore = Water.barrier(1, REPELLING) / pressure();
            out.found(MAY_YET_WET.with(
                    Figures.three(head), Figures.two(pressure() / 1000), Figures.two(1e6 * pore)));
        }
    }

    private double pressure() {
        return Water.pressure(readings.number(LeakForm.HEAD) / 1000);
    }

    private boolean isWater() {
        return !readings.has(LeakForm.LIQUID)
                || readings.word(LeakForm.LIQUID)
                        .strip()
                        .toLowerCase(Locale.ROOT)
                        .equals("water");
    }
}
