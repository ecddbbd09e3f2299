package org.twinbar.statistics.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoGroups;

class BlocksReferenceTest {

    private final Checks checks = Checks.of(BlocksReferenceTest.class);

    @Test
    void dyestuff() {
        double[][] batches = Published.groups("Dyestuff");
        double[] y = Arrays.stream(batches).flatMapToDouble(Arrays::stream).toArray();
        int[] batch = IntStream.range(0, y.length).map(i -> i / 5).toArray();
        double[][] constant = IntStream.range(0, y.length)
                .mapToObj(i -> new double[] {1})
                .toArray(double[][]::new);

        MixedModel model = MixedModel.fit(
                        y,
                        constant,
                        List.of(RandomTerm.of("batches", batch)),
                        MixedModel.Floor.ZERO)
                .orElseThrow();

        checks.row("M-115-batch").expects(model.components().get(0).variance());
        checks.row("M-115-residual").expects(model.components().get(1).variance());
        MixedModel.Contrast mean = model.contrast(1).orElseThrow();
        checks.row("M-115-mean").expects(mean.value());
        checks.row("M-115-se").expects(mean.standardError());
        // A balanced mean rests on the batches' means.
        assertThat(mean.df()).isCloseTo(5, within(1e-6));

        // Plain likelihood, which Twinbar doesn't use, follows from ours where numbers are equal.
        double within = model.components().get(1).variance();
        double between = 5 * model.components().get(0).variance() + within;
        checks.row("M-116-batch").expects((5.0 / 6 * between - within) / 5);
        checks.row("M-116-residual").expects(within);
    }

    /** Yates' trial of nitrogen, phosphate and potash: six blocks of four plots. */
    @Test
    void manuresInBlocks() {
        double[] block = Published.values("npk", "block");
        double[] n = Published.values("npk", "N");
        double[] p = Published.values("npk", "P");
        double[] k = Published.values("npk", "K");
        double[][] fixed = new double[n.length][];
        for (int i = 0; i < n.length; i++) {
            double nn = n[i] - 0.5;
            double pp = p[i] - 0.5;
            double kk = k[i] - 0.5;
            fixed[i] = new double[] {1, nn, pp, kk, nn * pp, nn * kk, pp * kk};
        }
        int[] blocks = Arrays.stream(block).mapToInt(one -> (int) one).toArray();

        MixedModel model = MixedModel.fit(
                        Published.values("npk", "yield"),
                        fixed,
                        List.of(RandomTerm.of("blocks", blocks)),
                        MixedModel.Floor.ZERO)
                .orElseThrow();

        MixedModel.Contrast nitrogen = model.contrast(0, 1, 0, 0, 0, 0, 0).orElseThrow();
        MixedModel.Contrast potash = model.contrast(0, 0, 0, 1, 0, 0, 0).orElseThrow();
        double t = nitrogen.value() / nitrogen.standardError();
        checks.row("M-114-N").expects(t * t);
        checks.row("M-114-N-p").expects(new StudentT(nitrogen.df()).twoSidedP(t));
        double tK = potash.value() / potash.standardError();
        checks.row("M-114-K").expects(tK * tK);
    }

    @Test
    void printBatchesWithOneEffect() {
        double[] y = new double[24];
        double[][] fixed = new double[24][];
        int[] batch = new int[24];
        int at = 0;
        for (int b = 1; b <= 4; b++) {
            for (String group : List.of("untreated", "treated")) {
                for (double value : Published.values("print batches", b + " " + group)) {
                    y[at] = value;
                    fixed[at] = new double[] {1, group.equals("treated") ? 1 : 0};
                    batch[at++] = b;
                }
            }
        }

        MixedModel model = MixedModel.fit(
                        y, fixed, List.of(RandomTerm.of("batches", batch)), MixedModel.Floor.ZERO)
                .orElseThrow();
        MixedModel.Contrast effect = model.contrast(0, 1).orElseThrow();

        checks.row("M-117-effect").expects(effect.value());
        checks.row("M-117-se").expects(effect.standardError());
        checks.row("M-117-df").expects(effect.df());
        checks.row("M-117-block").expects(model.components().get(0).variance());
        checks.row("M-117-residual").expects(model.components().get(1).variance());
    }

    @Test
    void twoUnequalBlocksAgreeWithR() {
        List<TwoGroups> blocks =
                List.of(groups("46.0 45.1 46.9", "41.2 41.1"), groups("48.9 47.1", "43.9 44.2"));

        expect("two blocks", Blocks.ofBlocks(blocks, 0.95), 0, 1);
    }

    @Test
    void treatmentFromBlockToBlockAgreesWithR() {
        List<TwoGroups> blocks = List.of(
                groups("46.0 45.1 46.9", "41.1"),
                groups("49.6 50.7 48.9", "43.9 43.0"),
                groups("43.7", "40.0 40.9"),
                groups("46.9 48.1", "42.5 42.0 43.6"));

        expect("unequal blocks", Blocks.ofBlocks(blocks, 0.95), 1, 0, 2);
    }

    @Test
    void unitsAgreeWithR() {
        BlockOutcome outcome = Blocks.ofUnits(
                List.of(
                        numbers("50.1 51.0 49.2"),
                        numbers("47.3 47.9"),
                        numbers("52.0 52.4 51.1 53.0")),
                List.of(numbers("44.0 45.1"), numbers("46.6 45.0 46.1"), numbers("43.0 42.2 44.1")),
                0.95);

        expect("units", outcome, 0, 1);
    }

    @Test
    void mixesOfTheTreatedAloneAgreeWithR() {
        BlockOutcome outcome = Blocks.ofMixes(
                List.of(
                        numbers("50.1 51.0 49.2"),
                        numbers("47.3 47.9"),
                        numbers("52.0 52.4 51.1 53.0")),
                numbers("44.0 45.1 46.6 45.0 46.1"),
                0.95);

        expect("mixes", outcome, 0, 1);
    }

    @Test
    void aVarianceAtZeroAgreesWithRAndIsSaid() {
        BlockOutcome outcome = Blocks.ofUnits(
                List.of(
                        numbers("50.1 47.0 53.2"),
                        numbers("48.3 52.9"),
                        numbers("51.0 49.4 52.1 48.0")),
                List.of(numbers("44.0 48.1"), numbers("46.6 43.0 47.1"), numbers("47.0 43.2 45.1")),
                0.95);

        expect("units without scatter between", outcome, 0, 1);
        assertThat(((BlockOutcome.Effect) outcome).components().get(0).isZero()).isTrue();
    }

    /** The order says which of our components each row of R's table is. */
    private void expect(String name, BlockOutcome outcome, int... order) {
        BlockOutcome.Effect effect = (BlockOutcome.Effect) outcome;
        checks.row("R-" + name + "-effect").expects(effect.estimate().value());
        checks.row("R-" + name + "-se").expects(effect.standardError());
        checks.row("R-" + name + "-df").expects(effect.estimate().df());
        for (int i = 0; i < order.length; i++) {
            checks.row("R-" + name + "-var" + (i + 1))
                    .expects(effect.components().get(order[i]).variance());
        }
    }

    private static TwoGroups groups(String treated, String control) {
        return TwoGroups.of(numbers(treated), numbers(control));
    }

    private static double[] numbers(String text) {
        return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
