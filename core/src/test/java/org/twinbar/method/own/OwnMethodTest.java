package org.twinbar.method.own;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

class OwnMethodTest {

    private static Readings.Builder wedge(TestMethod method) {
        return Planned.specimen()
                .number(Planned.input(method, "width"), 10)
                .number(Planned.input(method, "thickness"), 4)
                .channel(Planned.channel(method, "force"), new double[] {0, 100, 200, 50})
                .channel(Planned.channel(method, "travel"), new double[] {1, 2, 3, 4});
    }

    @Test
    void takesNumbersFromTheCurve() {
        TestMethod method = Planned.sample();
        assertThat(Planned.value(method, wedge(method), "stress")).isCloseTo(5, within(1e-12));
        assertThat(Planned.value(method, wedge(method), "work")).isCloseTo(0.325, within(1e-12));
        assertThat(Planned.value(method, wedge(method), "lifted_mass"))
                .isCloseTo(50 / 9.80665, within(1e-12));
        assertThat(Planned.value(method, wedge(method), "travel_at_peak"))
                .isCloseTo(2, within(1e-12));
    }

    @Test
    void aPeakIsAMarkThatAPersonMayMove() {
        TestMethod method = Planned.sample();
        Mark mark = method.description().marks().get(0);
        assertThat(method.description().marks())
                .containsExactly(new Mark("force_peak", "Peak of 'Force'"));
        assertThat(Planned.value(method, wedge(method).mark(mark, 1), "stress"))
                .isCloseTo(2.5, within(1e-12));
    }

    @Test
    void hasABudgetLikeAnyOther() {
        TestMethod method = Planned.sample();
        Result result = Result.of(method, wedge(method).build());
        assertThat(result.budgets()
                        .get(method.description().property("stress").orElseThrow())
                        .shifts()
                        .keySet())
                .extracting(source -> source.identity())
                .containsExactlyInAnyOrder(
                        "S1 width resolution",
                        "S1 thickness resolution",
                        "caliper zero",
                        "load cell gain",
                        "load cell zero",
                        "S1 force at peak resolution");
    }

    /** What any record of force may show is said of one's own as well. */
    @Test
    void aCurveOfForceIsLookedAtLikeAnyOther() {
        TestMethod method = Planned.sample();
        double[] clipped = new double[100];
        double[] travel = new double[100];
        for (int row = 0; row < 100; row++) {
            clipped[row] = Math.min(2 * row, 120);
            travel[row] = row;
        }
        Result result = Result.of(
                method,
                Planned.specimen()
                        .number(Planned.input(method, "width"), 10)
                        .number(Planned.input(method, "thickness"), 4)
                        .channel(Planned.channel(method, "force"), clipped)
                        .channel(Planned.channel(method, "travel"), travel)
                        .build());
        assertThat(result.findings()).extracting(Finding::code).containsExactly("saturated");
    }

    @Test
    void averagesRowsThatHaveANumber() {
        TestMethod method = Planned.begin()
                .channel("temperature", "°C", Kind.THERMOMETER)
                .result("mean_temperature", "°C", "mean(temperature)")
                .method();
        Readings.Builder readings = Planned.specimen()
                .channel(Planned.channel(method, "temperature"), new double[] {20, Double.NaN, 24});
        assertThat(Planned.value(method, readings, "mean_temperature"))
                .isCloseTo(22, within(1e-12));
    }

    @Test
    void temperaturesAreConvertedWithTheirZero() {
        TestMethod method = Planned.begin()
                .input("before", "°C", Kind.THERMOMETER)
                .input("after", "°F", Kind.THERMOMETER)
                .result("rise", "K", "after - before")
                .result("highest", "°C", "max(before, after)")
                .method();
        Readings.Builder readings = Planned.specimen()
                .number(Planned.input(method, "before"), 20)
                .number(Planned.input(method, "after"), 86);
        assertThat(Planned.value(method, readings, "rise")).isCloseTo(10, within(1e-9));
        assertThat(Planned.value(method, readings, "highest")).isCloseTo(30, within(1e-9));
    }

    @Test
    void saysWhatWasNotRead() {
        TestMethod method = Planned.sample();
        assertThat(Planned.yield(method, Planned.specimen(), "stress"))
                .isEqualTo(new Yield.Missing("'Force' was not read"));
        Readings.Builder noThickness = Planned.specimen()
                .number(Planned.input(method, "width"), 10)
                .channel(Planned.channel(method, "force"), new double[] {1, 2});
        assertThat(Planned.yield(method, noThickness, "stress"))
                .isEqualTo(new Yield.Missing("'Thickness' was not read"));
        assertThat(Planned.yield(method, noThickness, "lifted_mass"))
                .isInstanceOf(Yield.Value.class);
    }

    @Test
    void aDivisionByZeroIsNoNumber() {
        TestMethod method = Planned.begin()
                .input("width", "mm", Kind.CALIPER)
                .result("inverse", "1/mm", "1 / width")
                .method();
        Readings.Builder readings = Planned.specimen().number(Planned.input(method, "width"), 0);
        assertThat(Planned.yield(method, readings, "inverse"))
                .isEqualTo(new Yield.Missing("these readings give no finite number"));
    }

