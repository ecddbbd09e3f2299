package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.quantity.Unit;

/**
 * An interval that stands beside the default one; no verdict reads it.
 *
 * @param interval its short name, such as {@code log}
 * @param estimate the effect as this way sees it
 * @param low lower end
 * @param high upper end
 * @param method how it was calculated, in the words of a report
 * @param unit of the numbers, where they are no effect of the kind that is compared
 */
public record Beside(
        String interval,
        Amount estimate,
        Amount low,
        Amount high,
        String method,
        Optional<Unit> unit) {

    Beside(String interval, Amount estimate, Amount low, Amount high, String method) {
        this(interval, estimate, low, high, method, Optional.empty());
    }
}
