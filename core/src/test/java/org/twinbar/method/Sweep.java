package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.twinbar.statistics.StudentT;
import org.twinbar.uncertainty.Budget;

/**
 * Simulated specimens of one method, each with a truth that is known: does the interval that
 * Twinbar states hold the truth as often as it says?
 *
 * @param property whose value is held against the truth
 * @param errors what is wrong with the readings, in words
 * @param draw makes one specimen, its errors drawn afresh
 */
public record Sweep(Property property, String errors, Draw draw) {

    /** 95 % of these are 380, and one binomial standard deviation is 4.4. */
    public static final int RUNS = 400;

    private static final double LEVEL = 0.95;

    /** Makes specimens. */
    public interface Draw {
        Drawn next(Random random);
    }

    /** A specimen's result, and what it truly is. */
    public record Drawn(Result result, double truth) {

        public static Drawn of(TestMethod method, Readings.Builder readings, double truth) {
            return new Drawn(Result.of(method, readings.build()), truth);
        }
    }

    /**
     * What the specimens gave.
     *
     * @param held in how many the 95 % interval held the truth
     * @param bias mean of value less truth
     * @param scatter standard deviation of value less truth
     * @param stated root mean square of the stated standard uncertainty
     * @param truth mean truth
     */
    public record Found(int held, double bias, double scatter, double stated, double truth) {}

    public Found run(long seed) {
        Random random = new Random(seed);
        int held = 0;
        double sum = 0;
        double squares = 0;
        double variances = 0;
        double truths = 0;
        for (int run = 0; run < RUNS; run++) {
            Drawn drawn = draw.next(random);
            Budget budget = drawn.result().budgets().get(property);
            assertThat(budget)
                    .as("run %s: %s", run, drawn.result().yields().get(property))
                    .isNotNull();
            double off = budget.value() - drawn.truth();
            double t = new StudentT(budget.degreesOfFreedom()).twoSided(LEVEL);
            held += Math.abs(off) <= t * budget.u() ? 1 : 0;
            sum += off;
            squares += off * off;
            variances += budget.u() * budget.u();
            truths += drawn.truth();
        }
        double bias = sum / RUNS;
        double scatter = Math.sqrt(Math.max(0, squares / RUNS - bias * bias));
        return new Found(held, bias, scatter, Math.sqrt(variances / RUNS), truths / RUNS);
    }

    /** An instrument as it is on one day: its gain and zero are off, and its display has steps. */
    public record Dial(double gain, double zero, double step) {

        /** Draws an instrument whose gain and zero have these standard uncertainties. */
        public static Dial drawn(Random random, double gain, double zero, double step) {
            return new Dial(gain * random.nextGaussian(), zero * random.nextGaussian(), step);
        }

        public double reads(double truth) {
            double off = truth * (1 + gain) + zero;
            return step > 0 ? step * Math.rint(off / step) : off;
        }
    }
}
