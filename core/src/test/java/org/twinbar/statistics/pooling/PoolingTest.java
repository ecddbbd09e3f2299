package org.twinbar.statistics.pooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.statistics.Published;
import org.twinbar.statistics.pooling.Pooling.Between;
import org.twinbar.statistics.pooling.Pooling.Study;

class PoolingTest {

    @ParameterizedTest
    @EnumSource(Between.class)
    void unitsOrderAndDirectionAreNothing(Between between) {
        Pooled pooled = Pooling.of(trials(effect -> effect, 1), between, 0.95);
        List<Study> other = new ArrayList<>(trials(effect -> -1000 * effect, 1000));
        Collections.reverse(other);

        Pooled turned = Pooling.of(other, between, 0.95);

        assertThat(turned.random().low()).isCloseTo(-1000 * pooled.random().high(), within(1e-6));
        assertThat(turned.fixed().high()).isCloseTo(-1000 * pooled.fixed().low(), within(1e-8));
        assertThat(turned.share()).isCloseTo(pooled.share(), within(1e-9));
        assertThat(turned.next().orElseThrow().high())
                .isCloseTo(-1000 * pooled.next().orElseThrow().low(), within(1e-5));
    }

    @ParameterizedTest
    @EnumSource(Between.class)
    void studiesThatAgreeDifferInNothing(Between between) {
        List<Study> alike = List.of(
                new Study(0.10, 0.05, 8), new Study(0.11, 0.05, 8), new Study(0.09, 0.05, 8));

        Pooled pooled = Pooling.of(alike, between, 0.95);

        assertThat(pooled.betweenVariance()).isZero();
        assertThat(pooled.share()).isZero();
        assertThat(pooled.random().value()).isCloseTo(pooled.fixed().value(), within(1e-15));
        // Agreement by luck must not make the interval narrower than the studies themselves allow.
        assertThat(pooled.random().low()).isLessThan(pooled.fixed().low());
        assertThat(pooled.random().n()).isEqualTo(24);
    }

    @Test
    void equalVariancesHaveAClosedForm() {
        List<Study> equal =
                List.of(new Study(1, 0.5, 5), new Study(3, 0.5, 5), new Study(5, 0.5, 5));

        // The variance of the effects is 4, of which 0.25 is the studies' own.
        for (Between between : Between.values()) {
            assertThat(Pooling.of(equal, between, 0.95).betweenVariance())
                    .isCloseTo(3.75, within(1e-10));
        }
    }

    @Test
    void twoStudiesSayNothingOfAThird() {
        List<Study> two = List.of(new Study(1, 0.5, 5), new Study(3, 0.5, 5));

        assertThat(Pooling.of(two, Between.PAULE_MANDEL, 0.95).next()).isEmpty();
        assertThatThrownBy(() -> Pooling.of(two.subList(0, 1), Between.PAULE_MANDEL, 0.95))
                .hasMessage("The number of studies must be at least 2, not 1.");
        assertThatThrownBy(() -> new Study(1, 0, 5))
                .hasMessageContaining("standard error of a study");
        assertThatThrownBy(() -> Pooling.of(two, Between.PAULE_MANDEL, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }

    static List<Study> trials(DoubleUnaryOperator effect, double unit) {
        double[] effects = Published.values("BCG trials", "log relative risk");
        double[] variances = Published.values("BCG trials", "variance");
        List<Study> studies = new ArrayList<>();
        for (int i = 0; i < effects.length; i++) {
            studies.add(new Study(
                    effect.applyAsDouble(effects[i]), unit * Math.sqrt(variances[i]), 100));
        }
        return studies;
    }
}
