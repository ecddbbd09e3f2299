package org.twinbar.method.impact;

import java.util.List;
import java.util.Optional;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

/** A pendulum breaks the specimen, in the manner of ISO 179-1, ISO 180 and ASTM D256. */
public final class Impact implements TestMethod {

    private static final String NOT_BROKEN =
            "it did not break (N): this much it took without breaking";

    @Override
    public Description description() {
        return ImpactForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return ImpactClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(ImpactForm.DESCRIPTION);
        Optional<String> missing = Swing.missing(readings);
        if (missing.isPresent()) {
            return out.restMissing(missing.get()).build();
        }
        Swing swing = Swing.of(readings);
        // A world in which an error lifts the rise above the release is still a world; only what
        // was
        // read can be impossible.
        Optional<String> impossible = readings.atRest() ? swing.impossible() : Optional.empty();
        if (impossible.isPresent()) {
            return out.restMissing(impossible.get()).build();
        }
        double energy = swing.absorbed();
        if (readings.atRest()) {
            ImpactFindings.of(readings, swing, energy, out);
        }
        give(readings, out, energy);
        return out.build();
    }

    /**
     * Gives the energy on each basis.
     *
     * <pre>a = W/(h·b_N)·10³ kJ/m²,  W/h·10³ J/m</pre>
     *
     * <p>W in J, h and b_N in mm. Source: ISO 179-1:2010, 8.1 and 8.2; ASTM D256.
     */
    private static void give(Readings readings, Outcome.Builder out, double energy) {
        out.put(ImpactForm.ENERGY, asFound(readings, energy));
        perArea(readings, out, ImpactForm.STRENGTH, ImpactForm.THICKNESS, ImpactForm.WIDTH, energy);
        perArea(
                readings,
                out,
                ImpactForm.STRENGTH_BEFORE,
                ImpactForm.THICKNESS_BEFORE,
                ImpactForm.WIDTH_BEFORE,
                energy);
        if (readings.has(ImpactForm.THICKNESS)) {
            double perMetre = energy / readings.number(ImpactForm.THICKNESS) * 1000;
            out.put(ImpactForm.RESISTANCE, asFound(readings, perMetre));
        } else {
            out.missing(ImpactForm.RESISTANCE, "the thickness was not measured");
        }
        if (readings.has(ImpactForm.SPECIMEN_MASS)) {
            double perGram = energy / readings.number(ImpactForm.SPECIMEN_MASS);
            out.put(ImpactForm.ENERGY_PER_MASS, asFound(readings, perGram));
        } else {
            out.missing(ImpactForm.ENERGY_PER_MASS, "the specimen was not weighed");
        }
    }

    private static void perArea(
            Readings readings,
            Outcome.Builder out,
            Property property,
            Input thickness,
            Input width,
            double energy) {
        if (readings.has(thickness) && readings.has(width)) {
            double area = readings.number(thickness) * readings.number(width);
            out.put(property, asFound(readings, energy / area * 1000));
        } else {
            out.missing(property, "thickness and width were not measured");
        }
    }

    /** A specimen that did not break has no impact strength, only what it took: a lower bound. */
    private static Yield asFound(Readings readings, double value) {
        boolean notBroken = readings.has(ImpactForm.BREAK_TYPE)
                && readings.word(ImpactForm.BREAK_TYPE).equals(ImpactForm.NOT_BROKEN);
        Yield found = Yield.of(value);
        return notBroken && found instanceof Yield.Value
                ? new Yield.AtLeast(value, NOT_BROKEN)
                : found;
    }
}
