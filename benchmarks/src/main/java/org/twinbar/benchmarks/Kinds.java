package org.twinbar.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.twinbar.benchmarks.Kind.Truth;
import org.twinbar.decision.Block;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Level;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.quantity.Unit;

/** The kinds of studies beyond two means, with worlds whose truth is known. */
final class Kinds {

    private static final Subject DRY = new Subject("dry", Unit.ONE, "cups");
    private static final Subject LEAK = new Subject("leak", Unit.of("h"), "cups");
    private static final Subject GLOSS = new Subject("gloss", Unit.ONE, "cups");
    private static final Subject STRENGTH = new Subject("strength", Unit.of("MPa"), "bars");

    private Kinds() {}

    static List<Kind> all() {
        List<Kind> kinds = new ArrayList<>();
        shares(kinds);
        rates(kinds);
        ranks(kinds);
        levels(kinds);
        runs(kinds);
        units(kinds);
        mixes(kinds);
        return kinds;
    }

    private static String both(int n) {
        return n + ", " + n;
    }

    private static void shares(List<Kind> kinds) {
        Question question = Question.of(DRY, Effect.SHARE, Expectation.HIGHER);
        for (double share : new double[] {0.1, 0.5}) {
            double more = share > 0.4 ? 0.35 : 0.45;
            for (int n : new int[] {3, 5, 8, 12, 20, 40}) {
                kinds.add(new Kind(
                        Section.SHARE,
                        "share of %.0f %%".formatted(100 * share),
                        both(n),
                        n,
                        new Truth(question, 0, drawn(n, n, yes(share), yes(share))),
                        new Truth(question, more, drawn(n, n, yes(share + more), yes(share)))));
            }
        }
        for (int n : new int[] {8, 12, 20, 40}) {
            Question worth = question.withWorth(0.1);
            kinds.add(new Kind(
                    Section.SHARE,
                    "share of 50 %, worth 10 points",
                    both(n),
                    n,
                    new Truth(worth, 0.1, drawn(n, n, yes(0.6), yes(0.5))),
                    new Truth(worth, 0.45, drawn(n, n, yes(0.95), yes(0.5)))));
        }
    }

    private static Draw yes(double share) {
        return random -> new Observed.YesNo(random.nextDouble() < share);
    }

    /** One specimen. */
    private interface Draw {
        Observed from(UniformRandomProvider random);
    }

    private static java.util.function.Function<UniformRandomProvider, List<Observation>> drawn(
            int treated, int control, Draw ofTreated, Draw ofControl) {
        return random -> {
            List<Observation> all = new ArrayList<>(treated + control);
            for (int i = 0; i < control; i++) {
                all.add(Observation.of("C" + i, "control", ofControl.from(random)));
            }
            for (int i = 0; i < treated; i++) {
                all.add(Observation.of("T" + i, "treated", ofTreated.from(random)));
            }
            return all;
        };
    }

    private static void rates(List<Kind> kinds) {
        Question slower = Question.of(LEAK, Effect.RATE, Expectation.LOWER);
        for (boolean looks : new boolean[] {false, true}) {
            for (int n : new int[] {4, 6, 10, 20}) {
                kinds.add(rate(slower, looks, n, 1));
            }
        }
        for (int n : new int[] {6, 10, 20}) {
            kinds.add(rate(slower.withWorth(0.3), false, n, 0.7));
        }
    }

    private static Kind rate(Question question, boolean looks, int n, double edge) {
        String words =
                (looks ? "looked at six times" : "moments seen") + (edge < 1 ? ", worth 30 %" : "");
        return new Kind(
                Section.RATE,
                words,
                both(n),
                n,
                new Truth(question, edge, drawn(n, n, life(edge, looks), life(1, looks))),
                new Truth(question, 0.15, drawn(n, n, life(0.15, looks), life(1, looks))));
    }

    /** The test ends at 24 h, when three quarters of the control have leaked. */
    private static Draw life(double ratio, boolean looks) {
        double mean = 24 / Math.log(4);
        return random -> {
            double time = -Math.log1p(-random.nextDouble()) * mean / ratio;
            if (time > 24) {
                return new Observed.AtLeast(24);
            }
            double look = 4 * Math.floor(time / 4);
            return looks ? new Observed.Between(look, look + 4) : new Observed.Number(time);
        };
    }

