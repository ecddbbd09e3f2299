package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DistributionsLawsTest {

    private static final double[] PROBABILITIES = {
        1e-6, 0.001, 0.025, 0.1, 0.3, 0.5, 0.7, 0.9, 0.975, 0.999
    };

    static Stream<Distribution> distributions() {
        return Stream.of(
                Normal.STANDARD,
                new StudentT(1),
                new StudentT(4.32),
                new StudentT(1e9),
                new StudentT(Double.POSITIVE_INFINITY),
                new ChiSquared(1),
                new ChiSquared(7.5),
                new FisherF(2, 8),
                new FisherF(3.3, 41),
                new Beta(1, 5),
                new Beta(8, 1),
                new Beta(0.5, 12),
                new NoncentralT(1, 0.5),
                new NoncentralT(2.5, -3),
                new NoncentralT(8, 3.668),
                new NoncentralT(1e4, 20),
                new NoncentralT(4, 300));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void quantilesRoundTrip(Distribution distribution) {
        for (double p : PROBABILITIES) {
            double back = distribution.below(distribution.quantile(p));
            assertThat(back).as("%s at %s", distribution, p).isCloseTo(p, within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void belowAndAboveMakeOne(Distribution distribution) {
        for (double p : PROBABILITIES) {
            double x = distribution.quantile(p);
            assertThat(distribution.below(x) + distribution.above(x)).isCloseTo(1, within(1e-14));
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void quantilesRise(Distribution distribution) {
        double before = Double.NEGATIVE_INFINITY;
        for (double p : PROBABILITIES) {
            double now = distribution.quantile(p);
            assertThat(now).isGreaterThan(before);
            before = now;
        }
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void refusesWhatIsNoProbability(Distribution distribution) {
        for (double p : new double[] {-0.1, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> distribution.quantile(p))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void noncentralTWithoutNoncentralityIsStudents() {
        for (double df : new double[] {1, 2.7, 8, 300}) {
            for (double t : new double[] {-4, -0.3, 0, 1, 12}) {
                assertThat(new NoncentralT(df, 0).below(t))
                        .isCloseTo(new StudentT(df).below(t), within(1e-13));
            }
        }
    }

    @Test
    void noncentralTIsMirroredByItsSign() {
        assertThat(new NoncentralT(5, 2).below(1.3))
                .isCloseTo(new NoncentralT(5, -2).above(-1.3), within(1e-14));
    }

    @Test
    void noncentralTAtZeroIsNormal() {
        assertThat(new NoncentralT(3, 1.96).below(0))
                .isCloseTo(Normal.STANDARD.below(-1.96), within(1e-14));
    }

    @Test
    void fOfOneNumeratorIsTheSquareOfT() {
        double t = new StudentT(7).twoSided(0.95);
        assertThat(new FisherF(1, 7).above(t * t)).isCloseTo(0.05, within(1e-13));
    }

    @Test
    void refusesImpossibleParameters() {
        assertRefused(() -> new StudentT(0), "degrees of freedom");
        assertRefused(() -> new StudentT(Double.NaN), "degrees of freedom");
        assertRefused(() -> new ChiSquared(Double.POSITIVE_INFINITY), "degrees of freedom");
        assertRefused(() -> new FisherF(1, -1), "denominator");
        assertRefused(() -> new Beta(0, 1), "first shape");
        assertRefused(() -> new NoncentralT(0.5, 1), "degrees of freedom");
        assertRefused(() -> new NoncentralT(5, 1001), "noncentrality");
        assertRefused(() -> new StudentT(5).twoSided(1), "level");
    }

    private static void assertRefused(Runnable making, String word) {
        assertThatThrownBy(making::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(word);
    }
}
