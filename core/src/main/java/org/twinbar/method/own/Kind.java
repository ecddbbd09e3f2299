package org.twinbar.method.own;

import org.twinbar.quantity.Dimension;
import org.twinbar.quantity.Unit;

/**
 * What a term measures.
 *
 * @param sort whether it is a place on a scale without a true zero
 */
record Kind(Dimension dimension, Sort sort) {

    /** Of two temperatures only the difference may be added to another. */
    enum Sort {
        AMOUNT,
        /** A temperature in °C or °F. */
        PLACE
    }

    static final Kind NUMBER = amount(Dimension.NONE);

    static Kind amount(Dimension dimension) {
        return new Kind(dimension, Sort.AMOUNT);
    }

    static Kind of(Unit unit) {
        return new Kind(unit.dimension(), unit.hasTrueZero() ? Sort.AMOUNT : Sort.PLACE);
    }

    boolean isPlace() {
        return sort == Sort.PLACE;
    }

    String describe() {
        return dimension.describe();
    }
}
