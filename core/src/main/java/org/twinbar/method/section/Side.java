package org.twinbar.method.section;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/** One measured side, less what the caliper read too much on ridges. */
public final class Side {

    public static final Input RIDGES = Input.of(
                    "ridges",
                    "Height of ridges under the caliper, both sides together",
                    "mm",
                    Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 0.5);
    public static final Input RIDGES_BEFORE = Input.of(
                    "ridges_before", "The same before treatment", "mm", Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 0.5);

    static final Finding.Kind ON_RIDGES = Finding.Kind.note(
            "caliper-on-ridges",
            "The caliper rode on ridges of %s mm: half of that was taken off each side's"
                    + " reading, and all of it widens the interval; a smooth coat has none.");

    /**
     * How much of the ridges the caliper read too much: anything from none to all, alike wherever
     * it rode on ridges of one kind. It moves the ridged group alone, by how ridged it is.
     */
    private static final Source SHARE =
            Source.shared("caliper on ridges", Shape.RECTANGULAR, 1 / Math.sqrt(12));

    private Side() {}

    /**
     * Returns a side in the readings' world: reading − r·(½ + error).
     *
     * @param side that was measured
     * @param ridges r, the ridges that it was measured on; none where they were not given
     */
    public static double of(Readings readings, Input side, Input ridges) {
        double reading = readings.number(side);
        return readings.has(ridges)
                ? reading - readings.number(ridges) * (0.5 + readings.error(SHARE))
                : reading;
    }

    /** Says that the caliper rode on ridges, where it did. */
    public static void findings(Readings readings, Outcome.Builder out) {
        if (readings.atRest() && readings.has(RIDGES) && readings.number(RIDGES) > 0) {
            out.found(ON_RIDGES.with(Figures.two(readings.number(RIDGES))));
        }
    }
}
