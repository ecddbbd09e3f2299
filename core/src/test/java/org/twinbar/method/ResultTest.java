package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Kind;
import org.twinbar.statistics.Normal;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Errors;
import org.twinbar.uncertainty.Model;
import org.twinbar.uncertainty.MonteCarlo;
import org.twinbar.uncertainty.Propagation;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

class ResultTest {

    private static final Input FORCE = Input.of("force", "Force", "N", Kind.LOAD_CELL);
    private static final Input AREA = Input.of("area", "Area", "mm2", Kind.NONE);
    private static final Property STRESS =
            Property.of("stress", "Stress", "MPa", Property.Scale.RATIO);
    private static final Property SLOPE =
            Property.of("slope", "Slope", "MPa", Property.Scale.RATIO);

    /** A method that is only what a test says it is. */
    private record Tried(BiConsumer<Readings, Outcome.Builder> calculation) implements TestMethod {

        @Override
        public Description description() {
            return new Description(
                    "tried",
                    1,
                    "Tried",
                    "none",
                    List.of(Ask.required("What?", List.of(FORCE))),
                    List.of(),
                    List.of(),
                    List.of(STRESS, SLOPE),
                    List.of());
        }

        @Override
        public Outcome calculate(Readings readings) {
            Outcome.Builder out = Outcome.of(description());
            calculation.accept(readings, out);
            return out.build();
        }
    }

    private static Readings readings(String specimen, double force) {
        return Readings.of(specimen, "plain", Bench.usual())
                .number(FORCE, force)
                .number(AREA, 40)
                .build();
    }

    private static final TestMethod STRESS_ALONE = new Tried((readings, out) -> {
        out.value(STRESS, readings.number(FORCE) / readings.number(AREA));
        out.restMissing("no curve");
    });

    @Test
    void givesEachNumberABudgetAndTheRestAReason() {
        Result result = Result.of(STRESS_ALONE, readings("A1", 800));
        assertThat(result.yields())
                .containsEntry(STRESS, new Yield.Value(20))
                .containsEntry(SLOPE, new Yield.Missing("no curve"));
        assertThat(result.budgets()).containsOnlyKeys(STRESS);
        Budget budget = result.budgets().get(STRESS);
        assertThat(budget.shifts().keySet())
                .extracting(Source::identity)
                .containsExactlyInAnyOrder(
                        "A1 force resolution", "load cell gain", "load cell zero");
        // Usual load cell: gain 0.5 %, zero 0.2 N, step 0.1 N, over 40 mm².
        assertThat(budget.u()).isCloseTo(Math.sqrt(16 + 0.04 + 0.01 / 12) / 40, within(1e-9));
    }

    @Test
    void theScatterOfAFitIsASourceOfItsOwn() {
        TestMethod fitted = new Tried((readings, out) -> {
            out.missing(STRESS, "not asked");
            out.put(SLOPE, new Yield.Fitted(2000, 30, 17));
        });
        Budget budget = Result.of(fitted, readings("A1", 800)).budgets().get(SLOPE);
        assertThat(budget.u()).isEqualTo(30);
        assertThat(budget.degreesOfFreedom()).isCloseTo(17, within(1e-9));
        assertThat(budget.shifts().keySet())
                .extracting(Source::identity)
                .containsExactly("A1 slope fit");
        assertThat(budget.u(Source.Reach.OWN)).isEqualTo(30);
    }

    /** The chances of a square of a normal variable in closed form, against the drawn ends. */
    @Test
    void whereANumberBendsWorldsAreDrawnAndBothAreSaid() {
        TestMethod square = new Tried((readings, out) -> {
            double force = readings.number(FORCE);
            out.value(STRESS, force * force);
            out.value(SLOPE, force);
        });
        Readings read = readings("A1", 0.5);
        Result result = Result.of(square, read);
        assertThat(result.budgets().get(SLOPE).bends()).isFalse();
        Result whole = result.whereItBends(square, read, MonteCarlo.of(7).withBlocks(10, 10));
        assertThat(whole.findings()).hasSize(1);
        Finding finding = whole.findings().get(0);
        assertThat(finding.code()).isEqualTo("bends");
        assertThat(finding.arguments()).startsWith("Stress").endsWith("MPa").contains("100000");
        double u = result.budgets().get(SLOPE).u();
        assertThat(u).isCloseTo(0.202, within(0.001));
        assertThat(chanceOfSquareBelow(Double.parseDouble(finding.arguments().get(6)), 0.5, u))
                .isCloseTo(0.025, within(0.002));
        assertThat(chanceOfSquareBelow(Double.parseDouble(finding.arguments().get(7)), 0.5, u))
                .isCloseTo(0.975, within(0.002));
    }

