package org.twinbar.method;

import java.util.Random;
import org.twinbar.method.Sweep.Drawn;
import org.twinbar.statistics.Normal;

/**
 * Simulated specimens of which a method can only say between which ends their truth lies: does it?
 *
 * <p>Each is drawn where it is hardest: the truth lies at the end itself, or anywhere between the
 * looks. A specimen whose readings happen to give a value is drawn again.
 *
 * @param property what is known by an end
 * @param known what is said, and why there is no more, in words
 * @param errors what is wrong with the readings, in words
 * @param draw makes one specimen, its errors drawn afresh
 */
public record BoundSweep(Property property, String known, String errors, Sweep.Draw draw) {

    private static final double LEVEL_TWO_SIDED = 0.975;
    private static final int MOST_DRAWS = 100 * Sweep.RUNS;

    /**
     * What the specimens gave.
     *
     * @param asSaid in how many the truth lay within the ends as they stand
     * @param withDoubt in how many it lay there when each end may be off by its own uncertainty
     */
    public record Found(int asSaid, int withDoubt) {}

    public Found run(long seed) {
        Random random = new Random(seed);
        int asSaid = 0;
        int withDoubt = 0;
        int runs = 0;
        for (int draws = 0; runs < Sweep.RUNS; draws++) {
            if (draws == MOST_DRAWS) {
                throw new AssertionError("hardly a specimen gives a bound of " + property.name());
            }
            Drawn drawn = draw.next(random);
            Yield yield = drawn.result().yields().get(property);
            if (isBound(yield)) {
                Ends ends = Ends.of(drawn.result(), property);
                double doubt = Normal.STANDARD.quantile(LEVEL_TWO_SIDED);
                asSaid += lies(drawn.truth(), yield, ends, 0) ? 1 : 0;
                withDoubt += lies(drawn.truth(), yield, ends, doubt) ? 1 : 0;
                runs++;
            }
        }
        return new Found(asSaid, withDoubt);
    }

    private static boolean isBound(Yield yield) {
        return yield instanceof Yield.AtLeast
                || yield instanceof Yield.Below
                || yield instanceof Yield.Between;
    }

    private static boolean lies(double truth, Yield yield, Ends ends, double doubt) {
        double lower = -doubt * ends.lowerU();
        double upper = doubt * ends.upperU();
        if (yield instanceof Yield.AtLeast bound) {
            return truth >= bound.bound() + lower;
        } else if (yield instanceof Yield.Below bound) {
            return truth <= bound.bound() + upper;
        }
        Yield.Between between = (Yield.Between) yield;
        return truth >= between.from() + lower && truth <= between.to() + upper;
    }
}
