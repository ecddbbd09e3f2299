package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.specimen.Bed;

/** Quantities as they are typed behind an option; what can't be read is said with the option. */
final class Typed {

    static final Unit GRAMS = Unit.of("g");
    static final Unit DENSITY = Unit.of("g/cm³");
    static final Unit MILLIMETRES = Unit.of("mm");
    static final Unit SQUARE_MILLIMETRES = Unit.of("mm²");
    static final Unit MINUTES = Unit.of("min");
    static final Unit CELSIUS = Unit.of("°C");
    static final Unit SPREADING = Unit.of("g/min");

    private Typed() {}

    static double in(Unit unit, String option, String text) {
        return read(option, text, it -> Quantity.parse(it, unit));
    }

    static double share(String option, String text) {
        return read(option, text, Quantity::parseShare);
    }

    /** Returns the share that is typed, or the one meant where nothing is. */
    static double share(String option, @Nullable String text, double unlessSaid) {
        return text == null ? unlessSaid : share(option, text);
    }

    /**
     * Reads values parted by commas, or by semicolons where the commas are decimal ones:
     * {@code 1.15,0.98} or {@code 1,15;0,98}.
     */
    static List<Double> list(Unit unit, String option, String text) {
        List<Double> values = new ArrayList<>();
        for (String part : text.split(text.indexOf(';') >= 0 ? ";" : ",", -1)) {
            values.add(in(unit, option, part));
        }
        return values;
    }

    /** Two lengths that are typed together (mm). */
    record Sides(double first, double second) {}

    /** Reads two lengths, such as {@code 220x220mm}; a unit at the end is that of both. */
    static Sides sides(String option, String text) {
        String unit = text.replaceAll(".*[0-9.,]\\s*", "");
        List<Double> sides = new ArrayList<>();
        for (String side : text.split("[x×]", -1)) {
            boolean bare = side.strip().matches(".*[0-9]");
            sides.add(in(MILLIMETRES, option, bare ? side + unit : side));
        }
        if (sides.size() != 2) {
            throw new UsageException(
                    "%s: '%s' is no pair of lengths, such as 220x220mm".formatted(option, text));
        }
        return new Sides(sides.get(0), sides.get(1));
    }

    /** Reads the size of a bed, and the gap where one is said. */
    static Bed bed(String size, @Nullable String gap) {
        Sides sides = sides("--bed", size);
        return new Bed(
                sides.first(),
                sides.second(),
                gap == null ? Bed.USUAL_GAP : in(MILLIMETRES, "--gap", gap));
    }

    private static double read(String option, String text, ToDoubleFunction<String> reading) {
        try {
            return reading.applyAsDouble(text);
        } catch (QuantityException e) {
            throw new UsageException("%s: %s".formatted(option, e.getMessage()));
        }
    }
}
