package org.twinbar.method.peak;

import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Answering;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Words;

/** The force that pulls an insert out of a print. */
public final class InsertPullout implements TestMethod {

    static final Input FORCE =
            Input.of("peak_force", "Largest force", "N", Kind.LOAD_CELL).plausibly(5, 20_000);
    static final Channel TRACE = Channel.of("force", "Force", "N", Kind.LOAD_CELL);
    static final Mark PEAK_MARK = new Mark("peak", "Largest force");
    static final Peak PEAK = new Peak(FORCE, TRACE, PEAK_MARK);
    static final Input DEPTH = Input.of(
                    "depth", "Depth of the insert in the print", "mm", Kind.CALIPER)
            .plausibly(2, 40);
    static final Input DIAMETER = Input.of(
                    "diameter", "Outer diameter of the insert", "mm", Kind.CALIPER)
            .plausibly(2, 30);

    static final String CAME_OUT = "insert came out";
    static final Words GAVE = new Words(
                    "gave",
                    "What gave way",
                    List.of(CAME_OUT, "boss broke", "screw broke", "nothing gave way"))
            .apart();

    static final Property PULLOUT = Property.of(
                    "pullout_force", "Force that pulled the insert out", "N", Scale.RATIO)
            .per(Basis.PART, "pullout");
    static final Property PER_DEPTH =
            Property.of("force_per_depth", "Force per depth of insert", "N/mm", Scale.RATIO);
    static final Property STRESS = Property.of(
            "wall_stress", "Mean shear stress on the insert's wall", "MPa", Scale.RATIO);

    private static final Description DESCRIPTION = new Description(
            "insert-pullout",
            2,
            "Pulling an insert out",
            "Common practice, no standard: the print is held by a ring wider than twice the"
                    + " insert, and a screw in it is pulled straight out.",
            List.of(
                    Ask.required("Which force did it take?", List.of(FORCE), List.of(TRACE)),
                    Ask.optional(
                            "How large is the insert?", List.of(DEPTH, DIAMETER), List.of(DEPTH)),
                    Ask.optional("What gave way?", List.of(GAVE))),
            List.of(),
            List.of(PEAK_MARK),
            List.of(PULLOUT, PER_DEPTH, STRESS),
            List.of(
                    new Caution("Insert and screw fly off when they let go: stand aside, wear"
                            + " glasses, and put a cloth over the pull."),
                    new Caution("Nothing that holds a person may hang on such an insert: a short"
                            + " pull does not tell what it bears for long.")));

    @Override
    public Description description() {
        return DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return InsertPulloutClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DESCRIPTION);
        OptionalDouble force = PEAK.of(readings, out);
        if (force.isEmpty()) {
            return out.build();
        }
        double value = force.getAsDouble();
        out.put(PULLOUT, PEAK.asGiven(readings, GAVE, CAME_OUT, value));
        if (readings.has(DEPTH)) {
            double perDepth = value / readings.number(DEPTH);
            out.put(PER_DEPTH, PEAK.asGiven(readings, GAVE, CAME_OUT, perDepth));
        } else {
            out.missing(PER_DEPTH, "the depth of the insert was not measured");
        }
        if (readings.has(DEPTH) && readings.has(DIAMETER)) {
            out.put(STRESS, PEAK.asGiven(readings, GAVE, CAME_OUT, stress(readings, value)));
        } else {
            out.missing(STRESS, "depth and diameter of the insert were not measured");
        }
        if (readings.atRest()) {
            PEAK.find(readings, value, out);
        }
        return out.build();
    }

    /** Returns τ = F/(π·d·L) (MPa), F in N, diameter d and depth L in mm: as if spread evenly. */
    private static double stress(Readings readings, double force) {
        return force / (Math.PI * readings.number(DIAMETER) * readings.number(DEPTH));
    }
}
