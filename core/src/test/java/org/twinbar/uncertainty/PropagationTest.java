package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.uncertainty.Source.Reach;

class PropagationTest {

    private static final Source WIDTH = Source.own("width", Shape.NORMAL, 0.02);
    private static final Source GAIN = Source.shared("load cell gain", Shape.NORMAL, 0.01);
    private static final Source ZERO = Source.shared("load cell zero", Shape.NORMAL, 2);

    @Test
    void aDifferenceFromItselfHasNoUncertainty() {
        Measured x = new Measured(10, List.of(new Term(WIDTH, 1)));
        List<Budget> budgets = Propagation.linear(
                errors -> new double[] {x.in(errors) - x.in(errors), x.in(errors) + x.in(errors)},
                List.of(WIDTH));
        assertThat(budgets.get(0).u()).isZero();
        assertThat(budgets.get(0).shifts()).isEmpty();
        assertThat(budgets.get(1).u()).isCloseTo(0.04, within(1e-12));
    }

    /**
     * Comparison loss of JCGM 101:2008, 9.4: the mean of all worlds is x₁² + 2u², printed as 150
     * and 2551 parts in a million for x₁ of 0.010 and 0.050, where first order gives 100 and 2500.
     */
    @Test
    void theBendLeadsFromFirstOrderToTheMeanOfAllWorlds() {
        Source one = Source.own("x1", Shape.NORMAL, 0.005);
        Source two = Source.own("x2", Shape.NORMAL, 0.005);
        List<Budget> budgets = Propagation.linear(
                errors -> new double[] {
                    square(0.010 + errors.of(one)) + square(errors.of(two)),
                    square(0.050 + errors.of(one)) + square(errors.of(two)),
                    errors.of(one) + errors.of(two)
                },
                List.of(one, two));
        assertThat(budgets.get(0).value() + budgets.get(0).bend()).isCloseTo(150e-6, within(1e-9));
        assertThat(budgets.get(1).value() + budgets.get(1).bend()).isCloseTo(2550e-6, within(1e-9));
        assertThat(budgets.get(0).bends()).isTrue();
        assertThat(budgets.get(1).bends()).isTrue();
        assertThat(budgets.get(2).bends()).isFalse();
    }

    private static double square(double x) {
        return x * x;
    }

    @Test
    void aGainCancelsInARatioAndAZeroDoesNot() {
        Model ratio = errors -> {
            double treated = 300 * (1 + errors.of(GAIN)) + errors.of(ZERO);
            double control = 200 * (1 + errors.of(GAIN)) + errors.of(ZERO);
            return new double[] {treated / control};
        };
        Budget budget = Propagation.linear(ratio, List.of(GAIN, ZERO)).get(0);
        assertThat(budget.shifts().getOrDefault(GAIN, 0.0)).isCloseTo(0, within(1e-15));
        // d(T+z)/(C+z)/dz at 0 is 1/C − T/C²; central differences differ from it by z²/C².
        assertThat(budget.shifts().get(ZERO))
                .isCloseTo(2 * (1 / 200.0 - 300 / 40_000.0), within(1e-6));
    }

    @Test
    void aZeroCancelsInADifferenceAndAGainDoesNot() {
        Model difference = errors -> new double[] {
            (300 * (1 + errors.of(GAIN)) + errors.of(ZERO))
                    - (200 * (1 + errors.of(GAIN)) + errors.of(ZERO))
        };
        Budget budget = Propagation.linear(difference, List.of(GAIN, ZERO)).get(0);
        assertThat(budget.shifts()).doesNotContainKey(ZERO);
        assertThat(budget.shifts().get(GAIN)).isCloseTo(1, within(1e-12));
    }

    @Test
    void centralDifferencesAreExactForAParabola() {
        Budget budget = Propagation.linear(
                        errors -> new double[] {(3 + errors.of(WIDTH)) * (3 + errors.of(WIDTH))},
                        List.of(WIDTH))
                .get(0);
        assertThat(budget.shifts().get(WIDTH)).isCloseTo(6 * 0.02, within(1e-12));
    }

    @Test
    void oneSideServesWhereTheOtherHasNoResult() {
        Model root = errors -> new double[] {Math.sqrt(0.01 + errors.of(WIDTH))};
        Budget budget = Propagation.linear(root, List.of(WIDTH)).get(0);
        assertThat(budget.shifts().get(WIDTH)).isEqualTo(Math.sqrt(0.03) - Math.sqrt(0.01));
        Model gone = errors -> new double[] {errors == Errors.NONE ? 1 : Double.NaN};
        assertThat(Propagation.linear(gone, List.of(WIDTH)).get(0).u()).isZero();
        Model never = errors -> new double[] {errors == Errors.NONE ? Double.NaN : 1};
        assertThat(Propagation.linear(never, List.of(WIDTH)).get(0).shifts()).isEmpty();
    }

    @Test
    void aSourceOfNoSizeCostsNoWorld() {
        int[] runs = {0};
        Source none = Source.own("none", Shape.NORMAL, 0);
        Propagation.linear(
                errors -> {
                    runs[0]++;
                    return new double[] {1};
                },
                List.of(none, WIDTH));
        assertThat(runs[0]).isEqualTo(3);
    }

    @Test
    void knownValuesAreNotCalculatedAgain() {
        int[] atRest = {0};
        Propagation.linear(
                new double[] {1},
                errors -> {
                    atRest[0] += errors == Errors.NONE ? 1 : 0;
                    return new double[] {1};
                },
                List.of(WIDTH));
        assertThat(atRest[0]).isZero();
    }

    @Test
    void aMeasuredValueMovesWithItsTerms() {
        Measured x = new Measured(5, List.of(new Term(WIDTH, 2), new Term(GAIN, -1)));
        assertThat(x.in(Errors.NONE)).isEqualTo(5);
        assertThat(x.in(Errors.of(java.util.Map.of("width", 0.5, "load cell gain", 0.25))))
                .isEqualTo(5.75);
        assertThat(Measured.exact(3).in(Errors.of(WIDTH, 1))).isEqualTo(3);
        assertThatThrownBy(() -> Measured.exact(Double.NaN)).hasMessageContaining("must be finite");
    }

    @Test
    void sourcesRefuseWhatCannotBe() {
        assertThatThrownBy(() -> Source.own(" ", Shape.NORMAL, 1)).hasMessageContaining("identity");
        assertThatThrownBy(() -> Source.own("x", Shape.NORMAL, -1))
                .hasMessageContaining("zero or more");
        assertThatThrownBy(() -> Source.own("x", Shape.NORMAL, Double.NaN))
                .hasMessageContaining("zero or more");
        assertThatThrownBy(() -> new Source("x", Reach.OWN, Shape.NORMAL, 1, 0))
                .hasMessageContaining("not above 0");
    }
}