    private static double chanceOfSquareBelow(double square, double mean, double u) {
        Normal normal = Normal.STANDARD;
        return normal.below((Math.sqrt(square) - mean) / u)
                - normal.below((-Math.sqrt(square) - mean) / u);
    }

    @Test
    void whereACurveWouldBeWorkedThroughNoWorldsAreDrawnAndThatIsSaid() {
        Source force = Source.own("A1 force", Shape.NORMAL, 0.2);
        Budget bent = new Budget(1, Map.of(force, 0.2), 0.04);
        assertThat(bent.bends()).isTrue();
        Finding undrawn = new Bending(STRESS, bent).undrawn();
        assertThat(undrawn.code()).isEqualTo("bends-not-drawn");
        assertThat(undrawn.text())
                .startsWith("Stress doesn't go straight")
                .contains("of A1 force most", "off by 0.040", "0.20 MPa");
    }

    @Test
    void boundsAndWordsHaveNoBudget() {
        TestMethod bound = new Tried((readings, out) -> {
            out.put(STRESS, new Yield.AtLeast(20, "shoulder"));
            out.put(SLOPE, new Yield.Below(3, "limit"));
        });
        assertThat(Result.of(bound, readings("A1", 800)).budgets()).isEmpty();
    }

    /** Rule 4 of the design, through Readings and not by hand: two specimens, one load cell. */
    @Test
    void aLoadCellsGainCancelsInTheRatioOfTwoSpecimensAndItsZeroDoesNot() {
        Readings treated = readings("T1", 900);
        Readings control = readings("C1", 600);
        Model ratio = errors -> new double[] {stress(treated, errors) / stress(control, errors)};
        ratio.at(Errors.NONE);
        Budget budget = Propagation.linear(ratio, treated.sources()).get(0);
        assertThat(shift(budget, "load cell gain")).isCloseTo(0, within(1e-12));
        assertThat(shift(budget, "load cell zero"))
                .isCloseTo(0.2 * (1 / 600.0 - 900 / 360_000.0), within(1e-8));
    }

    private static double stress(Readings readings, Errors errors) {
        return ((Yield.Value)
                        STRESS_ALONE.calculate(readings.in(errors)).yields().get(STRESS))
                .value();
    }

    private static double shift(Budget budget, String identity) {
        return budget.shifts().entrySet().stream()
                .filter(entry -> entry.getKey().identity().equals(identity))
                .mapToDouble(entry -> entry.getValue())
                .sum();
    }

    @Test
    void aMethodThatForgetsAPropertyIsFoundOut() {
        TestMethod forgetful = new Tried((readings, out) -> out.value(STRESS, 1));
        assertThatThrownBy(() -> Result.of(forgetful, readings("A1", 800)))
                .hasMessage("tried says nothing of slope");
    }

    @Test
    void aResultIsNeverNaN() {
        assertThatThrownBy(() -> new Yield.Value(Double.NaN)).hasMessageContaining("finite");
        assertThatThrownBy(() -> new Yield.AtLeast(Double.POSITIVE_INFINITY, "x"))
                .hasMessageContaining("finite");
        assertThatThrownBy(() -> new Yield.Between(2, 1, "x")).hasMessageContaining("between");
        assertThatThrownBy(() -> new Yield.Missing(" ")).hasMessageContaining("reason");
        assertThatThrownBy(() -> new Yield.Fitted(1, -1, 3)).hasMessageContaining("zero or more");
    }
}
