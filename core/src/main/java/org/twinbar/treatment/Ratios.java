package org.twinbar.treatment;

import java.util.List;

/**
 * How far the ratios of weighed components may be off.
 *
 * <p>A ratio is that of an earlier component to a later one, A to B: the other way round the same
 * masses give a slightly different error, and one of the two must be printed.
 */
final class Ratios {

    private Ratios() {}

    /** The largest |(m_i ± h)/(m_j ∓ h)/(w_i/w_j) − 1| of any i before j; every m is above h. */
    static double worst(List<Double> masses, List<Double> shares, double half) {
        double worst = 0;
        for (int i = 0; i < masses.size(); i++) {
            for (int j = i + 1; j < masses.size(); j++) {
                double meant = shares.get(i) / shares.get(j);
                double most = (masses.get(i) + half) / (masses.get(j) - half);
                double least = (masses.get(i) - half) / (masses.get(j) + half);
                worst = Math.max(worst, most / meant - 1);
                worst = Math.max(worst, 1 - least / meant);
            }
        }
        return worst;
    }

    /** The batch from which on masses that are each off by {@code off} keep within the limit. */
    static double enough(List<Double> shares, double off, double limit) {
        double batch = 0;
        for (int i = 0; i < shares.size(); i++) {
            for (int j = i + 1; j < shares.size(); j++) {
                double needed = off * (1 / shares.get(i) + (1 + limit) / shares.get(j)) / limit;
                batch = Math.max(batch, needed);
            }
        }
        return batch;
    }
}
