package org.twinbar.method;

import org.twinbar.quantity.Unit;

/**
 * A number of the calculation that a person may set, such as an end of the modulus window.
 *
 * @param preset what it is unless somebody sets it
 */
public record Setting(String name, String label, Unit unit, double preset, Limits limits)
        implements Named {

    public Setting {
        if (!limits.allow(preset)) {
            throw new IllegalArgumentException("preset %s of %s is not within %s"
                    .formatted(preset, name, limits.describe(unit)));
        }
    }

    @Override
    public String column() {
        return unit.code().isEmpty() ? name : name + "_" + unit.code();
    }
}
