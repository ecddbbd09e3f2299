package org.twinbar.quantity;

/**
 * What a unit measures, as powers of length, mass, time, temperature and plane angle.
 *
 * <p>Plane angle is kept apart although the SI counts it as a number, so that a column of
 * millimetres can't stand where degrees are asked for.
 */
public record Dimension(int length, int mass, int time, int temperature, int angle) {

    /** Of plain numbers, shares and percentages. */
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

    static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0);
    static final Dimension MASS = new Dimension(0, 1, 0, 0, 0);
    static final Dimension TIME = new Dimension(0, 0, 1, 0, 0);
    static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0);
    static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 1);
    static final Dimension FORCE = new Dimension(1, 1, -2, 0, 0);
    static final Dimension PRESSURE = new Dimension(-1, 1, -2, 0, 0);
    static final Dimension ENERGY = new Dimension(2, 1, -2, 0, 0);

    public Dimension times(Dimension other) {
        return new Dimension(
                length + other.length,
                mass + other.mass,
                time + other.time,
                temperature + other.temperature,
                angle + other.angle);
    }

    public Dimension power(int exponent) {
        return new Dimension(
                length * exponent,
                mass * exponent,
                time * exponent,
                temperature * exponent,
                angle * exponent);
    }

    public Dimension per(Dimension other) {
        return times(other.power(-1));
    }

    /** Returns the name that people know, such as "length", or the powers where there is none. */
    public String describe() {
        return Names.of(this);
    }

    private static final class Names {
        static String of(Dimension dimension) {
            if (dimension.equals(NONE)) return "a plain number";
            if (dimension.equals(LENGTH)) return "a length";
            if (dimension.equals(LENGTH.power(2))) return "an area";
            if (dimension.equals(LENGTH.power(3))) return "a volume";
            if (dimension.equals(MASS)) return "a mass";
            if (dimension.equals(TIME)) return "a time";
            if (dimension.equals(TEMPERATURE)) return "a temperature";
            if (dimension.equals(ANGLE)) return "an angle";
            if (dimension.equals(FORCE)) return "a force";
            if (dimension.equals(PRESSURE)) return "a stress or pressure";
            if (dimension.equals(ENERGY)) return "an energy or moment";
            if (dimension.equals(MASS.per(LENGTH.power(3)))) return "a density";
            if (dimension.equals(ENERGY.per(LENGTH.power(2)))) return "an energy per area";
            if (dimension.equals(MASS.per(TIME))) return "a mass per time";
            return "of dimension "
                    + "length^%s mass^%s time^%s temperature^%s angle^%s"
                            .formatted(
                                    dimension.length,
                                    dimension.mass,
                                    dimension.time,
                                    dimension.temperature,
                                    dimension.angle);
        }
    }
}
