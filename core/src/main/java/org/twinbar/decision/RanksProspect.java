package org.twinbar.decision;

import java.util.Arrays;
import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.BrunnerMunzel;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.MannWhitney;

/**
 * The chance of "supported" for ranks, by simulated studies drawn with replacement from the values
 * seen, each judged by the real rule.
 *
 * <p>For a chance p other than the one seen a part of the treated comes from elsewhere: from the
 * control where p is nearer to a half, and from beyond all values where it is farther; the part is
 * the one that makes the chance p.
 *
 * @param part share of treated specimens that comes from elsewhere
 * @param elsewhere what it is drawn from
 */
record RanksProspect(
        Question question, double[] treated, double[] control, double part, double[] elsewhere)
        implements Prospect {

    static final int STUDIES = 250;

    private static final double NONE = 0.5;

    /** From so many per group on the normal approximation of the rank sum is near the exact. */
    private static final int MANY = 10;

    /** Within this share of the error rate it is not trusted. */
    private static final double DOUBT = 0.2;

    /** From so many on it is trusted alone: counting all choices of so many ranks takes seconds. */
    private static final int VERY_MANY = 30;

    /** Returns nothing where a group has no value, or the chance can't be had of these values. */
    static Optional<Prospect> of(Question question, Judge.Judged judged, double chance) {
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (Math.min(ours.length, others.length) < 2) {
            return Optional.empty();
        }
        double seen =
                BrunnerMunzel.superiority(ours, others, question.confidence()).value();
        boolean nearer = Math.abs(chance - NONE) <= Math.abs(seen - NONE)
                && (chance - NONE) * (seen - NONE) >= 0;
        double[] elsewhere = nearer ? others : beyond(ours, others, chance > seen);
        double there = nearer ? NONE : chance > seen ? 1 : 0;
        double part = chance == seen ? 0 : (chance - seen) / (there - seen);
        return part >= 0 && part <= 1
                ? Optional.of(new RanksProspect(question, ours, others, part, elsewhere))
                : Optional.empty();
    }

    /** One step past every value, upwards or downwards. */
    private static double[] beyond(double[] ours, double[] others, boolean above) {
        double[] all = Arrays.copyOf(ours, ours.length + others.length);
        System.arraycopy(others, 0, all, ours.length, others.length);
        Arrays.sort(all);
        return new double[] {above ? all[all.length - 1] + 1 : all[0] - 1};
    }

    @Override
    public String method() {
        return STUDIES + " simulated studies";
    }

    @Override
    public double supported(int n) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(question.seed());
        double[] ours = new double[n];
        double[] others = new double[n];
        int supported = 0;
        for (int study = 0; study < STUDIES; study++) {
            for (int i = 0; i < n; i++) {
                double[] from = random.nextDouble() < part ? elsewhere : treated;
                ours[i] = from[random.nextInt(from.length)];
                others[i] = control[random.nextInt(control.length)];
            }
            supported += supports(question, ours, others) ? 1 : 0;
        }
        return (double) supported / STUDIES;
    }

    /**
     * Whether the real rule would support a study.
     *
     * <p>The exact guard only weakens an interval. It is slow to count for many values, and is left
     * to the normal approximation where that is far enough from the error rate.
     */
    static boolean supports(Question question, double[] ours, double[] others) {
        double level = question.confidence();
        if (!reads(question, BrunnerMunzel.superiority(ours, others, level))) {
            return false;
        }
        if (question.expectation() == Expectation.SAME) {
            // The guard widens towards no difference, which lies within the limits anyway.
            return true;
        }
        if (ours.length >= MANY) {
            double p = MannWhitney.approximate(ours, others).p() / question.errorRate();
            if (ours.length >= VERY_MANY || p < 1 - DOUBT || p > 1 + DOUBT) {
                return p < 1;
            }
        }
        return reads(question, BrunnerMunzel.guarded(ours, others, level));
    }

    private static boolean reads(Question question, Estimate estimate) {
        return VerdictRule.read(estimate.low(), estimate.high(), question) == Verdict.SUPPORTED;
    }
}
