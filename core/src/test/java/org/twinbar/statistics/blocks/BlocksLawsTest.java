package org.twinbar.statistics.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.statistics.Summary;
import org.twinbar.statistics.TwoGroups;

class BlocksLawsTest {

    private static final Offset<Double> NEAR = within(1e-6);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void pairsAreThePairedT(long seed) {
        List<TwoGroups> pairs = random(seed, 6, 1, seed % 2);
        double[] differences = pairs.stream()
                .mapToDouble(pair -> pair.treated()[0] - pair.control()[0])
                .toArray();
        Summary summary = Summary.of(differences);

        BlockOutcome.Effect effect = effect(Blocks.ofBlocks(pairs, 0.95));

        assertThat(effect.estimate().value()).isCloseTo(summary.mean(), NEAR);
        assertThat(effect.standardError()).isCloseTo(summary.sd() / Math.sqrt(6), NEAR);
        assertThat(effect.estimate().df()).isCloseTo(5, within(1e-4));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalBlocksRestOnTheScatterOfTheirEffects(long seed) {
        List<TwoGroups> blocks = random(seed, 5, 3, seed % 3);
        double[] effects = blocks.stream()
                .mapToDouble(block -> Summary.of(block.treated()).mean()
                        - Summary.of(block.control()).mean())
                .toArray();

        BlockOutcome.Effect effect = effect(Blocks.ofBlocks(blocks, 0.95));

        assertThat(effect.estimate().value()).isCloseTo(Summary.of(effects).mean(), NEAR);
        assertThat(effect.standardError()).isCloseTo(Summary.of(effects).sd() / Math.sqrt(5), NEAR);
        assertThat(effect.estimate().df()).isCloseTo(4, within(1e-4));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void equalUnitsAreTheTTestOfTheirMeans(long seed) {
        List<TwoGroups> made = random(seed, 4, 3, seed % 3);
        List<double[]> treated = made.stream().map(TwoGroups::treated).toList();
        List<double[]> control = made.stream().map(TwoGroups::control).toList();
        Summary ours = Summary.of(
                treated.stream().mapToDouble(unit -> Summary.of(unit).mean()).toArray());
        Summary others = Summary.of(
                control.stream().mapToDouble(unit -> Summary.of(unit).mean()).toArray());

        BlockOutcome.Effect effect = effect(Blocks.ofUnits(treated, control, 0.95));

        assertThat(effect.estimate().value()).isCloseTo(ours.mean() - others.mean(), NEAR);
        assertThat(effect.standardError())
                .isCloseTo(Math.sqrt((ours.variance() + others.variance()) / 4), NEAR);
        assertThat(effect.estimate().df()).isCloseTo(6, within(1e-4));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void unitsAndOrderAndSwappingAreNothing(long seed) {
        List<TwoGroups> blocks = random(seed, 4, 2, 2);
        List<TwoGroups> other = new ArrayList<>();
        for (TwoGroups block : blocks) {
            other.add(TwoGroups.of(changed(block.control()), changed(block.treated())));
        }
        Collections.reverse(other);

        BlockOutcome.Effect before = effect(Blocks.ofBlocks(blocks, 0.95));
        BlockOutcome.Effect after = effect(Blocks.ofBlocks(other, 0.95));

        assertThat(after.estimate().low())
                .isCloseTo(-1000 * before.estimate().high(), within(1e-3));
        assertThat(after.estimate().high())
                .isCloseTo(-1000 * before.estimate().low(), within(1e-3));
        assertThat(after.p()).isCloseTo(before.p(), NEAR);
    }

    @Test
    void oneRunForEachGroupCannotBeToldApart() {
        TwoGroups first = TwoGroups.of(new double[] {1, 2, 3}, new double[0]);
        TwoGroups second = TwoGroups.of(new double[0], new double[] {2, 3, 4});

        assertThat(Blocks.ofBlocks(List.of(first, second), 0.95))
                .isEqualTo(new BlockOutcome.Undetermined(
                        "the treatment can't be told from the one run it was made in"));
        assertThat(Blocks.ofUnits(List.of(first.treated()), List.of(second.control()), 0.95))
                .isInstanceOf(BlockOutcome.Undetermined.class);
        assertThat(Blocks.ofMixes(List.of(first.treated()), second.control(), 0.95))
                .isInstanceOf(BlockOutcome.Undetermined.class);
    }

    @Test
    void completeAgreementLeavesNothingToJudgeBy() {
        List<TwoGroups> equal = List.of(
                TwoGroups.of(new double[] {5, 5}, new double[] {4, 4}),
                TwoGroups.of(new double[] {7, 7}, new double[] {6, 6}));

        assertThat(Blocks.ofBlocks(equal, 0.95))
                .isEqualTo(new BlockOutcome.Undetermined(
                        "the specimens leave no scatter to judge by"));
        assertThatThrownBy(() -> Blocks.ofBlocks(equal, 1))
                .hasMessageContaining("must lie between 0 and 1");
    }

    @Test
    void blocksOfOneGroupOnlyAreUnits() {
        List<double[]> treated = List.of(new double[] {51, 52}, new double[] {48, 49.5});
        List<double[]> control = List.of(new double[] {44, 45}, new double[] {41, 42});
        List<TwoGroups> blocks = new ArrayList<>();
        treated.forEach(values -> blocks.add(TwoGroups.of(values, new double[0])));
        control.forEach(values -> blocks.add(TwoGroups.of(new double[0], values)));

        assertThat(Blocks.ofBlocks(blocks, 0.9)).isEqualTo(Blocks.ofUnits(treated, control, 0.9));
    }

    private static BlockOutcome.Effect effect(BlockOutcome outcome) {
        assertThat(outcome).isInstanceOf(BlockOutcome.Effect.class);
        return (BlockOutcome.Effect) outcome;
    }

    private static double[] changed(double[] values) {
        double[] turned = Arrays.stream(values).map(value -> 1000 * value + 7).toArray();
        for (int i = 0; i < turned.length / 2; i++) {
            double kept = turned[i];
            turned[i] = turned[turned.length - 1 - i];
            turned[turned.length - 1 - i] = kept;
        }
        return turned;
    }

    /**
     * Blocks whose own scatter is far above that of specimens, so that no variance comes out as
     * zero.
     */
    private static List<TwoGroups> random(long seed, int blocks, int each, double ofEffect) {
        Random random = new Random(seed);
        List<TwoGroups> made = new ArrayList<>();
        for (int block = 0; block < blocks; block++) {
            double level = 50 + 3 * ofEffect * random.nextGaussian();
            double effect = 5 + ofEffect * random.nextGaussian();
            made.add(TwoGroups.of(
                    IntStream.range(0, each)
                            .mapToDouble(i -> level + effect + 0.7 * random.nextGaussian())
                            .toArray(),
                    IntStream.range(0, each)
                            .mapToDouble(i -> level + 0.7 * random.nextGaussian())
                            .toArray()));
        }
        return made;
    }
}
