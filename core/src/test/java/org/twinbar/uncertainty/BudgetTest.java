package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.uncertainty.Source.Reach;

class BudgetTest {

    private static final Checks CHECKS = Checks.of(BudgetTest.class);

    /** Each source has a standard uncertainty of the size given, and moves the result by it. */
    private static Budget of(double[] sizes, double[] freedom) {
        Map<Source, Double> shifts = new LinkedHashMap<>();
        for (int i = 0; i < sizes.length; i++) {
            shifts.put(
                    new Source("s" + i, Reach.OWN, Shape.STUDENT, sizes[i], freedom[i]), sizes[i]);
        }
        return new Budget(0, shifts);
    }

    @Test
    void endGaugeOfTheGum() {
        Budget budget = of(new double[] {25, 9.7, 2.9, 16.6}, new double[] {18, 25.6, 50, 2});
        CHECKS.row("gum-h1-u").expects(budget.u());
        CHECKS.row("gum-h1-freedom").expects(budget.degreesOfFreedom());
    }

    @Test
    void threeComponentsOfTheGum() {
        Budget budget = of(new double[] {0.25, 0.57, 0.82}, new double[] {9, 4, 14});
        CHECKS.row("gum-g4-u").expects(budget.u());
        CHECKS.row("gum-g4-freedom").expects(budget.degreesOfFreedom());
    }

    @Test
    void sharesOfTheVarianceAddUpToOne() {
        Budget budget = of(new double[] {3, 4}, new double[] {10, 10});
        assertThat(budget.u()).isEqualTo(5);
        double sum =
                budget.shifts().keySet().stream().mapToDouble(budget::share).sum();
        assertThat(sum).isCloseTo(1, within(1e-15));
        assertThat(budget.share(Source.own("stranger", Shape.NORMAL, 1))).isZero();
    }

    @Test
    void ownAndSharedAreToldApart() {
        Map<Source, Double> shifts = new LinkedHashMap<>();
        shifts.put(Source.own("a", Shape.NORMAL, 1), 3.0);
        shifts.put(Source.shared("b", Shape.NORMAL, 1), -4.0);
        Budget budget = new Budget(10, shifts);
        assertThat(budget.u(Reach.OWN)).isEqualTo(3);
        assertThat(budget.u(Reach.SHARED)).isEqualTo(4);
        assertThat(budget.u()).isEqualTo(5);
    }

    @Test
    void sizesThatAreKnownHaveNoEndToTheirFreedom() {
        Budget known = new Budget(1, Map.of(Source.own("a", Shape.NORMAL, 1), 1.0));
        assertThat(known.degreesOfFreedom()).isInfinite();
        Budget nothing = new Budget(1, Map.of());
        assertThat(nothing.u()).isZero();
        assertThat(nothing.degreesOfFreedom()).isInfinite();
    }
}
