package org.twinbar.method.heatdeflection;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;

/** What a person should know about a bar that was heated on two supports. */
final class HeatFindings {

    static final Finding.Kind START_WARM = Finding.Kind.note(
            "start-warm",
            "Heating began at %s °C; ISO 75 begins at 27 °C or below, since a bar that is put in"
                    + " hot has sagged before the gauge was set to zero.");
    static final Finding.Kind RATE = Finding.Kind.warning(
            "heating-rate",
            "The temperature rose by %s °C per minute; ISO 75 wants 2.0, give or take 0.2. The"
                    + " faster, the higher the result: compare only bars of one rate.");
    static final Finding.Kind RATE_UNKNOWN = Finding.Kind.note(
            "heating-rate-unknown",
            "No clock was recorded, so the rate of heating is not known; ISO 75 wants 2 °C per"
                    + " minute.");
    static final Finding.Kind AIR = Finding.Kind.warning(
            "air-temperature",
            "It was heated in air, behind which a bar of 4 mm trails by 4 to 15 °C at 2 °C per"
                    + " minute: the temperature is too high by that, and a coated bar's by more.");
    static final Finding.Kind STRESS = Finding.Kind.note(
            "stress-not-standard",
            "The stress is %s MPa; ISO 75 has 0.45, 1.80 and 8.00 MPa, so compare with bars at"
                    + " this stress alone.");
    static final Finding.Kind BAR = Finding.Kind.note(
            "bar-not-standard",
            "The bar is %s mm thick on a span of %s mm; ISO 75-2 has 3.8 to 4.2 mm on 64 mm.");
    static final Finding.Kind OLD_TABLE = Finding.Kind.note(
            "old-table",
            "A bar this high stands on edge. The tables for that (ISO 75-2:1993) lie up to"
                    + " 0.015 mm below the deflection taken here, %s mm, and edgewise testing has"
                    + " left ISO 75: do not mix the two.");
    static final Finding.Kind GAUGE_UNKNOWN = Finding.Kind.note(
            "gauge-force-not-stated",
            "The force of the gauge's spring was not stated and was taken as none; 0.05 N is worth"
                    + " 5 g.");
    static final Finding.Kind QUARTER = Finding.Kind.note(
            "read-at-quarter-mm",
            "Read at 0.25 mm as ASTM D648 does, here %s %% strain; ISO 75 reads at 0.2 %%.");

    /** ISO 75, from memory (°C). */
    private static final double WARMEST_START = 27;

    /** ISO 75: 120 °C/h, give or take 10 (from memory), in °C/min. */
    private static final double SLOWEST = 110.0 / 60;

    private static final double FASTEST = 130.0 / 60;

    private static final double[] STRESSES = {0.45, 1.80, 8.00};
    private static final double SAME_STRESS = 0.02;
    private static final double THINNEST = 3.8;
    private static final double THICKEST = 4.2;
    private static final double SPAN = 64;

    /** The supports stand within this of the standard's (mm); our own. */
    private static final double SAME_SPAN = 1;

    /** The old table for bars on edge begins here (mm). */
    private static final double ON_EDGE = 9.8;

    private HeatFindings() {}

    static void ofBar(Readings readings, LoadedBar bar, double stressMPa, Outcome.Builder out) {
        Side.findings(readings, out);
        boolean quarter = readings.choice(HeatForm.READ_AT).equals(HeatForm.QUARTER_MM);
        if (quarter) {
            out.found(QUARTER.with(Figures.two(bar.strainPercent(HeatDeflection.QUARTER))));
        } else {
            lookAtShape(bar, out);
        }
        if (Arrays.stream(STRESSES).noneMatch(s -> Math.abs(stressMPa / s - 1) <= SAME_STRESS)) {
            out.found(STRESS.with(Figures.three(stressMPa)));
        }
        if (readings.has(HeatForm.ROD_MASS) && !readings.has(HeatForm.SPRING_FORCE)) {
            out.found(GAUGE_UNKNOWN.with());
        }
    }

    private static void lookAtShape(LoadedBar bar, Outcome.Builder out) {
        if (bar.thicknessMm() >= ON_EDGE) {
            double sag = bar.deflection(HeatDeflection.STRAIN_GROWN);
            out.found(OLD_TABLE.with(Figures.three(sag)));
        } else if (bar.thicknessMm() < THINNEST
                || bar.thicknessMm() > THICKEST
                || Math.abs(bar.spanMm() - SPAN) > SAME_SPAN) {
            out.found(BAR.with(Figures.three(bar.thicknessMm()), Figures.three(bar.spanMm())));
        }
    }

    static void ofHeating(Readings readings, Heated heated, int to, Outcome.Builder out) {
        double first = heated.temperature(heated.start());
        if (first > WARMEST_START) {
            out.found(START_WARM.with(Figures.three(first)));
        }
        OptionalDouble rate = heated.rate(to);
        if (rate.isEmpty()) {
            out.found(RATE_UNKNOWN.with());
        } else if (rate.getAsDouble() < SLOWEST || rate.getAsDouble() > FASTEST) {
            out.found(RATE.with(Figures.two(rate.getAsDouble())));
        }
        if (readings.has(HeatForm.MEDIUM)
                && readings.word(HeatForm.MEDIUM).equals(HeatForm.IN_AIR)) {
            out.found(AIR.with());
        }
    }
}
