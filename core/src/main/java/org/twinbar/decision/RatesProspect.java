package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.HazardRatio;
import org.twinbar.statistics.Lifetime;
import org.twinbar.statistics.Stratum;
import org.twinbar.statistics.Turnbull;

/**
 * The chance of "supported" for a rate, by simulated studies.
 *
 * <p>Times of the control are drawn from its own curve, and those of the treated from that curve to
 * the power of the assumed ratio, S_T = S_C^θ; a drawn time is as well known as those seen, a
 * moment or between two looks, and who outlasts the curve is watched as long as the longest. Where
 * it happened to no control the treated's curve stands in, the other way round. Each study is
 * judged by whether its interval lies beyond what is worth having. Where blocks hold both groups
 * specimens are dealt to as many blocks in turn and compared within them; how blocks differ is not
 * drawn, since a few specimens of each don't show it.
 *
 * @param curve what is drawn from
 * @param powers of that curve that the two groups have
 * @param blocks that hold both groups; 1 where none are told
 */
record RatesProspect(Question question, Turnbull curve, Powers powers, int blocks)
        implements Prospect {

    static final int STUDIES = 250;

    /** Powers of the curve. */
    record Powers(double treated, double control) {}

    /** Returns nothing where it happened to nobody, or the ratio has no size. */
    static Optional<Prospect> of(Question question, Judge.Judged judged, double ratio) {
        List<Lifetime> others = Rates.lives(judged.control());
        List<Lifetime> ours = Rates.lives(judged.treated());
        int blocks = judged.layout() == Layout.CROSSED
                ? Layout.holdingBoth(judged.treated(), judged.control())
                : 1;
        if (happened(others)) {
            return Double.isFinite(ratio)
                    ? Optional.of(new RatesProspect(
                            question, Turnbull.of(others), new Powers(ratio, 1), blocks))
                    : Optional.empty();
        }
        return happened(ours) && ratio > 0
                ? Optional.of(new RatesProspect(
                        question, Turnbull.of(ours), new Powers(1, 1 / ratio), blocks))
                : Optional.empty();
    }

    private static boolean happened(List<Lifetime> lives) {
        return lives.stream().anyMatch(life -> !life.isCensored());
    }

    @Override
    public String method() {
        return STUDIES + " simulated studies";
    }

    @Override
    public double supported(int n) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(question.seed());
        int supported = 0;
        for (int study = 0; study < STUDIES; study++) {
            supported += supports(
                            question,
                            dealt(
                                    drawn(powers.treated(), n, random),
                                    drawn(powers.control(), n, random)))
                    ? 1
                    : 0;
        }
        return (double) supported / STUDIES;
    }

    /** Whether the interval of a study lies beyond what is worth having. */
    static boolean supports(Question question, List<Stratum> strata) {
        double level = question.confidence();
        return switch (question.expectation()) {
            case LOWER -> HazardRatio.liesBelow(question.worth(), strata, level);
            case HIGHER -> HazardRatio.liesAbove(question.worth(), strata, level);
            case SAME -> {
                double size = question.worthSize().orElseThrow();
                yield HazardRatio.liesBelow(1 + size, strata, level)
                        && HazardRatio.liesAbove(1 - size, strata, level);
            }
        };
    }

    private List<Stratum> dealt(List<Lifetime> ours, List<Lifetime> others) {
        return IntStream.range(0, blocks)
                .mapToObj(block -> new Stratum(every(ours, block), every(others, block)))
                .toList();
    }

    private List<Lifetime> every(List<Lifetime> lives, int from) {
        return IntStream.iterate(from, i -> i < lives.size(), i -> i + blocks)
                .mapToObj(lives::get)
                .toList();
    }

    /** Returns the share left after each of the curve's falls; after the last nothing is. */
    private double[] left(double power) {
        double[] left = new double[curve.masses().size()];
        double survival = 1;
        for (int i = 0; i < left.length - 1; i++) {
            survival = Math.max(0, survival - curve.masses().get(i).share());
            left[i] = StrictMath.pow(survival, power);
        }
        return left;
    }

    private static Lifetime life(Turnbull.Mass mass, boolean outlasts) {
        return outlasts && mass.until() < Double.POSITIVE_INFINITY
                ? Lifetime.censored(mass.until())
                : new Lifetime(mass.after(), mass.until());
    }

    private List<Lifetime> drawn(double power, int n, UniformRandomProvider random) {
        // At a ratio of zero it never happens, however far down the curve goes.
        boolean never = power == 0;
        double[] left = left(power);
        List<Lifetime> lives = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            double place = random.nextDouble();
            int fall = 0;
            while (left[fall] > place) {
                fall++;
            }
            lives.add(life(curve.masses().get(fall), fall == left.length - 1 && never));
        }
        return lives;
    }
}
