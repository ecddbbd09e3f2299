package org.twinbar.statistics.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoGroups;
import org.twinbar.statistics.blocks.MixedModel.Floor;

/**
 * The effect of a treatment on specimens that were made in runs, mixes or oven loads.
 *
 * <p>A treatment that was only ever in one run, with its control only in another, cannot be told
 * from the runs: that is {@link BlockOutcome.Undetermined}, as is one that leaves nothing to
 * estimate scatter from. For a ratio give logarithms, and take the exponential of the ends.
 *
 * <p>With equal numbers every effect is what analysis of variance gives: the t of the blocks' or
 * units' means, exact for normal scatter, also where the scatter between them came out below what
 * specimens explain. Such a variance is given as zero, and {@link BlockOutcome.Component#isZero}
 * says so. With unequal numbers it is held at zero, and a 95 % interval of three or four blocks
 * covers the truth in 98 to 99.9 % of studies: wider than it need be (a test holds both to that).
 */
public final class Blocks {

    /**
     * From so many blocks of both groups on, the treatment may act differently from block to block.
     */
    private static final int BLOCKS_FOR_THEIR_OWN_EFFECT = 3;

    private static final String ONE_RUN =
            "the treatment can't be told from the one run it was made in";
    private static final String NO_SCATTER = "the specimens leave no scatter to judge by";

    private Blocks() {}

    /**
     * Blocks that hold both groups, or some of them one: y = μ + τ·treated + block + block×treated
     * + e.
     *
     * <p>The term block×treated, the treatment acting differently from block to block, is there
     * from three blocks of both groups on where some of them repeat a group; without repeats it is
     * part of e already. With equal numbers and variances above zero the effect is the mean of the
     * blocks' effects, on their scatter.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static BlockOutcome ofBlocks(List<TwoGroups> blocks, double level) {
        Arguments.requireInside(level, "level");
        Rows rows = new Rows();
        int both = 0;
        boolean repeated = false;
        for (int block = 0; block < blocks.size(); block++) {
            TwoGroups groups = blocks.get(block);
            boolean holdsBoth = groups.treatedCount() > 0 && groups.controlCount() > 0;
            both += holdsBoth ? 1 : 0;
            repeated |= holdsBoth && Math.max(groups.treatedCount(), groups.controlCount()) > 1;
            rows.add(groups.treated(), 1, block, 2 * block + 1);
            rows.add(groups.control(), 0, block, 2 * block);
        }
        if (both == 0) {
            List<double[]> units = new ArrayList<>();
            blocks.forEach(block ->
                    units.add(block.treatedCount() > 0 ? block.treated() : block.control()));
            return rows.oneRunEach()
                    ? new BlockOutcome.Undetermined(ONE_RUN)
                    : units(rows, floorOfUnits(units), level);
        }
        List<RandomTerm> terms = new ArrayList<>();
        terms.add(rows.term("blocks", false));
        if (both >= BLOCKS_FOR_THEIR_OWN_EFFECT && repeated) {
            terms.add(rows.term("treatment from block to block", true));
        }
        return effect(rows, terms, floorOfBlocks(blocks), level, "blocks, REML, Kenward–Roger");
    }

    /**
     * Units nested within the groups: runs of which each is wholly treated or wholly control.
     *
     * <p>y = μ + τ·treated + unit + e; the units are what was treated, specimens of one are
     * repeats. With equal numbers it is the t test of the units' means.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static BlockOutcome ofUnits(
            List<double[]> treated, List<double[]> control, double level) {
        Arguments.requireInside(level, "level");
        Rows rows = new Rows();
        int unit = 0;
        for (double[] values : treated) {
            rows.add(values, 1, unit, unit);
            unit++;
        }
        for (double[] values : control) {
            rows.add(values, 0, unit, unit);
            unit++;
        }
        if (treated.isEmpty() || control.isEmpty() || treated.size() + control.size() < 3) {
            return new BlockOutcome.Undetermined(ONE_RUN);
        }
        List<double[]> units = new ArrayList<>(treated);
        units.addAll(control);
        return units(rows, floorOfUnits(units), level);
    }

    /**
     * Several mixes within the treated group; control specimens share none.
     *
     * <p>y = μ + τ·treated + mix·treated + e. With one mix alone nothing says how the next would
     * differ; that is {@link BlockOutcome.Undetermined}, and the caller compares this mix only.
     *
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public static BlockOutcome ofMixes(
            List<double[]> treatedByMix, double[] control, double level) {
        Arguments.requireInside(level, "level");
        if (treatedByMix.size() < 2) {
            return new BlockOutcome.Undetermined("one mix doesn't show how the next would differ");
        }
        Rows rows = new Rows();
        int mix = 0;
        for (double[] values : treatedByMix) {
            rows.add(values, 1, mix, mix);
            mix++;
        }
        rows.add(control, 0, -1, -1);
        RandomTerm mixes = rows.term("mixes", false);
        return effect(
                rows,
                mixes.isShared() ? List.of(mixes) : List.of(),
                Floor.ZERO,
                level,
                "mixes, REML, Kenward–Roger");
    }

    /** Below zero only where all blocks hold as many of each group. */
    private static Floor floorOfBlocks(List<TwoGroups> blocks) {
        TwoGroups first = blocks.get(0);
        boolean equal = first.treatedCount() > 0
                && first.controlCount() > 0
                && blocks.stream()
                        .allMatch(block -> block.treatedCount() == first.treatedCount()
                                && block.controlCount() == first.controlCount());
        return equal ? Floor.NONE : Floor.ZERO;
    }

