package org.twinbar.method.dimensions;

import java.util.List;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Input;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Readings;

/** One measure of a part, before and after. */
record Axis(String word, Input before, Input after, Property change) {

    static final Axis LENGTH = of("length", "Length", "mm", Kind.CALIPER);
    static final Axis WIDTH = of("width", "Width", "mm", Kind.CALIPER);
    static final Axis THICKNESS = of("thickness", "Thickness", "mm", Kind.CALIPER);
    static final Axis MASS = of("mass", "Mass", "g", Kind.SCALE);

    static final List<Axis> SIDES = List.of(LENGTH, WIDTH, THICKNESS);
    static final List<Axis> ALL = List.of(LENGTH, WIDTH, THICKNESS, MASS);

    private static Axis of(String word, String label, String unit, Kind kind) {
        return new Axis(
                word,
                Input.of(word + "_before", label + " before treatment", unit, kind),
                Input.of(word + "_after", label + " after treatment", unit, kind),
                Property.of(word + "_change", label + " gained", "%", Scale.INTERVAL));
    }

    boolean isMeasured(Readings readings) {
        return readings.has(before) && readings.has(after);
    }

    /** Returns after less before, in the unit of the readings. */
    double gained(Readings readings) {
        return readings.number(after) - readings.number(before);
    }

    /** Returns the gain as a share of what was before (%). */
    double percent(Readings readings) {
        return 100 * gained(readings) / readings.number(before);
    }

    /** Returns the standard uncertainty of the gain from the two readings alone. */
    double uncertainty(Readings readings) {
        double first = readings.readingUncertainty(before);
        double second = readings.readingUncertainty(after);
        return Math.sqrt(first * first + second * second);
    }
}
