package org.twinbar.method.tensile;

import org.twinbar.method.Readings;
import org.twinbar.method.Yield;

/**
 * Whether what was reached is the value, or only a lower bound of it.
 *
 * @param reason why it is a bound; empty where it is the value
 */
record Bound(String reason) {

    static final Bound NONE = new Bound("");

    /** Returns the bound that the place of the break makes of a strength. */
    static Bound ofBreak(Readings readings) {
        if (!readings.has(PullForm.BROKE_AT)) {
            return NONE;
        }
        return switch (readings.word(PullForm.BROKE_AT)) {
            case PullForm.BROKE_AT_SHOULDER ->
                new Bound("it broke at the shoulder, the gauge length would have carried more");
            case PullForm.BROKE_IN_GRIP ->
                new Bound("it broke in the grip, the gauge length would have carried more");
            default -> NONE;
        };
    }

    /** Returns this bound where it is one, else the other. */
    Bound or(Bound other) {
        return reason.isEmpty() ? other : this;
    }

    Yield of(double value) {
        Yield found = Yield.of(value);
        return reason.isEmpty() || found instanceof Yield.Missing
                ? found
                : new Yield.AtLeast(value, reason);
    }
}
