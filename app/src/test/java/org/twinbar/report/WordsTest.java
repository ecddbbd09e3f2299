package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Verdict;
import org.twinbar.method.Property;

/** No sentence of a report says more than its verdict. */
class WordsTest {

    /** Words that no verdict of this bench bears. */
    private static final List<String> NEVER = List.of(
            "prove", "proof", "significan", "guarantee", "certif", "safe", "!", "undoubted");

    /** Words that only these verdicts bear. */
    private static final Map<String, Set<Verdict>> RESERVED = Map.of(
            "at least the", Set.of(Verdict.SUPPORTED),
            "at or beyond what is worth", Set.of(Verdict.SUPPORTED),
            "holds on this bench", Set.of(Verdict.SUPPORTED),
            "is reached.", Set.of(Verdict.SUPPORTED),
            "the other way", Set.of(Verdict.CONTRADICTED),
            "other side of no change", Set.of(Verdict.CONTRADICTED),
            "smaller than", Set.of(Verdict.TOO_SMALL),
            "all of it lies short of", Set.of(Verdict.TOO_SMALL),
            "all of it lies beyond no change", Set.of(Verdict.BETTER_SIZE_OPEN));

    private static final Map<Verdict, double[]> TREATED = new EnumMap<>(Verdict.class);

    static {
        TREATED.put(Verdict.SUPPORTED, new double[] {120, 121, 119, 120, 122, 120});
        TREATED.put(Verdict.BETTER_SIZE_OPEN, new double[] {104, 108, 103, 109, 105, 106});
        TREATED.put(Verdict.OPEN, new double[] {96, 115, 92, 118, 100, 109});
        TREATED.put(Verdict.TOO_SMALL, new double[] {100, 101, 99, 101, 100, 102});
        TREATED.put(Verdict.CONTRADICTED, new double[] {80, 81, 79, 80, 82, 80});
    }

    @ParameterizedTest
    @EnumSource(value = Verdict.class, mode = EnumSource.Mode.EXCLUDE, names = "NOT_FOR_THIS_BENCH")
    void sayNoMoreThanTheVerdict(Verdict verdict) {
        Sheet.Answer answer = answer(verdict);
        assertThat(answer.verdict()).isEqualTo(verdict.word());
        for (String sentence : sentences(answer)) {
            String lower = sentence.toLowerCase(Locale.ROOT);
            assertThat(NEVER).as(sentence).noneMatch(lower::contains);
            RESERVED.forEach((words, verdicts) -> {
                if (lower.contains(words)) {
                    assertThat(verdicts).as(sentence).contains(verdict);
                }
            });
        }
    }

    @ParameterizedTest
    @EnumSource(value = Verdict.class, mode = EnumSource.Mode.EXCLUDE, names = "NOT_FOR_THIS_BENCH")
    void sayTheVerdictToThoseWhoDoNotSeeTheMark(Verdict verdict) {
        assertThat(answer(verdict).mark().orElseThrow())
                .contains("aria-label=\"" + verdict.word() + ": ");
    }

    @Test
    void keepThePValueOutOfTheFirstSentence() {
        for (Verdict verdict : TREATED.keySet()) {
            assertThat(answer(verdict).sentence()).doesNotContain("p =").doesNotContain("p-value");
        }
    }

    @Test
    void sendWhatNoBenchCanSettleToThoseWhoDecide() {
        Sheet.Answer answer = new Answers(Studies.pulled(3, 50)).of(Studies.offBench(), "x");
        assertThat(answer.verdict()).isEqualTo("not for this bench");
        assertThat(answer.sentence()).contains("accredited laboratory").contains("local rules");
        assertThat(answer.items())
                .extracting(Sheet.Item::term)
                .containsExactly("What would have to hold");
    }

    private static Sheet.Answer answer(Verdict verdict) {
        double[] control = {100, 101, 99, 100, 102, 98};
        List<Observation> observations = new ArrayList<>();
        for (int i = 0; i < control.length; i++) {
            observations.add(Observation.of("P" + i, "plain", control[i]));
            observations.add(Observation.of("C" + i, "coated", TREATED.get(verdict)[i]));
        }
        Property strength = Studies.PULL.description().property("strength").orElseThrow();
        Question question = Question.of(
                        Subject.of("tensile strength", strength.unit()),
                        Effect.RATIO,
                        Expectation.HIGHER)
                .withWorth(0.05)
                .withClaimed(0.10);
        Comparison comparison = Comparing.of(question, observations, "plain", "coated");
        return ComparedAnswer.of(
                new Compared(
                        "tensile strength",
                        strength,
                        List.of(),
                        comparison,
                        Compared.Curves.SHOWN_BEFORE),
                "x");
    }

    private static List<String> sentences(Sheet.Answer answer) {
        List<String> all = new ArrayList<>(List.of(answer.sentence(), answer.brief()));
        answer.items().forEach(item -> all.addAll(item.paragraphs()));
        answer.pictures().forEach(picture -> all.add(picture.caption()));
        return all.stream()
                .flatMap(text -> List.of(text.split("(?<=\\.) ")).stream())
                .collect(Collectors.toList());
    }
}
