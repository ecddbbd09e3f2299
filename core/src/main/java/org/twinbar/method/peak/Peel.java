package org.twinbar.method.peak;

import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Answering;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;
import org.twinbar.method.Setting;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Trace;
import org.twinbar.method.Words;
import org.twinbar.quantity.Unit;

/** The force that peels a film off, per width. */
public final class Peel implements TestMethod {

    static final Input MEAN_FORCE =
            Input.of("mean_force", "Mean force while it peeled", "N", Kind.LOAD_CELL);
    static final Channel TRACE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    static final Mark PEAK_MARK = new Mark("peak", "Largest force");
    static final Peak PEAK = new Peak(MEAN_FORCE, TRACE, PEAK_MARK);
    static final Input WIDTH =
            Input.of("width", "Width of the peeled strip", "mm", Kind.CALIPER).plausibly(3, 50);

    static final String PEELED = "film peeled";
    static final Words GAVE =
            new Words("gave", "What gave way", List.of(PEELED, "film tore", "print tore")).apart();

    /** ISO 11339 leaves the first 25 mm of 150 mm out (from memory); short strips need more. */
    static final Setting SKIPPED = new Setting(
            "skipped",
            "Share of the record left out at its start",
            Unit.of("%"),
            25,
            Limits.between(0, 90));

    /** The force falls where the strip comes off, and that is no plateau. */
    static final Setting SKIPPED_AT_END = new Setting(
            "skipped_at_end",
            "Share of the record left out at its end",
            Unit.of("%"),
            5,
            Limits.between(0, 50));

    static final Property STRENGTH =
            Property.of("peel_strength", "Mean force per width", "N/mm", Scale.RATIO);
    static final Property LARGEST =
            Property.of("largest_per_width", "Largest force per width", "N/mm", Scale.RATIO);

    static final Finding.Kind UNSTEADY = Finding.Kind.note(
            "peel-not-steady",
            "While it peeled the force went from %s to %s N, in jerks or with a bond that differs"
                    + " from place to place; the mean says little of the weakest place.");

    /** A plateau that spans more than this share of its mean is none; our own. */
    private static final double STEADY = 1;

    private static final Description DESCRIPTION = new Description(
            "peel",
            2,
            "Peeling a film off",
            "In the manner of ISO 11339 (from memory), but with a strip of the coat itself, often"
                    + " shorter than the standard's: state the angle, the speed and the width.",
            List.of(
                    Ask.required("Which force did it take?", List.of(MEAN_FORCE), List.of(TRACE)),
                    Ask.required("How wide was the strip?", List.of(WIDTH)),
                    Ask.optional("What gave way?", List.of(GAVE))),
            List.of(SKIPPED, SKIPPED_AT_END),
            List.of(PEAK_MARK),
            List.of(STRENGTH, LARGEST),
            List.of(new Caution("Cut the strip away from your hand: a blade jumps when it leaves"
                    + " the film.")));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return PeelClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DESCRIPTION);
        OptionalDouble peak = PEAK.of(readings, out);
        if (peak.isEmpty()) {
            return out.build();
        }
        if (!readings.has(WIDTH)) {
            return out.restMissing("the width of the strip was not measured").build();
        }
        double width = readings.number(WIDTH);
        if (!readings.has(TRACE)) {
            double mean = peak.getAsDouble() / width;
            out.put(STRENGTH, PEAK.asGiven(readings, GAVE, PEELED, mean));
            if (readings.atRest()) {
                PEAK.findInJerks(readings, peak.getAsDouble(), out);
            }
            return out.missing(LARGEST, "there is no curve to take the largest force from")
                    .build();
        }
        Trace force = readings.trace(TRACE);
        int from = (int) (force.size() * readings.setting(SKIPPED) / 100);
        int to = force.size() - (int) (force.size() * readings.setting(SKIPPED_AT_END) / 100);
        double mean = mean(force, from, to);
        out.put(STRENGTH, PEAK.asGiven(readings, GAVE, PEELED, mean / width));
        out.put(LARGEST, PEAK.asGiven(readings, GAVE, PEELED, peak.getAsDouble() / width));
        if (readings.atRest()) {
            PEAK.findInJerks(readings, peak.getAsDouble(), out);
            find(force, from, to, mean, out);
        }
        return out.build();
    }

    /** Returns the mean of the rows of a stretch that hold a number; NaN where none does. */
    private static double mean(Trace force, int from, int to) {
        double sum = 0;
        int rows = 0;
        for (int row = from; row < to; row++) {
            if (Double.isFinite(force.get(row))) {
                sum += force.get(row);
                rows++;
            }
        }
        return sum / rows;
    }

    private static void find(Trace force, int from, int to, double mean, Outcome.Builder out) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int row = from; row < to; row++) {
            if (Double.isFinite(force.get(row))) {
                lowest = Math.min(lowest, force.get(row));
                highest = Math.max(highest, force.get(row));
            }
        }
        if (highest - lowest > STEADY * mean && mean > 0) {
            out.found(UNSTEADY.with(Figures.three(lowest), Figures.three(highest)));
        }
    }
}
