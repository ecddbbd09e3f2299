package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.uncertainty.MonteCarlo.Drawn;
import org.twinbar.uncertainty.Source.Reach;

class MonteCarloTest {

    @Test
    void toleranceIsHalfAUnitOfTheSecondDigit() {
        assertThat(MonteCarlo.tolerance(0.00035)).isCloseTo(5e-6, within(1e-18));
        assertThat(MonteCarlo.tolerance(2)).isCloseTo(0.05, within(1e-15));
        assertThat(MonteCarlo.tolerance(99.6)).isCloseTo(5, within(1e-12));
        assertThat(MonteCarlo.tolerance(0)).isZero();
    }

    @ParameterizedTest
    @EnumSource(Shape.class)
    void everyShapeHasTheStandardUncertaintyThatItSays(Shape shape) {
        Source source = new Source("x", Reach.OWN, shape, 3, Double.POSITIVE_INFINITY);
        Drawn drawn = MonteCarlo.of(4)
                .run(errors -> new double[] {errors.of(source)}, List.of(source))
                .get(0);
        assertThat(drawn.mean()).isCloseTo(0, within(0.05));
        assertThat(drawn.u()).isCloseTo(3, within(0.05));
    }

    @Test
    void studentsTIsWiderThanItsScale() {
        Source source = new Source("x", Reach.OWN, Shape.STUDENT, 1, 4);
        Drawn drawn = MonteCarlo.of(4)
                .run(errors -> new double[] {errors.of(source)}, List.of(source))
                .get(0);
        // t with 4 degrees of freedom: 97.5 % point 2.7764 (METHODS M row 162).
        assertThat(drawn.symmetricHigh()).isCloseTo(2.7764, within(0.06));
    }

    @Test
    void oneSeedDrawsOneSetOfWorlds() {
        Source source = Source.own("x", Shape.NORMAL, 1);
        Model square = errors -> new double[] {errors.of(source) * errors.of(source)};
        Drawn one = MonteCarlo.of(8).run(square, List.of(source)).get(0);
        assertThat(MonteCarlo.of(8).run(square, List.of(source)).get(0)).isEqualTo(one);
        assertThat(MonteCarlo.of(9).run(square, List.of(source)).get(0)).isNotEqualTo(one);
    }

    @Test
    void worldsWithoutAResultAreCounted() {
        Source source = Source.own("x", Shape.NORMAL, 1);
        Model root = errors -> new double[] {Math.sqrt(errors.of(source)), Double.NaN};
        List<Drawn> drawn = MonteCarlo.of(8).withBlocks(2, 4).run(root, List.of(source));
        assertThat(drawn.get(0).without()).isGreaterThan(1000);
        assertThat(drawn.get(1).worlds()).isZero();
        assertThat(drawn.get(1).mean()).isNaN();
    }

    @Test
    void aRunThatDoesNotSettleSaysSo() {
        Source source = new Source("x", Reach.OWN, Shape.STUDENT, 1, 1);
        Drawn drawn = MonteCarlo.of(8)
                .withBlocks(2, 3)
                .run(errors -> new double[] {errors.of(source)}, List.of(source))
                .get(0);
        assertThat(drawn.settled()).isFalse();
        assertThat(drawn.worlds()).isEqualTo(30_000);
    }

    @Test
    void whatCannotBeIsRefused() {
        assertThatThrownBy(() -> MonteCarlo.of(1).withCoverage(1))
                .hasMessageContaining("between 0 and 1");
        assertThatThrownBy(() -> MonteCarlo.of(1).withBlocks(1, 5))
                .hasMessageContaining("from 2 or more");
    }
}
