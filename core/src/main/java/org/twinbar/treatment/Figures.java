package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;

/**
 * The targets that a scale shows, in whole steps, for batches that get smaller.
 *
 * <p>Whole numbers of steps are carried along rather than rounded anew, so that a batch on the edge
 * between two figures belongs to one of them on every machine.
 */
final class Figures {

    private final List<Double> shares;
    private final double step;

    Figures(List<Double> shares, double step) {
        this.shares = shares;
        this.step = step;
    }

    double smallest(double limit) {
        double batch = Ratios.enough(shares, step, limit);
        long[] steps = new long[shares.size()];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = (long) Math.floor(shares.get(i) * batch / step + 0.5);
        }
        // Ends: the component that gets down to one step first breaks any limit below 100 %.
        while (keeps(steps, limit)) {
            int next = nextToFall(steps);
            batch = edge(steps, next);
            steps[next]--;
        }
        return batch;
    }

    private boolean keeps(long[] steps, double limit) {
        List<Double> masses = new ArrayList<>();
        for (long it : steps) {
            if (it < 1) {
                return false;
            }
            masses.add((double) it);
        }
        return Ratios.worst(masses, shares, 0.5) <= limit;
    }

    /** The batch below which a component shows one step less. */
    private double edge(long[] steps, int component) {
        return (steps[component] - 0.5) * step / shares.get(component);
    }

    private int nextToFall(long[] steps) {
        int next = 0;
        for (int i = 1; i < steps.length; i++) {
            if (edge(steps, i) > edge(steps, next)) {
                next = i;
            }
        }
        return next;
    }
}
