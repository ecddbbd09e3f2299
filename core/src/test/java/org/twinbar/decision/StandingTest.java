package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** In how many ways of looking a verdict stands, in words. */
class StandingTest {

    private static Standing.View view(String words, Verdict verdict) {
        return new Standing.View(words, verdict);
    }

    private static String words(Verdict verdict, Standing.View... views) {
        return new Standing(verdict, List.of(views)).words();
    }

    @Test
    void countsInWords() {
        assertThat(words(Verdict.OPEN))
                .isEqualTo("There is no other way of looking at readings like these.");
        assertThat(words(Verdict.OPEN, view("on logarithms", Verdict.OPEN)))
                .isEqualTo("It stands in the one other way of looking at the same readings.");
        assertThat(words(Verdict.OPEN, view("a", Verdict.OPEN), view("b", Verdict.OPEN)))
                .isEqualTo("It stands in all 2 other ways of looking at the same readings.");
        assertThat(words(Verdict.SUPPORTED, view("without A3", Verdict.OPEN)))
                .isEqualTo("It does not stand in the one other way of looking at the same readings;"
                        + " it would be \"open\" without A3.");
        assertThat(words(
                        Verdict.OPEN,
                        view("without A3", Verdict.SUPPORTED),
                        view("on logarithms", Verdict.SUPPORTED)))
                .isEqualTo("It stands in none of 2 other ways of looking at the same readings; it"
                        + " would be \"supported\" without A3, on logarithms.");
        assertThat(words(
                        Verdict.BETTER_SIZE_OPEN,
                        view("without A3", Verdict.OPEN),
                        view("on logarithms", Verdict.BETTER_SIZE_OPEN),
                        view("by permutation", Verdict.SUPPORTED)))
                .isEqualTo("It stands in 1 of 3 other ways of looking at the same readings; it"
                        + " would be \"supported\" by permutation, and \"open\" without A3.");
    }

    /** Two odd ones of twelve hide each other from Grubbs's test. */
    @Test
    void namesSeveralDoubtedSpecimensAndLooksWithoutThem() {
        double[] coated = {47.9, 46.2, 49.0, 48.1, 45.6, 47.4, 46.8, 48.4, 47.0, 47.7, 30.1, 30.9};
        Comparison comparison = Comparing.of(
                Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER),
                Specimens.of("plain", Specimens.W_PLAIN, "coated", coated),
                "plain",
                "coated");
        assertThat(comparison.treated().n()).isEqualTo(12);
        assertThat(comparison.findings())
                .filteredOn(it -> it.code().equals("doubted-specimen"))
                .extracting(it -> it.arguments().get(0))
                .containsExactly("C11", "C12");
        assertThat(comparison.standing().views())
                .extracting(Standing.View::words)
                .contains("without C11", "without C12", "without C11 and C12");
    }

    @Test
    void keepsTheWeakerOfWithAndWithoutInEveryView() {
        LeftOut after = new LeftOut(
                "Ida",
                ZonedDateTime.parse("2026-03-01T10:00:00Z"),
                "slipped",
                LeftOut.Sight.AFTER_VALUE_WAS_SEEN);
        List<Observation> specimens = new ArrayList<>(
                Specimens.of("plain", Specimens.W_PLAIN, "coated", Specimens.W_COATED));
        specimens.add(Observation.of("C99", "coated", 30.0).leftOut(after));
        Comparison comparison = Comparing.of(
                Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER)
                        .withWorth(0.05),
                specimens,
                "plain",
                "coated");
        assertThat(comparison.verdict()).isEqualTo(Verdict.OPEN);
        // Without C99 every one of these ways says "supported"; with it none of the first two does.
        assertThat(comparison.standing().views())
                .contains(view("on logarithms", Verdict.OPEN), view("by permutation", Verdict.OPEN))
                .contains(view("without C99", Verdict.SUPPORTED));
        assertThat(comparison.standing().falling())
                .extracting(Standing.View::words)
                .isSubsetOf(Arrays.asList(
                        "without C99", "by the middle of all pairs", "by the bootstrap"));
    }
}
