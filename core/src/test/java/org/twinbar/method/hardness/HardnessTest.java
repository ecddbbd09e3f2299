package org.twinbar.method.hardness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class HardnessTest {

    /** Five places on a durometer without a shared error. */
    static Readings.Builder places() {
        Bench bench = Bench.usual()
                .withResolution("durometer", Quantity.parse("0.5 HD"))
                .withZero("durometer", Quantity.parse("0 HD"));
        return Readings.of("D1", "plain", bench)
                .number(HardnessForm.HARDNESS, 71.5, 73, 69.5, 72, 74);
    }

    private static String text(Readings.Builder readings, String code) {
        Result result = Result.of(new Hardness(), readings.build());
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("hardness")).get().isInstanceOf(Hardness.class);
    }

    @Test
    void givesTheMeanAndTheSoftestPlace() {
        Result result = Result.of(new Hardness(), places().build());
        assertThat(result.yields().get(HardnessForm.SOFTEST)).isEqualTo(new Yield.Value(69.5));
        assertThat(result.findings()).isEmpty();
    }

    @Test
    void aDurometersZeroMovesMeanAndSoftestAlike() {
        Bench bench = Bench.usual()
                .withResolution("durometer", Quantity.parse("0 HD"))
                .withZero("durometer", Quantity.parse("1 HD"));
        Result result = Result.of(
                new Hardness(),
                Readings.of("D1", "plain", bench)
                        .number(HardnessForm.HARDNESS, 70)
                        .build());
        assertThat(result.budgets().get(HardnessForm.MEAN).u()).isCloseTo(1, within(1e-9));
        assertThat(result.budgets().get(HardnessForm.SOFTEST).u()).isCloseTo(1, within(1e-9));
    }

    @Test
    void findings() {
        Readings.Builder odd = Readings.of("D1", "plain", Bench.usual())
                .number(HardnessForm.HARDNESS, 95, 96)
                .number(HardnessForm.THICKNESS, 4)
                .number(HardnessForm.PIECES, 4)
                .number(HardnessForm.EDGE, 5)
                .number(HardnessForm.FILM, 0.1);
        assertThat(text(odd, "few-places")).startsWith("Read at 2 places");
        assertThat(text(odd, "specimen-thin")).startsWith("It is 4.0 mm thick");
        assertThat(text(odd, "stacked-high")).startsWith("It is a stack of 4 pieces");
        assertThat(text(odd, "near-edge")).startsWith("A place lay 5.0 mm");
        assertThat(text(odd, "outside-range")).startsWith("The hardness is 95.5 HD");
        assertThat(text(odd, "reads-through-film")).startsWith("A film of 0.10 mm");
    }
}