    private static void ranks(List<Kind> kinds) {
        // Φ(δ/√2) = 0.95 for normal values; the steps are so wide that a few are used.
        double far = 1.6449 * Math.sqrt(2);
        for (int n : new int[] {3, 4, 6, 10, 20}) {
            kinds.add(rank("values without ties", n, normal(0, 1), normal(far, 1)));
            kinds.add(rank("steps, with ties", n, steps(0), steps(far)));
            // Φ(δ/√(1 + 9)) = 0.95.
            kinds.add(rank(
                    "treated scatter three times as much",
                    n,
                    normal(0, 3),
                    normal(1.6449 * Math.sqrt(10), 3)));
        }
    }

    private static Kind rank(String words, int n, Draw edge, Draw beyond) {
        Question question = Question.of(GLOSS, Effect.RANK, Expectation.HIGHER);
        Draw control = words.startsWith("steps") ? steps(0) : normal(0, 1);
        return new Kind(
                Section.RANK,
                words,
                both(n),
                n,
                new Truth(question, 0.5, drawn(n, n, edge, control)),
                new Truth(question, 0.95, drawn(n, n, beyond, control)));
    }

    private static Draw normal(double mean, double sd) {
        return random -> new Observed.Number(mean + sd * gaussian(random));
    }

    private static Draw steps(double mean) {
        return random -> new Observed.Number(Math.rint(mean + gaussian(random)));
    }

    private static double gaussian(UniformRandomProvider random) {
        return ZigguratSampler.NormalizedGaussian.of(random).sample();
    }

    private static void levels(List<Kind> kinds) {
        for (int n : new int[] {3, 5, 10, 20}) {
            kinds.add(level("normal, 8 %", n, p -> 1 + 0.08 * quantile(p)));
            kinds.add(level("log-normal, 15 %", n, p -> Math.exp(0.15 * quantile(p))));
            kinds.add(level("Weibull, shape 8", n, p -> Math.pow(-Math.log1p(-p), 1 / 8.0)));
            kinds.add(level(
                    "skewed (exponential above a threshold), 10 %",
                    n, p -> 0.9 - 0.1 * Math.log1p(-p)));
        }
        for (int n : new int[] {10, 30, 60}) {
            Question question =
                    Question.level(DRY, new Level(1, 0.9), Expectation.HIGHER).withResolution(0);
            kinds.add(new Kind(
                    Section.LEVEL,
                    "counted, yes or no",
                    Integer.toString(n),
                    n,
                    new Truth(question, 0.9, drawn(n, 0, yes(0.9), yes(0.9))),
                    new Truth(question, 0.999, drawn(n, 0, yes(0.999), yes(0.9)))));
        }
    }

    private static double quantile(double p) {
        return org.twinbar.statistics.Normal.STANDARD.quantile(p);
    }

    private static Kind level(String words, int n, DoubleUnaryOperator quantile) {
        return new Kind(
                Section.LEVEL,
                words,
                Integer.toString(n),
                n,
                level(quantile, n, 0.1),
                level(quantile, n, 0.001));
    }

    /** The level lies where so many of all parts fall short of it; the limit is about a tenth. */
    private static Truth level(DoubleUnaryOperator quantile, int n, double below) {
        double level = 50 * quantile.applyAsDouble(below);
        Draw draw = random -> new Observed.Number(
                50 * quantile.applyAsDouble(Math.max(1e-15, random.nextDouble())));
        Question question = Question.level(STRENGTH, new Level(level, 0.9), Expectation.HIGHER)
                .withResolution(0);
        return new Truth(question, 50 * quantile.applyAsDouble(0.1), drawn(n, 0, draw, draw));
    }

    private static final double BETWEEN = 0.1;
    private static final double OF_EFFECT = 0.05;
    private static final double WITHIN = 0.08;
    private static final double FAR = 0.3;

    private static Question stronger() {
        return Question.of(STRENGTH, Effect.DIFFERENCE, Expectation.HIGHER).withResolution(0);
    }

