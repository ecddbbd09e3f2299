package org.twinbar.study.table;

import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/** A number as a person types it into a field. */
public final class TypedNumber {

    private TypedNumber() {}

    /**
     * Reads {@code 9.98}, {@code 9,98}, {@code 0.393 in}; without a unit it has the field's.
     *
     * <p>Nobody groups thousands on a keypad, so that one comma is a decimal mark, where a file
     * with {@code 1,234} would be asked about.
     *
     * @throws QuantityException where it is no number, or measures something else
     */
    public static double parse(String text, Unit unit) {
        boolean oneComma = text.indexOf(',') >= 0
                && text.indexOf(',') == text.lastIndexOf(',')
                && text.indexOf('.') < 0;
        return Quantity.parse(oneComma ? text.replace(',', '.') : text, unit);
    }
}
