package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.blocks.BlockOutcome;
import org.twinbar.statistics.blocks.Blocks;

/**
 * The effect within blocks that hold both groups; a ratio by way of logarithms.
 *
 * <p>A linear mixed model: a random block, and from three blocks of both groups on with repeats a
 * random treatment from block to block, since the next run is what the claim is about. Restricted
 * maximum likelihood, degrees of freedom after Kenward and Roger: {@link Blocks#ofBlocks}, which
 * names its sources. The scatter floor and shared errors widen its variance as they do elsewhere.
 */
record WithinBlocks(Question question, double step) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        Map<String, TwoGroups> blocks =
                blocks(treated, control, ratio ? StrictMath::log : value -> value);
        BlockOutcome outcome = Blocks.ofBlocks(List.copyOf(blocks.values()), question.confidence());
        String method = Written.count(blocks.size(), Layout.kind(treated))
                + ", REML, Kenward–Roger"
                + (ratio ? ", on logarithms" : "");
        if (outcome instanceof BlockOutcome.Effect effect) {
            return found(effect, treated, control, method);
        }
        String reason = ((BlockOutcome.Undetermined) outcome).reason();
        return Found.open(
                question.effect(), Amount.none(reason), question.confidence(), method, reason);
    }

    /**
     * What one block's effect scatters by.
     *
     * @param ofOneBlock its variance on the model's scale
     * @param perBlock specimens of each group in a block, as a rule
     * @param ofEffectSeen whether how differently the treatment acts from block to block is part of
     *     it: two blocks don't show that
     */
    record Scatter(double ofOneBlock, int perBlock, boolean ofEffectSeen) {}

    /** Returns nothing where the model can't tell. */
    Optional<Scatter> scatter(Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        List<TwoGroups> both =
                blocks(treated, control, ratio ? StrictMath::log : value -> value).values().stream()
                        .filter(WithinBlocks::holdsBoth)
                        .toList();
        if (!(Blocks.ofBlocks(both, question.confidence()) instanceof BlockOutcome.Effect effect)) {
            return Optional.empty();
        }
        List<BlockOutcome.Component> parts = effect.components();
        double residual = parts.get(parts.size() - 1).variance();
        double ofEffect = parts.size() > 2 ? parts.get(1).variance() : 0;
        int specimens = both.stream()
                .mapToInt(block -> block.treatedCount() + block.controlCount())
                .sum();
        int perBlock = Math.max(1, Math.round(specimens / (2f * both.size())));
        return Optional.of(
                new Scatter(2 * ofEffect + 2 * residual / perBlock, perBlock, both.size() > 2));
    }

    /**
     * Returns an effect on the model's scale as one that was found, with floor and shared errors.
     */
    Found found(BlockOutcome.Effect effect, Sample treated, Sample control, String method) {
        boolean ratio = question.effect() == Effect.RATIO;
        double se = effect.standardError();
        double variance =
                Math.max(se * se, floor(treated, control, ratio)) + shared(treated, control, ratio);
        double mean = effect.estimate().value();
        StudentT t = new StudentT(effect.estimate().df());
        double half = t.twoSided(question.confidence()) * Math.sqrt(variance);
        double p = mean == 0 ? 1 : t.twoSidedP(mean / Math.sqrt(variance));
        DoubleUnaryOperator back = ratio ? StrictMath::exp : value -> value;
        return Founds.of(
                question.effect(),
                new Estimate(
                        back.applyAsDouble(mean),
                        back.applyAsDouble(mean - half),
                        back.applyAsDouble(mean + half),
                        question.confidence(),
                        effect.estimate().df(),
                        treated.numbers().size() + control.numbers().size(),
                        method),
                Amount.of(p));
    }

    /** Returns whether the samples have blocks enough, with values that the scale takes. */
    static boolean fits(Question question, Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        Map<String, TwoGroups> blocks = blocks(treated, control, value -> value);
        List<TwoGroups> both =
                blocks.values().stream().filter(WithinBlocks::holdsBoth).toList();
        if (both.isEmpty()
                || (ratio && !blocks.values().stream().allMatch(TwoGroups::isAboveZero))) {
            return false;
        }
        DoubleUnaryOperator scale = ratio ? StrictMath::log : value -> value;
        List<TwoGroups> scaled = List.copyOf(blocks(treated, control, scale).values());
        return Blocks.ofBlocks(scaled, question.confidence()) instanceof BlockOutcome.Effect;
    }

    private static boolean holdsBoth(TwoGroups block) {
        return block.treatedCount() > 0 && block.controlCount() > 0;
    }

    private static Map<String, TwoGroups> blocks(
            Sample treated, Sample control, DoubleUnaryOperator scale) {
        Map<String, List<Double>> ours = byBlock(treated);
        Map<String, List<Double>> others = byBlock(control);
        Set<String> names = new TreeSet<>(ours.keySet());
        names.addAll(others.keySet());
        Map<String, TwoGroups> blocks = new TreeMap<>();
        for (String name : names) {
            blocks.put(
                    name,
                    TwoGroups.of(
                            on(scale, ours.getOrDefault(name, List.of())),
                            on(scale, others.getOrDefault(name, List.of()))));
        }
        return blocks;
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