    private static void runs(List<Kind> kinds) {
        for (int runs : new int[] {2, 3, 5}) {
            for (boolean equal : new boolean[] {true, false}) {
                int number = runs;
                IntFunction<Integer> treated = run -> equal ? 3 : run % 2 == 0 ? 2 : 4;
                ToDoubleFunction<Integer> specimens = run -> 6 - treated.apply(run);
                kinds.add(new Kind(
                        Section.BLOCKS,
                        runs + " print runs of " + (equal ? "3 + 3" : "2 + 4 and 4 + 2"),
                        both(3 * runs),
                        runs,
                        new Truth(
                                stronger(),
                                0,
                                random -> inRuns(random, number, treated, specimens, 0)),
                        new Truth(
                                stronger(),
                                50 * FAR,
                                random -> inRuns(random, number, treated, specimens, FAR))));
            }
        }
    }

    private static List<Observation> inRuns(
            UniformRandomProvider random,
            int runs,
            IntFunction<Integer> treated,
            ToDoubleFunction<Integer> control,
            double effect) {
        List<Observation> all = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            Block block = new Block("print run", "R" + run);
            double level = 1 + BETWEEN * gaussian(random);
            double changed = level + effect + OF_EFFECT * gaussian(random);
            add(all, random, "T" + run, "treated", changed, treated.apply(run), block);
            add(all, random, "C" + run, "control", level, (int) control.applyAsDouble(run), block);
        }
        return all;
    }

    private static void add(
            List<Observation> all,
            UniformRandomProvider random,
            String code,
            String group,
            double mean,
            int number,
            Block block) {
        for (int i = 0; i < number; i++) {
            double value = 50 * (mean + WITHIN * gaussian(random));
            all.add(Observation.of(code + i, group, value).inBlock(block));
        }
    }

    /** Alternate runs, each wholly treated or wholly not. */
    private static void units(List<Kind> kinds) {
        for (int runs : new int[] {2, 3, 5}) {
            int number = runs;
            kinds.add(new Kind(
                    Section.BLOCKS,
                    runs + " runs of each kind, 3 in each, as units",
                    both(3 * runs),
                    runs,
                    new Truth(stronger(), 0, random -> asUnits(random, number, 0)),
                    new Truth(stronger(), 50 * FAR, random -> asUnits(random, number, FAR))));
        }
    }

    private static List<Observation> asUnits(
            UniformRandomProvider random, int runs, double effect) {
        List<Observation> all = new ArrayList<>();
        for (int run = 0; run < 2 * runs; run++) {
            boolean treated = run % 2 == 0;
            double level = 1 + BETWEEN * gaussian(random) + (treated ? effect : 0);
            for (int i = 0; i < 3; i++) {
                double value = 50 * (level + WITHIN * gaussian(random));
                all.add(Observation.of("S" + run + "-" + i, treated ? "treated" : "control", value)
                        .inUnit("run " + run));
            }
        }
        return all;
    }

    /** Several mixes of the treatment, control specimens each for itself. */
    private static void mixes(List<Kind> kinds) {
        for (double between : new double[] {0.04, 0.16}) {
            for (int mixes : new int[] {2, 3, 5}) {
                int number = mixes;
                kinds.add(new Kind(
                        Section.BLOCKS,
                        mixes + " mixes of 3 that differ by %.0f %%".formatted(100 * between),
                        3 * mixes + ", 6",
                        mixes,
                        new Truth(stronger(), 0, random -> ofMixes(random, number, between, 0)),
                        new Truth(
                                stronger(),
                                50 * FAR,
                                random -> ofMixes(random, number, between, FAR))));
            }
        }
    }

    private static List<Observation> ofMixes(
            UniformRandomProvider random, int mixes, double between, double effect) {
        List<Observation> all = new ArrayList<>();
        for (int mix = 0; mix < mixes; mix++) {
            Block block = new Block("mix", "M" + mix);
            double mean = 1 + effect + between * gaussian(random);
            add(all, random, "T" + mix, "treated", mean, 3, block);
        }
        for (int i = 0; i < 6; i++) {
            all.add(Observation.of("C" + i, "control", 50 * (1 + WITHIN * gaussian(random))));
        }
        return all;
    }
}
