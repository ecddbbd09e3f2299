package org.twinbar.decision;

import org.twinbar.statistics.Count;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.ShareDifference;

/**
 * The chance of "supported" for two shares: every outcome of n and n is listed, judged by the real
 * rule, and weighed by its binomial probability.
 *
 * <p>The outcomes that support a claim are a staircase, since one more "yes" among the treated, or
 * one fewer in the control, never weakens it; a claim of no change asks every outcome. Exact.
 *
 * @param treated share of the treated that is assumed
 * @param control share of the control that is assumed
 */
record SharesProspect(Question question, double treated, double control) implements Prospect {

    /** Every number up to here is tried, since exact power goes up and down a little. */
    static final int EVERY_ONE = 60;

    /** Beyond it listing takes longer than the answer is worth; nobody tests as many parts. */
    static final int MOST = 600;

    /** Less than this share of all studies is none. */
    private static final double NEVER = 1e-12;

    /** Returns the prospect of a difference, the control's share as given where it leaves room. */
    static SharesProspect of(Question question, double control, double difference) {
        double treated = Math.max(0, Math.min(1, control + difference));
        return new SharesProspect(question, treated, treated - difference);
    }

    @Override
    public String method() {
        return "exact, every outcome listed";
    }

    @Override
    public double supported(int n) {
        double[] ours = binomial(n, treated);
        double[] others = binomial(n, control);
        return question.expectation() == Expectation.SAME
                ? eachOutcome(n, ours, others)
                : staircase(n, ours, others);
    }

    private double eachOutcome(int n, double[] ours, double[] others) {
        double sum = 0;
        for (int x = 0; x <= n; x++) {
            for (int y = 0; y <= n; y++) {
                double chance = ours[x] * others[y];
                sum += chance > NEVER && supports(x, y, n) ? chance : 0;
            }
        }
        return sum;
    }

    private double staircase(int n, double[] ours, double[] others) {
        boolean upwards = question.expectation() == Expectation.HIGHER;
        double[] beyond = new double[n + 2];
        for (int x = n; x >= 0; x--) {
            beyond[x] = beyond[x + 1] + ours[upwards ? x : n - x];
        }
        double sum = 0;
        int needed = 0;
        for (int y = 0; y <= n; y++) {
            while (needed <= n
                    && !(upwards ? supports(needed, y, n) : supports(n - needed, n - y, n))) {
                needed++;
            }
            sum += others[upwards ? y : n - y] * beyond[needed];
        }
        return sum;
    }

    private boolean supports(int x, int y, int n) {
        Estimate difference =
                ShareDifference.guarded(new Count(x, n), new Count(y, n), question.confidence());
        return VerdictRule.read(difference.low(), difference.high(), question) == Verdict.SUPPORTED;
    }

    /** The chances of 0 to n, from the most probable one outwards, so that none overflows. */
    private static double[] binomial(int n, double share) {
        double[] chances = new double[n + 1];
        if (share <= 0 || share >= 1) {
            chances[share <= 0 ? 0 : n] = 1;
            return chances;
        }
        int mode = (int) Math.min(n, Math.floor((n + 1) * share));
        double odds = share / (1 - share);
        chances[mode] = 1;
        double all = 1;
        for (int x = mode; x < n; x++) {
            chances[x + 1] = chances[x] * odds * (n - x) / (x + 1.0);
            all += chances[x + 1];
        }
        for (int x = mode; x > 0; x--) {
            chances[x - 1] = chances[x] / odds * x / (n - x + 1.0);
            all += chances[x - 1];
        }
        for (int x = 0; x <= n; x++) {
            chances[x] /= all;
        }
        return chances;
    }
}
