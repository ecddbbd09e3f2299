package org.twinbar.study.calculation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.planning.resolving.Resolution;
import org.twinbar.planning.resolving.Resolution.Lever;
import org.twinbar.study.bench.BenchAnswer;
import org.twinbar.study.bench.BenchAsk;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.file.TestSheet;

class BenchLookTest {

    private static final Methods METHODS = Methods.builtIn();

    static Stream<String> methods() {
        return METHODS.all().stream().map(it -> it.description().name());
    }

    private static boolean hasNumbers(String name) {
        return METHODS.named(name).orElseThrow().description().properties().stream()
                .anyMatch(it -> it.scale() == Property.Scale.RATIO
                        || it.scale() == Property.Scale.INTERVAL);
    }

    /** Every method is looked at by its description and its worked example alone. */
    @ParameterizedTest
    @MethodSource("methods")
    void everyMethodTellsWhatItsBenchResolves(String name) {
        if (!hasNumbers(name)) {
            assertThatThrownBy(() -> BenchLook.of(METHODS, BenchAsk.of(name), Shelf.EMPTY))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("no number that could be compared");
            return;
        }
        BenchAnswer answer = BenchLook.of(METHODS, BenchAsk.of(name), Shelf.EMPTY);
        Resolution found = answer.resolution();
        assertThat(found.fromInstruments().amount()).as("from instruments").isPresent();
        assertThat(found.withScatter().amount().orElse(Double.POSITIVE_INFINITY))
                .isGreaterThanOrEqualTo(
                        found.fromInstruments().amount().orElseThrow() * (1 - 1e-12));
        assertThat(found.limits().stream().mapToDouble(Resolution.Part::share).sum())
                .isBetween(found.limits().isEmpty() ? 0.0 : 1 - 1e-9, 1 + 1e-9);
        assertThat(answer.findings()).extracting(Finding::code).contains("typical-of-example");
        assertThat(answer.typical()).contains("worked example");
    }

    /** Slower heating lags less: found from the channel of time, not from a word for ovens. */
    @Test
    void slowerHeatingIsFoundForTheOven() {
        Resolution found =
                BenchLook.of(METHODS, BenchAsk.of("oven"), Shelf.EMPTY).resolution();
        assertThat(found.apart()).isPositive();
        Lever slower = found.levers().stream()
                .filter(it -> it.change().equals("the same at half the speed"))
                .findFirst()
                .orElseThrow(() -> new AssertionError(found.levers().toString()));
        assertThat(slower.fromInstruments().amount().orElseThrow())
                .isLessThan(0.65 * found.fromInstruments().amount().orElseThrow());
    }

    @Test
    void aLighterHammerIsFoundForThePendulum() {
        Resolution found =
                BenchLook.of(METHODS, BenchAsk.of("impact"), Shelf.EMPTY).resolution();
        assertThat(found.levers())
                .extracting(Lever::change)
                .contains("What a scale shows under the level arm: 86 g instead of 172 g");
    }

    @Test
    void theScatterAndTheWorthOfAPersonAreTaken() {
        BenchAsk ask = new BenchAsk(
                TestSheet.of("tensile"),
                Optional.of("strength"),
                8,
                Optional.of("6%"),
                Optional.of("5%"));
        BenchAnswer answer = BenchLook.of(METHODS, ask, Shelf.EMPTY);
        Resolution found = answer.resolution();
        assertThat(found.scatter() / found.value()).isBetween(0.0599999, 0.0600001);
        // The same as 'size --scatter 6% --per-group 8' tells.
        assertThat(found.withScatter().share().orElseThrow()).isBetween(0.0947, 0.0948);
        assertThat(answer.findings()).extracting(Finding::code).contains("bench-too-coarse");
    }

    @Test
    void instrumentsThatAreTooCoarseAreTold() {
        BenchAsk ask = new BenchAsk(
                TestSheet.of("impact"), Optional.empty(), 5, Optional.empty(), Optional.of("2%"));
        BenchAnswer answer = BenchLook.of(METHODS, ask, Shelf.EMPTY);
        assertThat(answer.findings()).extracting(Finding::code).contains("instruments-too-coarse");
    }

    @Test
    void whatCannotBeAskedIsRefusedInASentence() {
        assertThatThrownBy(() -> BenchLook.of(METHODS, BenchAsk.of("tensil"), Shelf.EMPTY))
                .hasMessageContaining("did you mean 'tensile'");
        assertThatThrownBy(() -> BenchLook.of(METHODS, ask("leak", "leak_free", "1%"), Shelf.EMPTY))
                .hasMessageContaining("leak free is no number");
        assertThatThrownBy(() ->
                        BenchLook.of(METHODS, ask("oven", "onset_temperature", "5%"), Shelf.EMPTY))
                .hasMessageContaining("no true zero");
        assertThatThrownBy(() -> BenchLook.of(METHODS, ask("tensile", "colour", "5%"), Shelf.EMPTY))
                .hasMessageContaining("yields no 'colour'");
    }

    private static BenchAsk ask(String method, String property, String scatter) {
        return new BenchAsk(
                TestSheet.of(method),
                Optional.of(property),
                5,
                Optional.of(scatter),
                Optional.empty());
    }
}
