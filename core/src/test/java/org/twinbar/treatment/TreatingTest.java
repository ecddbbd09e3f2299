package org.twinbar.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.twinbar.treatment.Coated.Gained;
import org.twinbar.treatment.Procedure.Annealing;
import org.twinbar.treatment.Procedure.RecoatWindow;
import org.twinbar.treatment.Waiting.For;
import org.twinbar.treatment.Waiting.Known;

class TreatingTest {

    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @Test
    void annealsByRampHoldAndCool() {
        Procedure annealing = Procedure.annealing(new Annealing(20, 80, 60, 2, 1));
        assertThat(annealing.minutes())
                .as("60 K at 2 K/min, an hour, 40 K at 1 K/min")
                .isEqualTo(30 + 60 + 40, within(1e-9));
        assertThat(annealing.steps())
                .extracting(step -> step.celsius().orElse(0))
                .contains(80.0);
        assertThat(annealing.cautions()).anyMatch(it -> it.contains("fumes"));
    }

    @Test
    void coatsInTheRecoatWindow() {
        Procedure coating = Procedure.coating(3, RecoatWindow.USUAL, 24, 23);
        assertThat(coating.steps())
                .extracting(Procedure.Step::what)
                .filteredOn(it -> it.startsWith("Wait until it is tacky"))
                .hasSize(2)
                .allMatch(it -> it.contains("from 2 to 6 h"));
        assertThat(coating.minutes()).isEqualTo(60 * (2 + 2 + 24), within(1e-9));
        assertThat(coating.cautions()).isEqualTo(Cautions.MIXING);
    }

    @Test
    void hasStepsAndCautionsForEveryTreatment() {
        for (Procedure each : List.of(
                Procedure.vapour("isopropanol", 20, 48),
                Procedure.sanding(List.of(220, 400)),
                Procedure.dyeing(60, 15, 24))) {
            assertThat(each.cautions()).isNotEmpty();
            assertThat(each.steps().get(0).what()).startsWith("Weigh each specimen");
            assertThat(each.steps().get(each.steps().size() - 1).what())
                    .startsWith("Weigh and measure each specimen again");
            assertThat(Procedure.Sort.parse(each.sort().word())).isEqualTo(each.sort());
        }
    }

    /** 0.90 g on 120 cm² at 1.10 g/cm³ are 68.2 µm: METHODS.md G-5. */
    @Test
    void namesTheSpecimenThatWasCoatedThin() {
        Coated coated = Coated.of(
                List.of(
                        new Gained("A1", 0.90, 12_000),
                        new Gained("A2", 0.92, 12_000),
                        new Gained("A3", 0.88, 12_000),
                        new Gained("A4", 0.45, 12_000),
                        new Gained("A5", -0.01, 12_000)),
                1.10,
                new Scale(0.01));
        assertThat(coated.films()).hasSize(4);
        assertThat(coated.films().get(0).micrometres()).isEqualTo(68.2, within(0.05));
        assertThat(coated.findings())
                .extracting(it -> it.code())
                .containsExactly("film-none", "film-thin");
        assertThat(coated.findings().get(1).text())
                .isEqualTo("A4 was coated thin: 34.1 µm, where the middle of the others is 68.2 µm;"
                        + " it is not treated as they are.");
    }

    @Test
    void saysNothingOfFilmsThatTheScaleCannotTellApart() {
        Coated coarse = Coated.of(
                List.of(
                        new Gained("A1", 0.3, 12_000),
                        new Gained("A2", 0.3, 12_000),
                        new Gained("A3", 0.2, 12_000)),
                1.10,
                new Scale(0.1));
        assertThat(coarse.findings()).isEmpty();
        assertThat(Coated.of(List.of(new Gained("A", 1, 100)), 1, new Scale(0.1))
                        .deviation())
                .isZero();
    }

    @Test
    void tellsWhatWaitsForWhatAndUntilWhen() {
        Waiting week = new Waiting(Duration.ofDays(7), Duration.ofHours(88));
        Optional<Instant> printed = Optional.of(NOON.minus(Duration.ofDays(20)));
        assertThat(at(week, known(Optional.empty(), Optional.empty(), true)).waits())
                .isEqualTo(For.PRINT);
        assertThat(at(week, known(printed, Optional.empty(), true)).waits())
                .isEqualTo(For.TREATMENT);
        Waiting.Stand curing = at(week, known(printed, ago(6), true));
        assertThat(curing.waits()).isEqualTo(For.CURE);
        assertThat(curing.until()).hasValue(NOON.plus(Duration.ofDays(1)));
        Waiting.Stand conditioning = at(week, known(printed, ago(8), true));
        assertThat(conditioning.waits()).isEqualTo(For.CONDITION);
        assertThat(conditioning.until())
                .hasValue(NOON.minus(Duration.ofDays(1)).plus(Duration.ofHours(88)));
        assertThat(at(week, known(printed, ago(11), true)).waits()).isEqualTo(For.NOTHING);
        assertThat(at(week, known(printed, Optional.empty(), false)).waits())
                .as("an untreated one waits from its print")
                .isEqualTo(For.NOTHING);
        assertThat(at(week, known(ago(2), Optional.empty(), false)).waits()).isEqualTo(For.CURE);
        assertThat(week.at(
                                NOON,
                                new Known(
                                        printed,
                                        ago(1),
                                        true,
                                        Optional.empty(),
                                        Optional.empty(),
                                        ago(0)))
                        .waits())
                .isEqualTo(For.TESTED);
    }

    @Test
    void refusesWhatCannotBeDone() {
        refuses(() -> new Annealing(20, 20, 60, 2, 1), "Annealing holds above where it begins");
        refuses(() -> new Annealing(20, 500, 60, 2, 1), "from -30 to 300 °C, not at 500 °C");
        refuses(() -> new Annealing(20, 80, 60, 0, 1), "The rate of heating must be above zero");
        refuses(() -> new RecoatWindow(4, 2), "must end after it begins at 4 h, not at 2 h");
        refuses(() -> Procedure.coating(0, RecoatWindow.USUAL, 24, 23), "from 1 to 20 coats");
        refuses(() -> Procedure.sanding(List.of()), "Sanding needs its grits");
        refuses(() -> Procedure.vapour(" ", 3, 3), "the name of the solvent");
        refuses(() -> Procedure.Sort.parse("magic"), "There is no treatment 'magic'");
        refuses(() -> Coated.of(List.of(), 1.1, new Scale(0.1)), "No specimen was weighed");
        refuses(
                () -> new Waiting(Duration.ofHours(-1), Duration.ZERO),
                "The time of curing must lie from 0 to 3650 days, not at -1 h.");
        refuses(
                () -> new Procedure(Procedure.Sort.OTHER, List.of(), List.of()),
                "A treatment needs at least one step.");
    }

    private static Optional<Instant> ago(int days) {
        return Optional.of(NOON.minus(Duration.ofDays(days)));
    }

    private static Known known(
            Optional<Instant> printed, Optional<Instant> treated, boolean toBeTreated) {
        return new Known(
                printed,
                treated,
                toBeTreated,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Waiting.Stand at(Waiting waiting, Known known) {
        return waiting.at(NOON, known);
    }

    private static void refuses(ThrowingCallable call, String part) {
        assertThatThrownBy(call).isInstanceOf(TreatmentException.class).hasMessageContaining(part);
    }
}
