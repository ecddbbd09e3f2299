package org.twinbar.method.section;

import java.util.List;
import java.util.function.DoubleFunction;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Basis;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;
import org.twinbar.method.Yield;

/**
 * The largest force that a specimen took, on each basis, so that part and material are two
 * questions: per part, per section as tested and before treatment, and per gram.
 *
 * @param strength on the section as tested
 * @param strengthBefore on the section before treatment
 */
public record LargestForce(
        Property strength, Property strengthBefore, Property force, Property perMass) {

    public static final Input MASS = Input.of("mass", "Mass of the specimen", "g", Kind.SCALE);
    public static final Input READ = Input.of("peak_force", "Largest force", "N", Kind.LOAD_CELL);

    /**
     * Returns the properties of one strength.
     *
     * @param name of the strength and of all that is the same on another basis
     */
    public static LargestForce of(String name, String label) {
        return new LargestForce(
                Property.of(name, label, "MPa", Scale.RATIO).per(Basis.SECTION, name),
                Property.of(
                                name + "_before",
                                label + " on the section before treatment",
                                "MPa",
                                Scale.RATIO)
                        .per(Basis.SECTION_BEFORE, name),
                Property.of("peak_force", "Largest force", "N", Scale.RATIO).per(Basis.PART, name),
                Property.of("force_per_mass", "Largest force per gram", "N/g", Scale.RATIO)
                        .per(Basis.MASS, name));
    }

    /** Returns all four, the one on the section as tested first. */
    public List<Property> properties() {
        return List.of(strength, strengthBefore, force, perMass);
    }

    /**
     * Gives the force itself, and per gram where the specimen was weighed.
     *
     * @param asFound makes a value or a bound of a number
     */
    public void give(
            Readings readings, Outcome.Builder out, double forceN, DoubleFunction<Yield> asFound) {
        out.put(force, asFound.apply(forceN));
        out.put(
                perMass,
                readings.has(MASS)
                        ? asFound.apply(forceN / readings.number(MASS))
                        : new Yield.Missing("the specimen was not weighed"));
    }
}
