package org.twinbar.decision;

import java.util.Optional;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.NoncentralT;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.Share;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.ToleranceFactor;
import org.twinbar.statistics.Weibull;
import org.twinbar.statistics.WeibullPivots;

/**
 * What would settle whether a stated share of parts clears a level.
 *
 * <p>Where values are held against it: the fewest specimens whose normal tolerance limit clears it
 * with a power of 80 % if mean and scatter are as seen, P(T′ ≥ k√n) with noncentrality √n(μ − L)/σ,
 * which is exact; then more, until the worse of the normal and the Weibull limit does so in
 * simulated studies. Where parts are counted: exact, by the binomial distribution; where all of
 * them cleared it, shareⁿ ≤ error rate. Sources: METHODS.md I.7 and E (29 dry parts for 90 %).
 */
record LevelSettling(Judge judge, Sample sample) {

    private static final int STUDIES = 200;

    /** The 95 % point of the pivots is then good to about 4 % of its size. */
    private static final int WEIBULL_TRIALS = 1_000;

    private static final int MOST_LOOKS = 3;
    private static final int MOST_SIMULATED = 60;
    private static final int MOST_COUNTED = 2_000;
    private static final int EVERY_ONE_COUNTED = 400;
    private static final double MORE_EACH_LOOK = 1.3;

    /** The chance of a simulation is known to about three points of per cent. */
    private static final double NEARLY = Fewest.POWER - 0.03;

    Needed needed(Verdict verdict, Levels.Limit limit) {
        if (verdict != Verdict.OPEN) {
            return new Needed.None("Nothing is open.");
        }
        return limit.counted() ? counted() : measured(limit);
    }

    private Needed counted() {
        Optional<Count> seen = new Levels(judge.question(), judge.step()).clearing(sample);
        double share = level().share();
        if (seen.isEmpty()) {
            return new Needed.None("Of no specimen can it be told whether it clears the level.");
        }
        if (seen.get().yes() == seen.get().n()) {
            double most = StrictMath.log(judge.question().errorRate()) / StrictMath.log(share);
            return specimens(
                    new Fewest.Reached((int) Math.ceil(most - 1e-9), 1),
                    "exact, binomial",
                    "if every one of them clears the level");
        }
        if (seen.get().share() <= share) {
            return new Needed.None(
                    "No larger share of the specimens cleared it than is asked for: more specimens like these would not support the claim.");
        }
        double clears = seen.get().share();
        return Fewest.first(
                        n -> countedPower(n, clears),
                        Prospect.FEWEST,
                        EVERY_ONE_COUNTED,
                        MOST_COUNTED)
                .<Needed>map(reached ->
                        specimens(reached, "exact, binomial", "if the true share is as seen"))
                .orElseGet(LevelSettling::none);
    }

    /** The chance that so few fall short that the exact lower limit still clears the share. */
    private double countedPower(int n, double clears) {
        double confidence = judge.question().confidence();
        double chance = StrictMath.pow(clears, n);
        double sum = 0;
        for (int missed = 0; missed < n; missed++) {
            Count count = new Count(n - missed, n);
            if (Share.exactLowerLimit(count, confidence) < level().share()) {
                break;
            }
            sum += chance;
            chance *= (1 - clears) / clears * (n - missed) / (missed + 1.0);
        }
        return sum;
    }

    private Needed measured(Levels.Limit limit) {
        double[] values = sample.values();
        if (values.length < 2) {
            return new Needed.None(
                    "One specimen shows no scatter to reckon a number of specimens from.");
        }
        double sign = judge.question().expectation() == Expectation.LOWER ? -1 : 1;
        Summary summary = sample.summary();
        double sd = Math.max(summary.sd(), sample.resolution(judge.step()));
        double above = sign * (summary.mean() - limit.threshold()) - shared();
        if (!(sd > 0) || !(above > Normal.STANDARD.quantile(level().share()) * sd)) {
            return new Needed.None(
                    "As far as was seen, fewer parts than are asked for clear the level: more specimens like these would not support the claim.");
        }
        double z = above / sd;
        return Fewest.growing(n -> normalPower(n, z), Prospect.FEWEST)
                .<Needed>map(normal -> {
                    boolean weibull = summary.min() > 0 && normal.n() <= MOST_SIMULATED;
                    return weibull
                            ? simulated(normal, summary.mean() - sign * shared(), sd)
                            : specimens(
                                    normal,
                                    "exact, noncentral t",
                                    "if mean and scatter are as seen");
                })
                .orElseGet(LevelSettling::none);
    }

