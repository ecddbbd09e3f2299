package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.uncertainty.MonteCarlo.Drawn;

/** The published examples of JCGM 101, clause 9. */
class MonteCarloReferenceTest {

    private static final Checks CHECKS = Checks.of(MonteCarloReferenceTest.class);
    private static final MonteCarlo LONG = MonteCarlo.of(20081).withBlocks(200, 200);

    private static Source source(int number, Shape shape, double u) {
        return Source.own("X" + number, shape, u);
    }

    private static List<Source> four(Shape shape, double last) {
        return List.of(
                source(1, shape, 1),
                source(2, shape, 1),
                source(3, shape, 1),
                source(4, shape, last));
    }

    private static Model sum(List<Source> sources) {
        return errors -> new double[] {sources.stream().mapToDouble(errors::of).sum()};
    }

    @Test
    void sumOfFourNormals() {
        List<Source> sources = four(Shape.NORMAL, 1);
        Drawn drawn = MonteCarlo.of(1).run(sum(sources), sources).get(0);
        CHECKS.row("additive-normal").expects(drawn.symmetricHigh());
        assertThat(drawn.settled()).isTrue();
        assertThat(drawn.worlds()).isBetween(20_000L, 300_000L);
        assertThat(drawn.agreesWith(Propagation.linear(sum(sources), sources).get(0), 1.96))
                .isTrue();
    }

    @Test
    void sumOfFourRectangles() {
        List<Source> sources = four(Shape.RECTANGULAR, 1);
        Drawn drawn = LONG.run(sum(sources), sources).get(0);
        CHECKS.row("additive-rectangular").expects(drawn.symmetricHigh());
        CHECKS.row("additive-rectangular-low").expects(drawn.symmetricLow());
    }

    @Test
    void oneRectangleThatOutweighsTheRest() {
        List<Source> sources = four(Shape.RECTANGULAR, 10);
        Drawn drawn = LONG.run(sum(sources), sources).get(0);
        CHECKS.row("additive-large-u").expects(drawn.u());
        CHECKS.row("additive-large").expects(drawn.symmetricHigh());
        assertThat(drawn.agreesWith(Propagation.linear(sum(sources), sources).get(0), 1.96))
                .as("first order's 19.9 is not valid here")
                .isFalse();
    }

    @Test
    void massCalibration() {
        Source reference = source(1, Shape.NORMAL, 0.050);
        Source added = source(2, Shape.NORMAL, 0.020);
        Source air = source(3, Shape.RECTANGULAR, 0.1 / Math.sqrt(3));
        Source weight = source(4, Shape.RECTANGULAR, 1000 / Math.sqrt(3));
        Source standard = source(5, Shape.RECTANGULAR, 50 / Math.sqrt(3));
        Model mass = errors -> {
            double conventional = 100_000 + errors.of(reference) + 1.234 + errors.of(added);
            double density = 1.2 + errors.of(air) - 1.2;
            double buoyancy = 1 / (8000 + errors.of(weight)) - 1 / (8000 + errors.of(standard));
            return new double[] {conventional * (1 + density * buoyancy) - 100_000};
        };
        List<Source> sources = List.of(reference, added, air, weight, standard);
        Drawn drawn = LONG.run(mass, sources).get(0);
        CHECKS.row("mass").expects(drawn.mean());
        CHECKS.row("mass-u").expects(drawn.u());
        CHECKS.row("mass-low").expects(drawn.low());
        CHECKS.row("mass-high").expects(drawn.high());
        CHECKS.row("mass-first-order-u")
                .expects(Propagation.linear(mass, sources).get(0).u());
    }

    @Test
    void comparisonLoss() {
        loss("loss-0", 0, 0);
        loss("loss-10", 0.010, 0);
        loss("loss-50", 0.050, 0);
        loss("loss-r-0", 0, 0.9);
        loss("loss-r-10", 0.010, 0.9);
        loss("loss-r-50", 0.050, 0.9);
    }

    /** Y = X1² + X2², both with u = 0.005 and correlated through a source that they share. */
    private static void loss(String row, double at, double correlation) {
        Source one = source(1, Shape.NORMAL, 0.005);
        Source other = source(2, Shape.NORMAL, 0.005);
        double alone = Math.sqrt(1 - correlation * correlation);
        Model loss = errors -> {
            double first = at + errors.of(one);
            double second = correlation * errors.of(one) + alone * errors.of(other);
            return new double[] {1e6 * (first * first + second * second)};
        };
        Drawn drawn = LONG.run(loss, List.of(one, other)).get(0);
        CHECKS.row(row + "-u").expects(drawn.u());
        CHECKS.row(row + "-low").expects(drawn.low());
        CHECKS.row(row + "-high").expects(drawn.high());
    }
}
