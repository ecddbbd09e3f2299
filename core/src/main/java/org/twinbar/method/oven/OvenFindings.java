package org.twinbar.method.oven;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.heating.BrokenStick;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;

/** What a person should know about a cantilever that was heated in an oven. */
final class OvenFindings {

    static final Finding.Kind UNCORRECTED = Finding.Kind.warning(
            "air-temperature-uncorrected",
            "The thermometer read the air, and nothing was taken off for the bar that trails it,"
                    + " by %s; that widens every interval, between groups too, since a coated bar"
                    + " trails by more. Measure each group's time constant by a step, or read in a"
                    + " dummy bar.");
    static final Finding.Kind LAG = Finding.Kind.note(
            "thermal-lag",
            "The bar trailed the air by %s °C, ramp times time constant, which was taken off;"
                    + " %s %% of it is an error that the whole group %s has.");
    static final Finding.Kind RECKONED = Finding.Kind.warning(
            "thermal-lag-reckoned",
            "The bar trailed the air by %s °C as reckoned from its size, which was taken off and is"
                    + " known to %s %%; part of that the whole group %s has alone. A step test of a"
                    + " dummy of each group would tell.");
    static final Finding.Kind LARGE_LAG = Finding.Kind.warning(
            "thermal-lag-large",
            "The bar trailed the air by %s °C; heat more slowly, at 0.2 to 0.5 °C per minute, and"
                    + " less of the result is correction.");
    static final Finding.Kind SHORT_ARM = Finding.Kind.note(
            "short-arm",
            "The arm is %s thicknesses long; below 10, shear and the clamp's give count, and the"
                    + " strain is not what the formula says.");
    static final Finding.Kind LOAD_UNKNOWN = Finding.Kind.note(
            "oven-load-not-stated",
            "Which oven load the bar was in was not noted; loads differ, and bars of one load are"
                    + " no witnesses of each other.");
    static final Finding.Kind CURVED = Finding.Kind.warning(
            "two-lines-do-not-fit",
            "Behind the bend the record is curved, not straight, so the onset depends on where the"
                    + " lines end: move that mark, or go by the temperature at the deflection.");
    static final Finding.Kind STOPS_SHORT = Finding.Kind.note(
            "lines-end-early",
            "The two lines end at %s °C, where the deflection leaves a tenth of the arm or the mark"
                    + " was put.");

    /** A correction beyond this is most of what is found (°C); our own. */
    private static final double LARGE = 5;

    private static final double SHORTEST_ARM = 10;

    /** Chance gives fewer runs than this one time in a hundred. */
    private static final double FEW_RUNS = -2.326;

    /** Scatter below this share of the sag is too small to be seen as a curve; our own. */
    private static final double VISIBLE_SHARE = 0.001;

    private OvenFindings() {}

    static void ofBar(Readings readings, Optional<Cantilever> bar, Outcome.Builder out) {
        if (bar.isPresent()) {
            Side.findings(readings, out);
            double ratio = bar.get().armMm() / bar.get().thicknessMm();
            if (ratio < SHORTEST_ARM) {
                out.found(SHORT_ARM.with(Figures.two(ratio)));
            }
        }
    }

    static void ofLag(Readings readings, Lag lag, double lagKelvin, Outcome.Builder out) {
        if (!readings.has(OvenForm.OVEN_LOAD)) {
            out.found(LOAD_UNKNOWN.with());
        }
        switch (lag.origin()) {
            case READ_IN_BAR -> {}
            case UNKNOWN -> out.found(UNCORRECTED.with(likely(lag.reckoned())));
            case MEASURED -> takenOff(readings, lag, lagKelvin, LAG, out);
            case RECKONED -> takenOff(readings, lag, lagKelvin, RECKONED, out);
        }
    }

    private static void takenOff(
            Readings readings, Lag lag, double lagKelvin, Finding.Kind kind, Outcome.Builder out) {
        if (lagKelvin > LARGE) {
            out.found(LARGE_LAG.with(Figures.two(lagKelvin)));
        }
        if (lagKelvin > 0) {
            out.found(kind.with(
                    Figures.two(lagKelvin), Figures.two(100 * lag.share()), readings.group()));
        }
    }

    private static String likely(double reckoned) {
        return reckoned > 0
                ? "up to %s °C as reckoned from its size in still air"
                        .formatted(Figures.two(reckoned))
                : "4 to 15 °C at 2 °C per minute for 4 mm";
    }

    /** Says that the upper branch is curved, where that is more than the gauge's step. */
    static void ofLines(
            Readings readings, BrokenStick stick, double largestSagMm, Outcome.Builder out) {
        double visible = Math.max(readings.step(Heated.DEFLECTION), VISIBLE_SHARE * largestSagMm);
        if (stick.runsScore() < FEW_RUNS && stick.scatter() > visible) {
            out.found(CURVED.with());
        }
    }

    static void stopsShort(double airC, Outcome.Builder out) {
        out.found(STOPS_SHORT.with(Figures.three(airC)));
    }
}
