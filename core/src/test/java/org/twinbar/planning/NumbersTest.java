package org.twinbar.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.twinbar.planning.Controls.Treatment;
import org.twinbar.planning.Numbers.Groups;
import org.twinbar.statistics.PlannedEffect;

class NumbersTest {

    private static final Aim FIFTEEN = new Aim.Change(new PlannedEffect.Ratio(1.15, 1.05, 0.06));

    @Test
    void showsWhatEachNumberTellsAndTakes() {
        Effort effort = new Effort(4.2, 0.5, 0.4, 0.25, new Effort.Prices(25, 80));
        Numbers numbers = Numbers.of(FIFTEEN, 0.8, new Groups(2, 1), effort);
        assertThat(numbers.enough()).hasValue(8);
        assertThat(numbers.rows()).extracting(Numbers.Row::perGroup).contains(3, 5, 8, 12);
        assertThat(numbers.rows())
                .as("more specimens tell smaller effects")
                .isSortedAccordingTo(java.util.Comparator.comparingDouble(
                        row -> -row.smallest().orElseThrow()));
        Numbers.Row eight = row(numbers, 8);
        assertThat(eight.power()).isGreaterThan(0.8);
        assertThat(eight.cost().specimens()).isEqualTo(16);
        assertThat(eight.cost().filamentGrams()).isEqualTo(67.2, within(1e-9));
        assertThat(eight.cost().resinGrams()).isEqualTo(4, within(1e-9));
        assertThat(eight.cost().money()).isEqualTo(67.2 * 0.025 + 4 * 0.08, within(1e-9));
        assertThat(eight.cost().handHours()).isEqualTo(4, within(1e-9));
    }

    @Test
    void saysWhereNoNumberIsEnough() {
        Aim hard = new Aim.Change(new PlannedEffect.Ratio(1.01, 1, 0.2));
        Numbers numbers = Numbers.of(hard, 0.8, new Groups(2, 1), Effort.NONE);
        assertThat(numbers.enough()).isEmpty();
        assertThat(numbers.findings()).extracting(it -> it.code()).containsExactly("plan-too-many");
    }

    @Test
    void counts29DryCupsForNineInTen() {
        Aim all = new Aim.AllPass(1, 0.9);
        assertThat(all.power(28)).isZero();
        assertThat(all.power(29)).isEqualTo(1);
        assertThat(new Aim.AllPass(0.99, 0.9).power(29)).isEqualTo(0.7472, within(5e-5));
        assertThat(all.groups()).isEqualTo(1);
    }

    /** A scatter below √3 of the steps' uncertainty d/√12 is not believed. */
    @Test
    void believesNoScatterBelowTheBenchsSteps() {
        assertThat(Numbers.seenScatter(0.2, 1)).isEqualTo(0.5);
        assertThat(Numbers.seenScatter(2, 1)).isEqualTo(2);
        assertThat(Numbers.resolution(2, 1)).isEmpty();
        assertThat(Numbers.resolution(0.2, 1).get(0).text())
                .startsWith("The bench reads in steps of 1.00, against a scatter of 0.200");
    }

    @Test
    void offersTheControlsThatPeopleForget() {
        assertThat(Controls.offeredFor(Treatment.COATING))
                .extracting(it -> it.group().name())
                .containsExactly("warmed", "sanded", "thinner only", "added wall", "aged");
        for (Treatment treatment : Treatment.values()) {
            assertThat(Controls.offeredFor(treatment))
                    .allMatch(it -> it.group().role() == PlannedGroup.Role.FURTHER_CONTROL)
                    .allMatch(it -> it.why().endsWith(".") && it.when().startsWith("where "));
            assertThat(Treatment.parse(treatment.word())).isEqualTo(treatment);
        }
        assertThat(Treatment.MATERIAL.changes()).isEqualTo(Design.Changes.BETWEEN_RUNS);
    }

    @Test
    void refusesWhatTellsNothing() {
        refuses(() -> Pilot.of(3), "Two pilots or more tell a scatter, not 1.");
        refuses(
                () -> Pilot.of(3, 3, 3),
                "Pilots that all read the same tell the bench's steps, not the scatter: read finer.");
        refuses(() -> Treatment.parse("magic"), "There is no sort of treatment 'magic'");
        refuses(
                () -> new Aim.NoChange(2, 0.1, Aim.NoChange.Scale.RATIO),
                "must lie below 100 % of the mean");
        refuses(() -> new Aim.Clears(-1, 1, 0.9), "The margin over the level must be above zero");
        refuses(() -> new Aim.AllPass(0.8, 0.9), "must lie above the 0.9 that is to be shown");
        refuses(
                () -> new Effort(-1, 0, 0, 0, Effort.Prices.NONE),
                "The filament per specimen must be zero or more, not -1.0.");
        refuses(
                () -> Numbers.of(FIFTEEN, 1, new Groups(2, 1), Effort.NONE),
                "The power must lie above 2.5 %");
        refuses(() -> AllClear.parts(1, 0.95), "up to 99.99 %");
    }

    private static Numbers.Row row(Numbers numbers, int perGroup) {
        List<Numbers.Row> rows =
                numbers.rows().stream().filter(it -> it.perGroup() == perGroup).toList();
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }

    private static void refuses(ThrowingCallable call, String part) {
        assertThatThrownBy(call).isInstanceOf(PlanException.class).hasMessageContaining(part);
    }
}
