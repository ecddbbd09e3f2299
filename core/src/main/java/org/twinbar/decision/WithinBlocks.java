package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.Summary;

/**
 * The effect within blocks that hold both groups; a ratio by way of logarithms.
 *
 * <p>From three such blocks on, each gives one effect d_b, its treated mean minus its control mean,
 * and the effect is their mean with s/√B and B − 1 degrees of freedom: the treatment may act
 * differently from run to run, and the next run is what the claim is about. Two blocks are too few
 * to see that; the effect is then Σw_b·d_b/Σw_b with w_b = n_T·n_C/(n_T + n_C), and its variance
 * s²/Σw_b, s² from what remains beside additive blocks, with N − B − 1 degrees of freedom. Both are
 * what restricted maximum likelihood gives for equal numbers where its variances are above zero.
 *
 * <p>Blocks that hold one group alone say nothing of the treatment and are passed over. Source:
 * METHODS.md I.6; NIST/SEMATECH e-Handbook of Statistical Methods, 7.3.1 (paired differences).
 */
record WithinBlocks(Question question, double step) implements Calculation {

    /** Two effects cannot show how much the treatment varies from block to block. */
    private static final int BLOCKS_FOR_THEIR_OWN_SCATTER = 3;

    /** The values of one block that holds both groups. */
    private record Both(double[] treated, double[] control) {
        double weight() {
            return (double) treated.length * control.length / (treated.length + control.length);
        }

        double effect() {
            return Summary.of(treated).mean() - Summary.of(control).mean();
        }
    }

    @Override
    public Found found(Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        List<Both> blocks = blocks(treated, control, ratio ? StrictMath::log : value -> value);
        int n = blocks.stream()
                .mapToInt(both -> both.treated().length + both.control().length)
                .sum();
        MeanEstimate effect = blocks.size() >= BLOCKS_FOR_THEIR_OWN_SCATTER
                ? MeanEstimate.of(blocks.stream().mapToDouble(Both::effect).toArray())
                : additive(blocks, n);
        double variance = Math.max(effect.variance(), floor(treated, control, ratio))
                + shared(treated, control, ratio);
        StudentT t = new StudentT(effect.df());
        double half = t.twoSided(question.confidence()) * Math.sqrt(variance);
        double p = effect.mean() == 0 ? 1 : t.twoSidedP(effect.mean() / Math.sqrt(variance));
        DoubleUnaryOperator back = ratio ? StrictMath::exp : value -> value;
        String blockKind = Layout.kind(treated);
        String method = (blocks.size() >= BLOCKS_FOR_THEIR_OWN_SCATTER
                        ? "effects of " + blocks.size() + " " + blockKind + "s"
                        : "within " + blockKind + "s")
                + (ratio ? ", on logarithms" : "");
        return Founds.of(
                question.effect(),
                new Estimate(
                        back.applyAsDouble(effect.mean()),
                        back.applyAsDouble(effect.mean() - half),
                        back.applyAsDouble(effect.mean() + half),
                        question.confidence(),
                        effect.df(),
                        n,
                        method),
                Amount.of(p));
    }

    /** Returns whether the samples have blocks enough, with values that the scale takes. */
    static boolean fits(Question question, Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        List<Both> blocks = blocks(treated, control, value -> value);
        boolean positive = blocks.stream()
                .allMatch(both -> Summary.of(both.treated()).min() > 0
                        && Summary.of(both.control()).min() > 0);
        int n = blocks.stream()
                .mapToInt(both -> both.treated().length + both.control().length)
                .sum();
        boolean enough = blocks.size() >= BLOCKS_FOR_THEIR_OWN_SCATTER || n > blocks.size() + 1;
        return !blocks.isEmpty() && enough && (!ratio || positive);
    }

    private static MeanEstimate additive(List<Both> blocks, int n) {
        double weights = 0;
        double weighted = 0;
        for (Both both : blocks) {
            weights += both.weight();
            weighted += both.weight() * both.effect();
        }
        double effect = weighted / weights;
        double rest = 0;
        for (Both both : blocks) {
            double off = both.effect() - effect;
            rest += squares(both.treated()) + squares(both.control()) + both.weight() * off * off;
        }
        double df = n - blocks.size() - 1;
        return new MeanEstimate(effect, rest / df / weights, df, n);
    }

    private static double squares(double[] values) {
        return values.length < 2 ? 0 : Summary.of(values).variance() * (values.length - 1);
    }

    private static List<Both> blocks(Sample treated, Sample control, DoubleUnaryOperator scale) {
        Map<String, List<Double>> ours = byBlock(treated);
        Map<String, List<Double>> others = byBlock(control);
        List<Both> both = new ArrayList<>();
        for (Map.Entry<String, List<Double>> block : ours.entrySet()) {
            List<Double> matching = others.getOrDefault(block.getKey(), List.of());
            if (!matching.isEmpty()) {
                both.add(new Both(on(scale, block.getValue()), on(scale, matching)));
            }
        }
        return both;
    }

    private static double[] on(DoubleUnaryOperator scale, List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).map(scale).toArray();
    }

    private static Map<String, List<Double>> byBlock(Sample sample) {
        Map<String, List<Double>> blocks = new TreeMap<>();
        for (Observation observation : sample.numbers()) {
            if (observation.block().isPresent()
                    && observation.observed() instanceof Observed.Number number) {
                blocks.computeIfAbsent(
                                observation.block().get().name(), unused -> new ArrayList<>())
                        .add(number.value());
            }
        }
        return blocks;
    }

    /** Rounding does not average out: each mean is uncertain by what one reading resolves. */
    private double floor(Sample treated, Sample control, boolean ratio) {
        return square(treated.coarseness(step) / scale(treated, ratio))
                + square(control.coarseness(step) / scale(control, ratio));
    }

    private double shared(Sample treated, Sample control, boolean ratio) {
        Set<String> sources = new TreeSet<>(treated.sources());
        sources.addAll(control.sources());
        double sum = 0;
        for (String source : sources) {
            sum += square(treated.moveOfMean(source) / scale(treated, ratio)
                    - control.moveOfMean(source) / scale(control, ratio));
        }
        return sum;
    }

    private static double scale(Sample sample, boolean ratio) {
        return ratio ? sample.summary().mean() : 1;
    }

    private static double square(double x) {
        return x * x;
    }
}
