package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.PlanException;
import org.twinbar.quantity.Unit;

class AimsTest {

    private static final Question SLOWER = Question.of(
            new Subject("time to leak", Unit.of("h"), "cups"), Effect.RATE, Expectation.LOWER);
    private static final Question FASTER = Question.of(
            new Subject("time to leak", Unit.of("h"), "cups"), Effect.RATE, Expectation.HIGHER);
    private static final Question ABOVE =
            Question.of(new Subject("rating", Unit.ONE, "parts"), Effect.RANK, Expectation.HIGHER);
    private static final Question DRIER = Question.of(
            new Subject("leak-free", Unit.ONE, "cups"), Effect.SHARE, Expectation.HIGHER);

    /** Turned round, a rate that is four times as high is one of a quarter. */
    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8})
    void judgesBothWaysAlike(int n) {
        assertThat(Aims.rate(FASTER, 4, 1).power(n))
                .isEqualTo(Aims.rate(SLOWER, 0.25, 1).power(n), within(1e-12));
        Question below = Question.of(ABOVE.subject(), Effect.RANK, Expectation.LOWER);
        assertThat(Aims.rank(below, 0.2).power(n))
                .isEqualTo(Aims.rank(ABOVE, 0.8).power(n), within(1e-12));
    }

    /** Where there is nothing to find, what is found is the error rate or less. */
    @Test
    void findsNothingWhereNothingIs() {
        assertThat(Aims.rank(ABOVE, 0.5 + 1e-9).power(8)).isLessThan(0.025);
        assertThat(Aims.shares(DRIER, 0.5, 1e-9).power(20)).isLessThan(0.025);
    }

    @Test
    void findsWithEightyPerCentWhatItSaysIsSmallest() {
        double ratio = Aims.rate(SLOWER, 0.1, 1).smallest(8).orElseThrow();
        assertThat(Aims.rate(SLOWER, ratio, 1).power(8)).isBetween(0.8, 0.81);
        double chance = Aims.rank(ABOVE, 0.95).smallest(8).orElseThrow();
        assertThat(Aims.rank(ABOVE, chance).power(8)).isBetween(0.8, 0.81);
        Aim cups = Aims.shares(DRIER, 0.2, 0.7);
        assertThat(Aims.shares(DRIER, 0.2, cups.smallest(12).orElseThrow()).power(12))
                .isEqualTo(0.8, within(1e-5));
    }

    /** Three and three can't show ranks or shares: chance does as much one time in ten. */
    @Test
    void saysWhereNoEffectIsLargeEnough() {
        assertThat(Aims.rank(ABOVE, 0.99).smallest(3)).isEmpty();
        assertThat(Aims.shares(DRIER, 0, 1).smallest(3)).isEmpty();
        assertThat(Aims.shares(DRIER, 0, 1).power(4)).isEqualTo(1, within(1e-12));
    }

    @Test
    void narrowsTheLimitsOfNoChangeWithMoreParts() {
        Aim same = Aims.shares(Question.same(DRIER.subject(), Effect.SHARE, 0.3), 0.9, 0);
        assertThat(same.smallest(60).orElseThrow()).isLessThan(same.smallest(30).orElseThrow());
        Aim rates = Aims.rate(Question.same(SLOWER.subject(), Effect.RATE, 0.5), 1, 1);
        assertThat(rates.smallest(60)).isPresent();
    }

    /** What is seen of the control tells as much as its number: half of 40 is about 20. */
    @Test
    void takesMoreWhereTheTestEndsEarlier() {
        int all = Aims.rate(SLOWER, 0.3, 1).fewest(0.8).orElseThrow();
        int half = Aims.rate(SLOWER, 0.3, 0.5).fewest(0.8).orElseThrow();
        assertThat(half).isGreaterThan(all * 3 / 2);
    }

    @Test
    void fillsTheTableOfNumbers() {
        Numbers numbers = Numbers.of(
                Aims.shares(DRIER, 0.4, 0.5), 0.8, new Numbers.Groups(2, 1), Effort.NONE);
        assertThat(numbers.enough()).isPresent();
        assertThat(numbers.method()).isEqualTo("exact, every outcome listed");
        assertThat(Aims.rate(SLOWER, 0.3, 1).method()).contains("exact up to 8 per group");
        assertThat(Aims.rate(SLOWER, 0.3, 0.5).method()).isEqualTo("1000 simulated studies");
    }

    @Test
    void refusesWhatNoNumberShows() {
        refuses(() -> Aims.shares(DRIER, 0.4, 0.7), "must lie from 0 to 1");
        refuses(() -> Aims.shares(DRIER, 0.4, -0.1), "larger than the one worth having");
        refuses(() -> Aims.rate(SLOWER, 0, 1), "must lie above 0");
        refuses(() -> Aims.rate(SLOWER, 0.5, 0), "up to 100 %, not at 0 %");
        refuses(() -> Aims.rate(SLOWER.withWorth(0.6), 0.5, 1), "larger than the one worth");
        refuses(() -> Aims.rank(ABOVE, 1), "between 0 and 100 %, not at 100 %");
    }

    private static void refuses(ThrowingCallable call, String part) {
        assertThatThrownBy(call).isInstanceOf(PlanException.class).hasMessageContaining(part);
    }
}
