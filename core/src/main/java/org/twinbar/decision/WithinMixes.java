package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.twinbar.statistics.blocks.BlockOutcome;
import org.twinbar.statistics.blocks.Blocks;

/**
 * The effect of a treatment that came in several mixes or oven loads, while control specimens share
 * none; a ratio by way of logarithms.
 *
 * <p>The mix is a random effect within the treated group ({@link Blocks#ofMixes}), so that the
 * interval is about the next mix too. Two mixes tell little of that: where they differ much more
 * than their specimens, the 95 % interval holds the truth in about nine studies of ten
 * (docs/calibration.md), and a finding says so.
 */
record WithinMixes(Question question, double step) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        BlockOutcome outcome = outcome(question, treated, control);
        int mixes = mixes(treated, value -> value).size();
        String method = Written.count(mixes, Layout.kind(treated)) + ", REML, Kenward–Roger"
                + (question.effect() == Effect.RATIO ? ", on logarithms" : "");
        if (outcome instanceof BlockOutcome.Effect effect) {
            return new WithinBlocks(question, step).found(effect, treated, control, method);
        }
        String reason = ((BlockOutcome.Undetermined) outcome).reason();
        return Found.open(
                question.effect(), Amount.none(reason), question.confidence(), method, reason);
    }

    /** Returns whether the samples have mixes and values that the model takes. */
    static boolean fits(Question question, Sample treated, Sample control) {
        boolean ratio = question.effect() == Effect.RATIO;
        boolean values = Math.min(treated.values().length, control.values().length) > 0;
        return values
                && (!ratio
                        || Math.min(treated.summary().min(), control.summary().min()) > 0)
                && outcome(question, treated, control) instanceof BlockOutcome.Effect;
    }

    private static BlockOutcome outcome(Question question, Sample treated, Sample control) {
        DoubleUnaryOperator scale =
                question.effect() == Effect.RATIO ? StrictMath::log : value -> value;
        return Blocks.ofMixes(
                mixes(treated, scale),
                control.stream().map(scale).toArray(),
                question.confidence());
    }

    /** Returns the values of each mix; a specimen without one is a mix of its own. */
    private static List<double[]> mixes(Sample treated, DoubleUnaryOperator scale) {
        Map<String, List<Double>> byName = new TreeMap<>();
        for (Observation one : treated.numbers()) {
            if (one.observed() instanceof Observed.Number number) {
                String name = one.block()
                        .map(block -> "mix " + block.name())
                        .orElse("specimen " + one.specimen());
                byName.computeIfAbsent(name, unused -> new ArrayList<>())
                        .add(scale.applyAsDouble(number.value()));
            }
        }
        return byName.values().stream()
                .map(values -> values.stream().mapToDouble(Double::doubleValue).toArray())
                .toList();
    }
}