    @Test
    void beyondItsValidityAResultIsFlagged() {
        TestMethod method = Planned.begin()
                .input("width", "mm", Kind.CALIPER)
                .result("face", "mm²", "width^2", Limits.between(1, 50))
                .method();
        Result within = Result.of(
                method,
                Planned.specimen().number(Planned.input(method, "width"), 3).build());
        assertThat(within.findings()).isEmpty();
        Result beyond = Result.of(
                method,
                Planned.specimen().number(Planned.input(method, "width"), 30).build());
        assertThat(beyond.findings()).extracting(Finding::code).containsExactly("outside-method");
        assertThat(beyond.findings().get(0).text())
                .startsWith("Face is 900 mm²; the method was written for 1 to 50");
    }

    @Test
    void aResultMustMeasureWhatItsUnitSays() {
        Planned plan = Planned.begin()
                .input("force", "N", Kind.LOAD_CELL)
                .input("width", "mm", Kind.CALIPER)
                .result("stress", "MPa", "force / width");
        assertThatThrownBy(plan::method)
                .isInstanceOf(FormulaException.class)
                .hasMessageStartingWith("formula of 'stress': it gives ")
                .hasMessageEndingWith(", but MPa is a stress or pressure");
        Planned rise = Planned.begin()
                .input("before", "°C", Kind.THERMOMETER)
                .input("after", "°C", Kind.THERMOMETER)
                .result("rise", "°C", "after - before");
        assertThatThrownBy(rise::method)
                .hasMessage("formula of 'rise': it gives a difference of temperatures, so its unit"
                        + " must be K, not °C");
    }

    @Test
    void aFormulaNamesOnlyWhatStandsBeforeIt() {
        Planned circle = Planned.begin()
                .input("width", "mm", Kind.CALIPER)
                .step("one", "other * 2")
                .step("other", "width")
                .result("side", "mm", "one");
        assertThatThrownBy(circle::method)
                .hasMessage("formula of 'one': 'other * 2' names 'other', which is none of what"
                        + " stands before it: width");
    }

    @Test
    void aResultThatHangsOnNoReadingIsRefused() {
        Planned constant = Planned.begin()
                .input("width", "mm", Kind.CALIPER)
                .setting("gravity", "m/s2", 9.80665)
                .step("twice", "2 * gravity")
                .result("pull", "m/s2", "twice");
        assertThatThrownBy(constant::method)
                .hasMessage("formula of 'pull': it depends on nothing that is read");
    }

    @Test
    void theCurveIsReadAFewTimesOnly() {
        Planned plan = Planned.begin().channel("force", "N", Kind.LOAD_CELL);
        plan.result("much", "N", "mean(force)" + " + mean(force)".repeat(20));
        assertThatThrownBy(plan::method)
                .hasMessage("formula of 'much': the formulas read the curve more than 20 times");
    }

    @Test
    void namesStandForOneThing() {
        assertThatThrownBy(() -> Planned.begin()
                        .input("width", "mm", Kind.CALIPER)
                        .step("width", "2")
                        .result("side", "mm", "width")
                        .plan())
                .hasMessage("the name 'width' stands for two things");
        assertThatThrownBy(() -> Planned.begin()
                        .input("peak", "mm", Kind.CALIPER)
                        .result("side", "mm", "peak")
                        .plan())
                .hasMessage("the name 'peak' is a function or constant of formulas");
        assertThatThrownBy(() -> Planned.begin()
                        .step("Side", "2")
                        .result("side", "mm", "Side")
                        .plan())
                .hasMessageStartingWith("the name 'Side' must be small letters and digits");
    }

    @Test
    void aPlanIsNotBoundless() {
        Planned plan = Planned.begin().input("width", "mm", Kind.CALIPER);
        for (int i = 0; i < 60; i++) {
            plan.step("s" + i, "width");
        }
        plan.result("side", "mm", "width");
        assertThatThrownBy(plan::plan)
                .hasMessage("the method has 62 inputs, channels, settings, steps and results,"
                        + " at most 50 are allowed");
        assertThatThrownBy(
                        () -> Planned.begin().input("width", "mm", Kind.CALIPER).plan())
                .hasMessage("the method yields nothing: it needs a result");
    }

    @Test
    void aPlanNeedsANameATitleAndAVersion() {
        var wanted = Planned.begin()
                .input("width", "mm", Kind.CALIPER)
                .result("side", "mm", "width")
                .plan();
        assertThatThrownBy(() -> named(wanted, "Own Test", 1, "T", "S"))
                .hasMessage("the name 'Own Test' must be small letters, words joined by hyphens");
        assertThatThrownBy(() -> named(wanted, "own", 0, "T", "S"))
                .hasMessage("the version is 0, must be 1 or more");
        assertThatThrownBy(() -> named(wanted, "own", 1, " ", "S"))
                .hasMessage("the title is empty");
        assertThatThrownBy(() -> named(wanted, "own", 1, "T", ""))
                .hasMessage("the standard is empty");
    }

    private static OwnPlan named(
            OwnPlan plan, String name, int version, String title, String standard) {
        return new OwnPlan(
                name,
                version,
                title,
                standard,
                plan.asks(),
                List.of(),
                List.of(),
                plan.results(),
                List.of());
    }
}
