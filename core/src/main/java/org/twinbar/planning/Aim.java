package org.twinbar.planning;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.twinbar.statistics.NoncentralT;
import org.twinbar.statistics.PlannedEffect;
import org.twinbar.statistics.Power;
import org.twinbar.statistics.ToleranceFactor;

/**
 * What a study is to show, if what is expected is true.
 *
 * <p>Means and levels are here, where the statistics alone tell the chance; counted, timed and
 * ranked outcomes are in {@code decision}, which has the rule that judges them.
 */
public interface Aim {

    /** How chances are had that ask for normal scatter. */
    String NORMAL = "exact for normal scatter, ";

    /** A margin of so many deviations is shown by any number of specimens. */
    double MANY_DEVIATIONS = 40;

    /**
     * The chance of "supported" with a number of specimens in each group.
     *
     * @param perGroup n ≥ 3
     */
    double power(int perGroup);

    /**
     * Returns the smallest effect that is found with 80 %, on the scale of the aim: for a claim of
     * no change the narrowest limits that it is shown to lie within, for a level the smallest
     * margin; empty where none is.
     */
    OptionalDouble smallest(int perGroup);

    /** Returns how the chance is reckoned, in words. */
    String method();

    /** Returns the fewest per group that reach a power; empty where 200 don't. */
    default OptionalInt fewest(double power) {
        for (int number = Numbers.FEWEST; number <= Numbers.MOST; number++) {
            if (power(number) >= power) {
                return OptionalInt.of(number);
            }
        }
        return OptionalInt.empty();
    }

    /** Returns in how many groups specimens are made for it. */
    int groups();

    /** A change against a control: the noncentral t of {@link Power}. */
    record Change(PlannedEffect effect) implements Aim {

        @Override
        public double power(int perGroup) {
            return Power.of(effect, perGroup, Sizing.ALPHA_ONE_SIDED);
        }

        @Override
        public OptionalDouble smallest(int perGroup) {
            return Power.smallestEffect(
                    effect, perGroup, Sizing.USUAL_POWER, Sizing.ALPHA_ONE_SIDED);
        }

        @Override
        public String method() {
            return NORMAL + "noncentral t";
        }

        @Override
        public int groups() {
            return 2;
        }
    }

    /**
     * No change that matters: the 95 % interval inside ±worth, by {@link Power#alike} at 2.5 % on
     * each side; for a ratio on logarithms.
     *
     * @param worth smallest change that would matter, in the unit of the scatter; relative for a
     *     ratio
     * @param scatter of a specimen
     * @param scale whether worth and scatter are relative
     */
    record NoChange(double worth, double scatter, Scale scale) implements Aim {

        /** Whether sizes are shares of the mean or amounts. */
        public enum Scale {
            RATIO,
            DIFFERENCE
        }

        /** @throws PlanException unless 0 < worth, below 1 for a ratio, and 0 < scatter */
        public NoChange {
            requireSize(worth, "change that would matter");
            requireSize(scatter, "scatter");
            if (scale == Scale.RATIO && !(worth < 1 && scatter < 1)) {
                throw new PlanException(
                        "The change that would matter and the scatter must lie below 100 % of the mean.");
            }
        }

        @Override
        public double power(int perGroup) {
            double low = scale == Scale.RATIO ? StrictMath.log1p(-worth) : -worth;
            double high = scale == Scale.RATIO ? StrictMath.log1p(worth) : worth;
            return Power.alike(
                    new Power.Alike(low, high, 0),
                    scatter * Math.sqrt(2.0 / perGroup),
                    2.0 * perGroup - 2,
                    Sizing.ALPHA_ONE_SIDED);
        }

        @Override
        public OptionalDouble smallest(int perGroup) {
            double most = scale == Scale.RATIO ? 1 : MANY_DEVIATIONS * scatter;
            return Threshold.of(
                    limit -> new NoChange(limit, scatter, scale).power(perGroup),
                    new Threshold.Range(0, most));
        }

        @Override
        public String method() {
            return NORMAL + "Owen's Q";
        }

        @Override
        public int groups() {
            return 2;
        }
    }

    /**
     * A level that a share of parts clears: the one-sided 95 % tolerance limit of normal values
     * lies above it.
     *
     * <pre>P(T′ ≥ √n·k), T′ noncentral t, df n − 1, noncentrality √n·margin/scatter</pre>
     *
     * <p>k from {@link ToleranceFactor#oneSided}. Source: METHODS.md I.7; the tolerance limit mean
     * − k·s clears the level where (mean − level)/s ≥ k.
     *
     * @param margin of the expected mean over the level
     * @param scatter of a specimen, in the unit of the margin
     * @param share of parts that must clear it
     */
    record Clears(double margin, double scatter, double share) implements Aim {

        /** @throws PlanException unless 0 < margin, 0 < scatter and 0 < share < 1 */
        public Clears {
            requireSize(margin, "margin over the level");
            requireSize(scatter, "scatter");
            if (!(share > 0 && share < 1)) {
                throw new PlanException(
                        "The share of parts must lie between 0 and 1, not at %s.".formatted(share));
            }
        }

        @Override
        public double power(int number) {
            double root = Math.sqrt(number);
            double k = ToleranceFactor.oneSided(number, share, AllClear.USUAL_CONFIDENCE);
            return new NoncentralT(number - 1.0, root * margin / scatter).above(root * k);
        }

        @Override
        public OptionalDouble smallest(int number) {
            return Threshold.of(
                    least -> new Clears(least, scatter, share).power(number),
                    new Threshold.Range(0, MANY_DEVIATIONS * scatter));
        }

        @Override
        public String method() {
            return NORMAL + "noncentral t";
        }

        @Override
        public int groups() {
            return 1;
        }
    }

    /**
     * A yes that a share of parts gives: all parts say yes.
     *
     * @param truth share of all parts that say yes
     * @param share that is to be shown
     */
    record AllPass(double truth, double share) implements Aim {

        /** @throws PlanException unless share < truth ≤ 1 and the share is one */
        public AllPass {
            AllClear.parts(share, AllClear.USUAL_CONFIDENCE);
            if (!(truth > share && truth <= 1)) {
                throw new PlanException(
                        "The share that is expected must lie above the %s that is to be shown and up to 1, not at %s."
                                .formatted(share, truth));
            }
        }

        @Override
        public double power(int number) {
            return number < AllClear.parts(share, AllClear.USUAL_CONFIDENCE)
                    ? 0
                    : StrictMath.pow(truth, number);
        }

        /** The smallest true share of parts that all pass so often: the n-th root of 80 %. */
        @Override
        public OptionalDouble smallest(int number) {
            return number < AllClear.parts(share, AllClear.USUAL_CONFIDENCE)
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(StrictMath.pow(Sizing.USUAL_POWER, 1.0 / number));
        }

        @Override
        public String method() {
            return "exact, binomial";
        }

        @Override
        public int groups() {
            return 1;
        }
    }

    private static void requireSize(double size, String what) {
        if (!(size > 0 && size < Double.POSITIVE_INFINITY)) {
            throw new PlanException("The %s must be above zero, not %s.".formatted(what, size));
        }
    }
}
