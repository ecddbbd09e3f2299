package org.twinbar.method;

import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Unit;

/**
 * A number that is read on each specimen, or is the same for all.
 *
 * @param name words joined by underscores, without the unit
 * @param label what people read
 * @param unit unit of the number inside the method
 * @param instrument what it is read on
 * @param limits what it must lie in to be calculated with
 * @param plausible what it usually lies in; beyond it a person is asked once
 */
public record Input(
        String name, String label, Unit unit, Kind instrument, Limits limits, Limits plausible)
        implements Named {

    /** Returns an input above zero, of which nothing is implausible. */
    public static Input of(String name, String label, String unit, Kind instrument) {
        return new Input(name, label, Unit.of(unit), instrument, Limits.ABOVE_ZERO, Limits.ANY);
    }

    public Input within(Limits newLimits) {
        return new Input(name, label, unit, instrument, newLimits, plausible);
    }

    public Input plausibly(double lowest, double highest) {
        return new Input(name, label, unit, instrument, limits, Limits.between(lowest, highest));
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
