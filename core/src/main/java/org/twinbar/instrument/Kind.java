package org.twinbar.instrument;

import java.util.Arrays;
import java.util.Optional;
import org.twinbar.quantity.Unit;

/**
 * A kind of instrument and what the usual one on a home bench can do.
 *
 * <p>The figures are common practice, no source: what makers of such instruments print, read
 * carefully. They are used only where nothing better is given, and results say so.
 */
public enum Kind {
    /** Load cell of a home-built frame. */
    LOAD_CELL("load cell", "N", 0.1, 0.005, 0.2),
    /** Digital caliper. */
    CALIPER("caliper", "mm", 0.01, 0, 0.01),
    /** Ruler or steel tape. */
    RULER("ruler", "mm", 1, 0, 0.3),
    /** Clip-on or optical extensometer. */
    EXTENSOMETER("extensometer", "mm", 0.001, 0.005, 0),
    /** An extensometer whose record is already a strain. */
    STRAIN_EXTENSOMETER("strain extensometer", "%", 0.002, 0.005, 0),
    /** Travel of the crosshead, counted from its screw. */
    CROSSHEAD("crosshead", "mm", 0.01, 0.002, 0),
    /** Dial gauge or camera that reads a deflection. */
    DEFLECTION_GAUGE("deflection gauge", "mm", 0.01, 0.005, 0),
    /** Kitchen or laboratory scale. */
    SCALE("scale", "g", 0.01, 0.001, 0),
    /** Thermometer or thermocouple. */
    THERMOMETER("thermometer", "°C", 0.1, 0, 1),
    /** Clock or stopwatch. */
    TIMER("timer", "s", 1, 0, 0),
    /** Angle scale of a pendulum. */
    ANGLE_SCALE("angle scale", "°", 1, 0, 0.3),
    /** Pressure gauge. */
    PRESSURE_GAUGE("pressure gauge", "kPa", 0.1, 0.005, 0.1),
    /** Gloss meter. */
    GLOSS_METER("gloss meter", "GU", 0.1, 0.01, 0.5),
    /** Durometer. */
    DUROMETER("durometer", "HD", 0.5, 0, 1),
    /** Profilometer. */
    PROFILOMETER("profilometer", "µm", 0.01, 0.02, 0),
    /** Torque wrench or torque sensor. */
    TORQUE_SENSOR("torque sensor", "N·m", 0.01, 0.02, 0.01),
    /** Not read on an instrument: a nominal value, a count, a judgement. */
    NONE("no instrument", "", 0, 0, 0);

    private final String word;
    private final String unit;
    private final double resolution;
    private final double gain;
    private final double zero;

    Kind(String word, String unit, double resolution, double gain, double zero) {
        this.word = word;
        this.unit = unit;
        this.resolution = resolution;
        this.gain = gain;
        this.zero = zero;
    }

    public String word() {
        return word;
    }

    /** Returns the kind that is called so, however it is written. */
    public static Optional<Kind> called(String word) {
        String wanted = word.strip().replace('_', ' ');
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(wanted))
                .findFirst();
    }

    /** Returns the unit in which its figures stand; empty where it is no instrument. */
    public String unit() {
        return unit;
    }

    /** Returns the usual instrument of this kind, its lengths and the like in another unit. */
    public Instrument usual(Unit unitOfReading) {
        if (this == NONE) {
            return Instrument.none(unitOfReading);
        }
        Unit.Conversion conversion = Unit.of(unit).differenceTo(unitOfReading);
        return Instrument.of(
                word,
                unitOfReading,
                conversion.apply(resolution),
                gain,
                conversion.apply(zero),
                Instrument.Origin.ASSUMED);
    }
}
