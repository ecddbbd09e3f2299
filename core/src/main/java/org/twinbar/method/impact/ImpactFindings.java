package org.twinbar.method.impact;

import java.util.OptionalDouble;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.conditioning.Conditioning;

/** What a person should know about one blow. */
final class ImpactFindings {

    static final Finding.Kind BELOW_WINDOW = Finding.Kind.warning(
            "energy-below-window",
            "It took %s %% of the hammer's %s J; below 10 %% (ISO 179-1 and ISO 180) the scale"
                    + " hardly resolves it. %s");
    static final Finding.Kind ABOVE_WINDOW = Finding.Kind.warning(
            "energy-above-window",
            "It took %s %% of the hammer's %s J; above 80 %% (ISO 179-1 and ISO 180) the hammer"
                    + " slows down while it breaks. %s");
    static final Finding.Kind NO_ENERGY = Finding.Kind.serious(
            "no-energy-left",
            "Friction and flying pieces account for all the energy that is missing, so the"
                    + " specimen took none that this scale can show; use a lighter hammer.");
    static final Finding.Kind FRICTION_UNKNOWN = Finding.Kind.warning(
            "friction-unknown",
            "Friction was not measured and is counted as the specimen's: swing once without a"
                    + " specimen and note the rise.");
    static final Finding.Kind FRICTION_LARGE = Finding.Kind.note(
            "friction-large",
            "A swing loses %s %% of the hammer's energy; ISO 13802 allows about %s %% for a"
                    + " hammer of this size.");
    static final Finding.Kind SPEED = Finding.Kind.note(
            "speed-outside-standard",
            "The striker is at %s m/s when it strikes, the standard's hammer at %s m/s; compare"
                    + " only what was struck at one speed.");
    static final Finding.Kind PERCUSSION = Finding.Kind.warning(
            "percussion-off",
            "The striker sits at %s mm, the centre of percussion at %s mm: beyond 1 %% apart"
                    + " (ISO 13802) the bearing takes part of the blow; move the bob.");
    static final Finding.Kind TOSS = Finding.Kind.warning(
            "toss",
            "Pieces of %s g may have flown off with up to %s %% of the energy; half of that is"
                    + " taken off, and all of it widens the interval.");
    static final Finding.Kind PIECES_WITHOUT_SPEED = Finding.Kind.note(
            "pieces-without-speed",
            "The pieces were weighed, but without the striker's radius their speed and energy"
                    + " are not known.");
    static final Finding.Kind NOTCH_BEFORE = Finding.Kind.note(
            "notch-before-treatment",
            "The notch was made before treatment, so a coat lies in it and blunts its root:"
                    + " another test than a notch cut afterwards.");
    static final Finding.Kind NOT_BROKEN = Finding.Kind.note(
            "not-broken",
            "It did not break (N), so it has no impact strength; means are taken only within one"
                    + " type of break.");

    /** METHODS C.1, from memory. */
    private static final double PERCUSSION_TOLERANCE = 0.01;

    /** Below this share of the energy, a toss is not worth a sentence; our own. */
    private static final double TOSS_WORTH_SAYING = 0.02;

    private final Readings readings;
    private final Swing swing;
    private final double energy;
    private final Outcome.Builder out;
    private final StandardHammers standard;

    private ImpactFindings(Readings readings, Swing swing, double energy, Outcome.Builder out) {
        this.readings = readings;
        this.swing = swing;
        this.energy = energy;
        this.out = out;
        this.standard = StandardHammers.of(readings.choice(ImpactForm.HELD_AS));
    }

    static void of(Readings readings, Swing swing, double energy, Outcome.Builder out) {
        ImpactFindings findings = new ImpactFindings(readings, swing, energy, out);
        Conditioning.find(readings, out);
        findings.lookAtWindow();
        findings.lookAtFriction();
        findings.lookAtStriker();
        findings.lookAtPieces();
        findings.lookAtWords();
    }

    private void lookAtWindow() {
        double available = swing.available();
        double share = energy / available;
        if (energy <= 0) {
            out.found(NO_ENERGY.with());
        } else if (share < StandardHammers.LEAST_SHARE) {
            out.found(BELOW_WINDOW.with(percent(share), Figures.three(available), suits()));
        } else if (share > StandardHammers.LARGEST_SHARE) {
            out.found(ABOVE_WINDOW.with(percent(share), Figures.three(available), suits()));
        }
    }

    /** Says which hammer suits the energy: a standard one, or from W/0.8 to W/0.1. */
    private String suits() {
        OptionalDouble hammer = standard.largestFor(energy);
        return hammer.isPresent()
                ? "The standard's hammer of " + plain(hammer.getAsDouble()) + " J would suit."
                : "A hammer from %s to %s J would suit."
                        .formatted(
                                Figures.two(energy / StandardHammers.LARGEST_SHARE),
                                Figures.two(energy / StandardHammers.LEAST_SHARE));
    }

    private void lookAtFriction() {
        if (swing.loss() == Swing.Loss.UNKNOWN) {
            out.found(FRICTION_UNKNOWN.with());
            return;
        }
        double share = swing.lost() / swing.available();
        double permitted = standard.permittedLoss(swing.available());
        if (share > permitted) {
            out.found(FRICTION_LARGE.with(percent(share), percent(permitted)));
        }
    }

    private void lookAtStriker() {
        OptionalDouble speed = swing.speed();
        if (speed.isPresent()) {
            double wanted = standard.speed(swing.available());
            if (Math.abs(speed.getAsDouble() / wanted - 1) > StandardHammers.SPEED_TOLERANCE) {
                out.found(SPEED.with(Figures.three(speed.getAsDouble()), Figures.two(wanted)));
            }
        }
        OptionalDouble length = swing.reducedLength();
        OptionalDouble radius = swing.strikerRadius();
        if (length.isPresent() && radius.isPresent()) {
            double off = radius.getAsDouble() / length.getAsDouble() - 1;
            if (Math.abs(off) > PERCUSSION_TOLERANCE) {
                out.found(PERCUSSION.with(
                        Figures.three(1000 * radius.getAsDouble()),
                        Figures.three(1000 * length.getAsDouble())));
            }
        }
    }

    private void lookAtPieces() {
        OptionalDouble toss = swing.tossAtMost();
        if (toss.isPresent() && toss.getAsDouble() > TOSS_WORTH_SAYING * Math.max(0, energy)) {
            double before = energy + toss.getAsDouble() / 2;
            out.found(TOSS.with(
                    Figures.three(readings.number(ImpactForm.PIECE_MASS)),
                    percent(toss.getAsDouble() / before)));
        } else if (toss.isEmpty() && readings.has(ImpactForm.PIECE_MASS)) {
            out.found(PIECES_WITHOUT_SPEED.with());
        }
    }

    private void lookAtWords() {
        if (readings.has(ImpactForm.NOTCH_MADE)
                && readings.word(ImpactForm.NOTCH_MADE).equals(ImpactForm.NOTCH_BEFORE)) {
            out.found(NOTCH_BEFORE.with());
        }
        if (readings.has(ImpactForm.BREAK_TYPE)
                && readings.word(ImpactForm.BREAK_TYPE).equals(ImpactForm.NOT_BROKEN)) {
            out.found(NOT_BROKEN.with());
        }
    }

    private static String percent(double share) {
        return Figures.two(100 * share);
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
