package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.LongStream;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of any two groups; the seed of a failing case is its argument. */
class TwoMeansLawsTest {

    private static final double LEVEL = 0.95;
    private static final List<BiFunction<double[], double[], Estimate>> RATIOS = List.of(
            (t, c) -> ((RatioInterval.Finite) Fieller.ratio(TwoMeans.of(t, c), LEVEL)).estimate(),
            (t, c) -> ((RatioInterval.Finite) Fieller.pooled(t, c, LEVEL)).estimate(),
            (t, c) -> LogRatio.ofMeans(TwoMeans.of(t, c), LEVEL),
            (t, c) -> LogRatio.ofGeometricMeans(t, c, LEVEL));

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void swappingTheGroupsInvertsTheRatio(long seed) {
        Groups groups = Groups.of(seed);
        for (var ratio : RATIOS) {
            Estimate there = ratio.apply(groups.treated, groups.control);
            Estimate back = ratio.apply(groups.control, groups.treated);
            assertThat(back.value()).isCloseTo(1 / there.value(), within(1e-12));
            assertThat(back.low()).isCloseTo(1 / there.high(), within(1e-12));
            assertThat(back.high()).isCloseTo(1 / there.low(), within(1e-12));
            assertThat(back.df()).isCloseTo(there.df(), within(1e-9));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void swappingTheGroupsTurnsTheDifference(long seed) {
        Groups groups = Groups.of(seed);
        Estimate there = Welch.difference(groups.means(), LEVEL);
        Estimate back = Welch.difference(groups.means().swapped(), LEVEL);
        assertThat(back.low()).isCloseTo(-there.high(), within(1e-12));
        assertThat(back.high()).isCloseTo(-there.low(), within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anotherUnitChangesNoRatio(long seed) {
        Groups groups = Groups.of(seed);
        DoubleUnaryOperator toPsi = x -> x * 145.0377;
        for (var ratio : RATIOS) {
            Estimate one = ratio.apply(groups.treated, groups.control);
            Estimate other = ratio.apply(each(groups.treated, toPsi), each(groups.control, toPsi));
            assertThat(other.low()).isCloseTo(one.low(), within(1e-12));
            assertThat(other.high()).isCloseTo(one.high(), within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anAddedConstantLeavesTheDifference(long seed) {
        Groups groups = Groups.of(seed);
        Estimate one = Welch.difference(groups.means(), LEVEL);
        Estimate other = Welch.difference(
                TwoMeans.of(
                        each(groups.treated, x -> x + 273.15),
                        each(groups.control, x -> x + 273.15)),
                LEVEL);
        assertThat(other.low()).isCloseTo(one.low(), within(1e-10));
        assertThat(other.high()).isCloseTo(one.high(), within(1e-10));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfTheRowsIsNothing(long seed) {
        Groups groups = Groups.of(seed);
        double[] backwards = groups.treated.clone();
        for (int i = 0; i < backwards.length; i++) {
            backwards[i] = groups.treated[backwards.length - 1 - i];
        }
        for (var ratio : RATIOS) {
            Estimate one = ratio.apply(groups.treated, groups.control);
            Estimate other = ratio.apply(backwards, groups.control);
            assertThat(other.low()).isCloseTo(one.low(), within(1e-13));
            assertThat(other.high()).isCloseTo(one.high(), within(1e-13));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void duplicatingEverySpecimenNeverWidens(long seed) {
        Groups groups = Groups.of(seed);
        double[] treated = twice(groups.treated);
        double[] control = twice(groups.control);
        for (var ratio : RATIOS) {
            assertThat(width(ratio.apply(treated, control)))
                    .isLessThan(width(ratio.apply(groups.treated, groups.control)));
        }
        assertThat(width(Welch.difference(TwoMeans.of(treated, control), LEVEL)))
                .isLessThan(width(Welch.difference(groups.means(), LEVEL)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anEndMovesOutWithTheLevel(long seed) {
        TwoMeans means = Groups.of(seed).means();
        Estimate narrow = ((RatioInterval.Finite) Fieller.ratio(means, 0.90)).estimate();
        Estimate wide = ((RatioInterval.Finite) Fieller.ratio(means, 0.95)).estimate();
        assertThat(wide.low()).isLessThan(narrow.low());
        assertThat(wide.high()).isGreaterThan(narrow.high());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void sharedErrorsNeverNarrow(long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        TwoMeans means = Groups.of(seed).means();
        Shift shift = new Shift(
                random.nextDouble(-1, 1), random.nextDouble(-1, 1), Double.POSITIVE_INFINITY);
        TwoMeans shared = new TwoMeans(means.treated(), means.control(), List.of(shift));
        double ratio = means.treated().mean() / means.control().mean();
        assertThat(shared.variance(ratio)).isGreaterThanOrEqualTo(means.variance(ratio));
        assertThat(shared.variance(1)).isGreaterThanOrEqualTo(means.variance(1));
    }

    private record Groups(double[] treated, double[] control) {

        /**
         * Three to ten values each, of unequal spread; means of 40 and 45, so that every ratio has
         * an interval.
         */
        static Groups of(long seed) {
            UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
            int treated = random.nextInt(3, 11);
            int control = random.nextInt(3, 11);
            return new Groups(
                    random.doubles(treated, 41, 49).toArray(),
                    random.doubles(control, 38, 42).toArray());
        }

        TwoMeans means() {
            return TwoMeans.of(treated, control);
        }
    }

    private static double[] each(double[] values, DoubleUnaryOperator change) {
        return Arrays.stream(values).map(change).toArray();
    }

    private static double[] twice(double[] values) {
        return LongStream.range(0, 2L * values.length)
                .mapToDouble(i -> values[(int) i / 2])
                .toArray();
    }

    private static double width(Estimate estimate) {
        return estimate.high() - estimate.low();
    }
}
