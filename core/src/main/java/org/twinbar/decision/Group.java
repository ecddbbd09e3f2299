package org.twinbar.decision;

import java.util.Optional;
import org.twinbar.statistics.LeftOver;

/**
 * One group of a comparison, as it was counted.
 *
 * @param n specimens that count; units, where several specimens share one treatment
 * @param mean mean of their values
 * @param sd standard deviation of one of them
 * @param median the middle value
 * @param low lower end of the mean's own interval
 * @param high upper end of the mean's own interval
 * @param tally for yes or no, and for events, how many
 * @param leftOver for events, the share that it has not happened to yet, over time
 */
public record Group(
        String name,
        int n,
        Amount mean,
        Amount sd,
        Amount median,
        Amount low,
        Amount high,
        Optional<Tally> tally,
        Optional<LeftOver> leftOver) {

    Group with(Tally counted) {
        return new Group(name, n, mean, sd, median, low, high, Optional.of(counted), leftOver);
    }

    /**
     * How many of a group.
     *
     * @param what "yes", or "happened" for events
     * @param count how many specimens
     * @param n of how many
     * @param low exact lower limit of the share of all such parts
     * @param high exact upper limit of that share
     */
    public record Tally(String what, int count, int n, double low, double high) {}
}
