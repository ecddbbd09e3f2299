package org.twinbar.method;

import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Unit;

/** A column of the curve that is recorded on each specimen. */
public record Channel(String name, String label, Unit unit, Kind instrument) implements Named {

    public static Channel of(String name, String label, String unit, Kind instrument) {
        return new Channel(name, label, Unit.of(unit), instrument);
    }

    /** By name alone, as readings are found by it thousands of times. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String column() {
        return unit.code().isEmpty() ? name : name + "_" + unit.code();
    }
}
