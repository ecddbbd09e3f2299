package org.twinbar.method.oven;

import java.util.Optional;
import java.util.OptionalDouble;
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
                    + " by %s; a coated bar trails by more. Measure each group's time constant by a"
                    + " step, or read in a dummy bar.");
    static final Finding.Kind LAG = Finding.Kind.note(
            "thermal-lag",
            "The bar trailed the air by %s °C, ramp times time constant, which was taken off;"
                    + " %s %% of it is an error that the whole group %s has.");
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

    static void ofLag(
            Readings readings,
            Optional<Cantilever> bar,
            OptionalDouble recordedRamp,
            double lagKelvin,
            Outcome.Builder out) {
        if (!readings.has(OvenForm.OVEN_LOAD)) {
            out.found(LOAD_UNKNOWN.with());
        }
        if (Lag.isUncorrected(readings, recordedRamp)) {
            out.found(UNCORRECTED.with(reckoned(readings, bar, recordedRamp)));
        } else if (lagKelvin > LARGE) {
            out.found(LARGE_LAG.with(Figures.two(lagKelvin)));
        }
        if (lagKelvin > 0) {
            out.found(LAG.with(
                    Figures.two(lagKelvin),
                    Figures.two(readings.setting(OvenForm.LAG_UNCERTAINTY)),
                    readings.group()));
        }
    }

    /** Returns by how much a bar of this size trails, from a fan to still air, in words. */
    private static String reckoned(
            Readings readings, Optional<Cantilever> bar, OptionalDouble recordedRamp) {
        double ramp = readings.has(OvenForm.RAMP)
                ? readings.number(OvenForm.RAMP)
                : recordedRamp.orElse(0);
        if (bar.isEmpty() || !(ramp > 0)) {
            return "4 to 15 °C at 2 °C per minute for 4 mm";
        }
        double width = bar.get().widthMm();
        double thickness = bar.get().thicknessMm();
        double perSecond = ramp / 60;
        return "about %s to %s °C as reckoned from its size, from a fan to still air"
                .formatted(
                        Figures.two(
                                perSecond * Warming.timeConstant(width, thickness, Warming.FAN)),
                        Figures.two(perSecond
                                * Warming.timeConstant(width, thickness, Warming.STILL_AIR)));
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
