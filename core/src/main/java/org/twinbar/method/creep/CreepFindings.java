package org.twinbar.method.creep;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

/** What a person should know about one bar's creep. */
final class CreepFindings {

    static final Finding.Kind TEMPERATURE_UNKNOWN = Finding.Kind.note(
            "temperature-not-recorded",
            "The temperature was not recorded; near its glass transition a print creeps faster by"
                    + " some per cent for each degree.");
    static final Finding.Kind TEMPERATURE_MOVED = Finding.Kind.warning(
            "temperature-moved",
            "The temperature ranged over %s °C; ISO 899 holds it within 2 °C either way, and a"
                    + " warm afternoon looks like creep.");
    static final Finding.Kind ROWS_PASSED_OVER = Finding.Kind.warning(
            "rows-passed-over",
            "%s rows were passed over: no number, a time of 0 or less, or one before the row"
                    + " above it.");
    static final Finding.Kind QUICKENS = Finding.Kind.warning(
            "creep-quickens",
            "Towards the end the strain grew %s times as fast per hour as before, where it should"
                    + " slow: the bar is on its way to break, or a grip slips. Nothing beyond the"
                    + " readings can be forecast.");
    static final Finding.Kind FORECAST = Finding.Kind.note(
            "forecast-beyond-readings",
            "The forecast is for %s times the last reading's time; it holds as long as nothing else"
                    + " begins.");

    private static final double WIDEST = 4;
    private static final int ENOUGH = 9;

    /** A later third that is this much faster is not scatter; our own. */
    private static final double FASTER = 1.2;

    private CreepFindings() {}

    static void of(Readings readings, Stretch stretch, Outcome.Builder out) {
        int lost = stretch.recordedRows() - stretch.rows();
        if (lost > 0) {
            out.found(ROWS_PASSED_OVER.with(lost));
        }
        lookAtTemperature(readings, out);
        if (stretch.rows() >= ENOUGH) {
            lookAtPace(stretch, out);
        }
        double beyond = readings.setting(CreepForm.FORECAST) / stretch.lastHours();
        if (beyond > 1 && beyond <= Creep.DECADE) {
            out.found(FORECAST.with(Figures.two(beyond)));
        }
    }

    private static void lookAtTemperature(Readings readings, Outcome.Builder out) {
        if (!readings.has(CreepForm.TEMPERATURE)) {
            out.found(TEMPERATURE_UNKNOWN.with());
            return;
        }
        Trace temperature = readings.trace(CreepForm.TEMPERATURE);
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < temperature.size(); row++) {
            if (Double.isFinite(temperature.get(row))) {
                lowest = Math.min(lowest, temperature.get(row));
                highest = Math.max(highest, temperature.get(row));
            }
        }
        if (highest - lowest > WIDEST) {
            out.found(TEMPERATURE_MOVED.with(Figures.two(highest - lowest)));
        }
    }

    private static void lookAtPace(Stretch stretch, Outcome.Builder out) {
        double[] hours = stretch.hours();
        double[] strains = stretch.strains();
        int last = hours.length - 1;
        int third = hours.length / 3;
        double late = pace(hours, strains, last - third, last);
        double before = pace(hours, strains, last - 2 * third, last - third);
        if (before > 0 && late > FASTER * before) {
            out.found(QUICKENS.with(Figures.two(late / before)));
        }
    }

    private static double pace(double[] hours, double[] strains, int from, int to) {
        return (strains[to] - strains[from]) / (hours[to] - hours[from]);
    }
}