    private static Floor floorOfUnits(List<double[]> units) {
        int first = units.get(0).length;
        return units.stream().allMatch(unit -> unit.length == first) ? Floor.NONE : Floor.ZERO;
    }

    private static BlockOutcome units(Rows rows, Floor floor, double level) {
        RandomTerm units = rows.term("units", false);
        return effect(
                rows,
                units.isShared() ? List.of(units) : List.of(),
                floor,
                level,
                "units, REML, Kenward–Roger");
    }

    private static BlockOutcome effect(
            Rows rows, List<RandomTerm> terms, Floor floor, double level, String method) {
        int n = rows.values.size();
        if (n < 3 || !rows.hasBoth()) {
            return new BlockOutcome.Undetermined(NO_SCATTER);
        }
        Optional<MixedModel> model = MixedModel.fit(rows.y(), rows.fixed(), terms, floor);
        Optional<MixedModel.Contrast> found = model.flatMap(fitted -> fitted.contrast(0, 1));
        if (found.isEmpty()) {
            return new BlockOutcome.Undetermined(NO_SCATTER);
        }
        MixedModel.Contrast contrast = found.get();
        StudentT t = new StudentT(contrast.df());
        double half = t.twoSided(level) * contrast.standardError();
        return new BlockOutcome.Effect(
                new Estimate(
                        contrast.value(),
                        contrast.value() - half,
                        contrast.value() + half,
                        level,
                        contrast.df(),
                        n,
                        method),
                contrast.standardError(),
                t.twoSidedP(contrast.value() / contrast.standardError()),
                model.get().components());
    }

    /** Specimens with their group, block and cell. */
    private static final class Rows {
        private final List<Double> values = new ArrayList<>();
        private final List<Integer> treated = new ArrayList<>();
        private final List<Integer> blocks = new ArrayList<>();
        private final List<Integer> cells = new ArrayList<>();

        void add(double[] group, int isTreated, int block, int cell) {
            for (double value : group) {
                values.add(Arguments.requireFinite(value, "value"));
                treated.add(isTreated);
                blocks.add(block);
                cells.add(cell);
            }
        }

        RandomTerm term(String name, boolean byCell) {
            return RandomTerm.of(
                    name,
                    (byCell ? cells : blocks)
                            .stream().mapToInt(Integer::intValue).toArray());
        }

        double[] y() {
            return values.stream().mapToDouble(Double::doubleValue).toArray();
        }

        double[][] fixed() {
            return treated.stream().map(one -> new double[] {1, one}).toArray(double[][]::new);
        }

        boolean hasBoth() {
            return treated.contains(0) && treated.contains(1);
        }

        boolean oneRunEach() {
            return blocks.stream().distinct().count() < 3;
        }
    }
}
