package org.twinbar.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number with its unit, as typed or read. */
public record Quantity(double value, Unit unit) {

    private static final Pattern NUMBER_THEN_UNIT =
            Pattern.compile("([+\\-−]?[0-9.,'’\\u00a0\\u202f\\u2009]*[0-9.,](?:[eE][+-]?\\d+)?)"
                    + "[\\s\\u00a0\\u202f\\u2009]*(.*)");

    public Quantity {
        if (!Double.isFinite(value)) {
            throw new QuantityException("a quantity must be a finite number, not " + value);
        }
    }

    /**
     * Reads {@code 20g}, {@code 0.1 g}, {@code 0,5 mm}, {@code 5%}; without a unit a plain number.
     *
     * @throws QuantityException where number or unit can't be read
     */
    public static Quantity parse(String text) {
        Matcher parts = NUMBER_THEN_UNIT.matcher(text.strip());
        if (!parts.matches()) {
            throw new QuantityException("'" + text + "' is not a number with a unit");
        }
        String unit = parts.group(2).strip();
        return new Quantity(
                Numbers.parse(parts.group(1)), unit.isEmpty() ? Unit.ONE : Unit.of(unit));
    }

    /**
     * Reads a quantity of one dimension and gives its value in a unit; a bare number has that unit.
     *
     * @throws QuantityException where the text can't be read or measures something else
     */
    public static double parse(String text, Unit unit) {
        Quantity quantity = parse(text);
        boolean bare = quantity.unit.equals(Unit.ONE);
        return bare ? quantity.value : quantity.in(unit);
    }

    /**
     * Reads a share or change: {@code 5%} or {@code 0.05}.
     *
     * @throws QuantityException where the unit is not %, or where a bare number is 1 or more, which
     *     may be per cent or factor
     */
    public static double parseShare(String text) {
        Quantity quantity = parse(text);
        if (!quantity.unit.equals(Unit.ONE) && !quantity.unit.equals(Unit.PERCENT)) {
            throw new QuantityException(
                    "'%s' is in %s, not a share: write per cent or a number below 1"
                            .formatted(text.strip(), quantity.unit.symbol()));
        }
        if (quantity.unit.equals(Unit.ONE) && Math.abs(quantity.value) >= 1) {
            throw new QuantityException(
                    "'%s' may be per cent or a factor: write %s%% or a number below 1"
                            .formatted(text.strip(), text.strip()));
        }
        return quantity.in(Unit.ONE);
    }

    /** Returns the value in another unit of the same dimension. */
    public double in(Unit other) {
        return unit.to(other).apply(value);
    }

    /** Returns the value, taken as a difference, in another unit: 5 °F of change are 2.78 K. */
    public double differenceIn(Unit other) {
        return unit.differenceTo(other).apply(value);
    }
}
