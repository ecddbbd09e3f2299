package org.twinbar.treatment;

import java.util.OptionalDouble;

/**
 * One component of a mix.
 *
 * @param name such as A, for resin, or B, for hardener
 * @param parts how many parts of it, by volume or by mass
 * @param density (g/cm³), where it is known
 */
public record Component(String name, double parts, OptionalDouble density) {

    /** @throws TreatmentException unless parts > 0 and the density, if any, is one of a liquid */
    public Component {
        Amounts.requirePositive(parts, "part of " + name, "");
        density.ifPresent(it -> Amounts.requireDensity(it, "density of " + name));
    }
}
