package org.twinbar.report;

import java.util.List;

/**
 * Shares of a whole, such as of the variance of a result, the largest first.
 *
 * @param of what they are shares of
 */
public record Parts(String of, List<Part> parts) {

    public Parts {
        parts = List.copyOf(parts);
    }

    /** One share, from 0 to 1. */
    public record Part(String name, double share) {}
}