    double normalPower(int n, double above) {
        double factor =
                ToleranceFactor.oneSided(n, level().share(), judge.question().confidence());
        double root = Math.sqrt(n);
        return new NoncentralT(n - 1, Math.min(above, 60) * root).above(factor * root);
    }

    /** Adds specimens until the worse of both limits clears the level as often as is wanted. */
    private Needed simulated(Fewest.Reached normal, double mean, double sd) {
        int n = normal.n();
        double share = normal.power();
        for (int look = 0; look < MOST_LOOKS; look++) {
            share = supported(n, mean, sd);
            if (share >= NEARLY) {
                break;
            }
            if (look < MOST_LOOKS - 1) {
                n = (int) Math.ceil(n * MORE_EACH_LOOK);
            }
        }
        return specimens(
                new Fewest.Reached(n, share),
                STUDIES + " simulated studies",
                "if parts scatter normally, mean and scatter as seen");
    }

    private double supported(int n, double mean, double sd) {
        Question question = judge.question();
        boolean upwards = question.expectation() != Expectation.LOWER;
        double share = level().share();
        double confidence = question.confidence();
        double factor = ToleranceFactor.oneSided(n, share, confidence);
        WeibullPivots pivots = WeibullPivots.simulate(n, n, WEIBULL_TRIALS, question.seed());
        double below = upwards ? 1 - share : share;
        double point = pivots.point(below, upwards ? confidence : 1 - confidence);
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(question.seed());
        int supported = 0;
        double[] values = new double[n];
        for (int study = 0; study < STUDIES; study++) {
            for (int i = 0; i < n; i++) {
                values[i] = mean + sd * Normal.STANDARD.quantile(open(random));
            }
            Summary summary = Summary.of(values);
            double away =
                    upwards ? summary.mean() - level().value() : level().value() - summary.mean();
            supported += away >= factor * summary.sd() && weibull(values, below, point) ? 1 : 0;
        }
        return (double) supported / STUDIES;
    }

    /** Whether the Weibull limit clears the level too; where none can be fitted there is none. */
    private boolean weibull(double[] values, double below, double point) {
        for (double value : values) {
            if (!(value > 0)) {
                return true;
            }
        }
        if (!(Weibull.fit(values) instanceof Weibull.Fit fit)) {
            return true;
        }
        double limit = fit.quantile(below) * StrictMath.exp(-point / fit.shape());
        return judge.question().expectation() == Expectation.LOWER
                ? limit <= level().value()
                : limit >= level().value();
    }

    private static double open(UniformRandomProvider random) {
        double drawn = random.nextDouble();
        return drawn == 0 ? open(random) : drawn;
    }

    /** How far the errors that all specimens share move the limit towards the level. */
    private double shared() {
        double squares = 0;
        for (String source : sample.sources()) {
            double move = sample.moveOfMean(source);
            squares += move * move;
        }
        return Normal.STANDARD.quantile(judge.question().confidence()) * Math.sqrt(squares);
    }

    private Level level() {
        return judge.question().level().orElseThrow();
    }

    private static Needed specimens(Fewest.Reached reached, String method, String assuming) {
        return new Needed.Specimens(
                reached.n(), Optional.empty(), reached.power(), method, assuming, Optional.empty());
    }

    private static Needed none() {
        return new Needed.None("No number of specimens can be reckoned from what was seen.");
    }
}
