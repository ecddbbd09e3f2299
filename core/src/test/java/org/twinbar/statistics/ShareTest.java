package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShareTest {

    /** The exact guard: all of 3 against none of 3 happens one time in ten by chance. */
    @Test
    void threeAgainstThreeProveNothing() {
        Estimate free = ShareDifference.agrestiCaffo(new Count(3, 3), new Count(0, 3), 0.95);
        Estimate guarded = ShareDifference.guarded(new Count(3, 3), new Count(0, 3), 0.95);
        assertThat(free.low()).isPositive();
        assertThat(guarded.low()).isZero();
        assertThat(guarded.high()).isEqualTo(free.high());
        assertThat(guarded.method()).contains("Fisher");
        Estimate turned = ShareDifference.guarded(new Count(0, 3), new Count(3, 3), 0.95);
        assertThat(turned.high()).isZero();
        assertThat(turned.low()).isEqualTo(-free.high());
    }

    @Test
    void theGuardLeavesWhatIsProved() {
        Estimate free = ShareDifference.agrestiCaffo(new Count(5, 5), new Count(0, 5), 0.95);
        assertThat(ShareDifference.guarded(new Count(5, 5), new Count(0, 5), 0.95))
                .isEqualTo(free);
    }

    @Test
    void theGuardLeavesAnIntervalThatHoldsNoDifference() {
        Count treated = new Count(3, 5);
        Count control = new Count(2, 5);
        assertThat(ShareDifference.guarded(treated, control, 0.95))
                .isEqualTo(ShareDifference.agrestiCaffo(treated, control, 0.95));
    }

    @Test
    void guardedIntervalsNeverExcludeNoDifferenceBeyondChance() {
        for (int n = 3; n <= 8; n++) {
            for (int t = 0; t <= n; t++) {
                for (int c = 0; c <= n; c++) {
                    Count treated = new Count(t, n);
                    Count control = new Count(c, n);
                    Estimate estimate = ShareDifference.guarded(treated, control, 0.95);
                    boolean proved = FisherExact.twoSided(treated, control).p() <= 0.05;
                    boolean excludes = estimate.low() > 0 || estimate.high() < 0;
                    assertThat(excludes && !proved)
                            .as("%s against %s", treated, control)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void swappingYesAndNoTurnsTheExactInterval() {
        for (int n = 1; n <= 12; n++) {
            for (int yes = 0; yes <= n; yes++) {
                Estimate one = Share.exact(new Count(yes, n), 0.95);
                Estimate other = Share.exact(new Count(n - yes, n), 0.95);
                assertThat(other.low()).isCloseTo(1 - one.high(), within(1e-12));
                assertThat(one.low()).isLessThanOrEqualTo(one.value());
                assertThat(one.high()).isGreaterThanOrEqualTo(one.value());
            }
        }
    }

    @Test
    void theExactIntervalCoversAtLeastAsOftenAsItSays() {
        int n = 7;
        for (double truth = 0.02; truth < 1; truth += 0.02) {
            double covered = 0;
            for (int yes = 0; yes <= n; yes++) {
                if (Share.exact(new Count(yes, n), 0.95).holds(truth)) {
                    covered += binomial(n, yes)
                            * StrictMath.pow(truth, yes)
                            * StrictMath.pow(1 - truth, n - yes);
                }
            }
            assertThat(covered).as("truth %s", truth).isGreaterThanOrEqualTo(0.95);
        }
    }

    @Test
    void fisherIsTheSameForEitherGroupAndEitherWord() {
        double p = FisherExact.twoSided(new Count(8, 10), new Count(1, 6)).p();
        assertThat(FisherExact.twoSided(new Count(1, 6), new Count(8, 10)).p())
                .isCloseTo(p, within(1e-14));
        assertThat(FisherExact.twoSided(new Count(2, 10), new Count(5, 6)).p())
                .isCloseTo(p, within(1e-14));
    }

    @Test
    void fisherOfEqualTablesIsOne() {
        assertThat(FisherExact.twoSided(new Count(0, 5), new Count(0, 5)).p()).isEqualTo(1);
        assertThat(FisherExact.twoSided(new Count(5000, 10000), new Count(5000, 10000))
                        .p())
                .isEqualTo(1);
    }

    @Test
    void refusesImpossibleCounts() {
        assertThatThrownBy(() -> new Count(6, 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The number of yes must lie from 0 to 5, not be 6.");
        assertThatThrownBy(() -> new Count(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Share.exact(new Count(1, 2), 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static double binomial(int n, int k) {
        double result = 1;
        for (int i = 1; i <= k; i++) {
            result = result * (n - k + i) / i;
        }
        return result;
    }
}
