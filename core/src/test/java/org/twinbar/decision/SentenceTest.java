package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Reads every sentence against every verdict: no wording claims more than its verdict. */
class SentenceTest {

    /** Words that say something only certain verdicts know. */
    private static final Map<String, Set<Verdict>> CLAIMS = Map.of(
            "holds on this bench",
            Set.of(Verdict.SUPPORTED),
            "at least the {worth} worth having",
            Set.of(Verdict.SUPPORTED),
            "goes the way that was claimed",
            Set.of(Verdict.SUPPORTED),
            "clear {level} on this bench",
            Set.of(Verdict.SUPPORTED),
            "is reached.",
            Set.of(Verdict.SUPPORTED),
            "for the better",
            Set.of(Verdict.BETTER_SIZE_OPEN),
            "smaller than the {worth}",
            Set.of(Verdict.TOO_SMALL),
            "smaller than {worth} either way",
            Set.of(Verdict.SUPPORTED),
            "doesn't hold",
            Set.of(Verdict.CONTRADICTED),
            "cannot tell",
            Set.of(Verdict.OPEN));

    /** Words that no bench allows. */
    private static final List<String> NEVER = List.of(
            "prove",
            "significant",
            "safe",
            "certif",
            "guarantee",
            "always",
            "!",
            "p =",
            "p-value",
            "certain");

    @ParameterizedTest
    @EnumSource
    void fitsOnlyTheVerdictsThatItsWordsKnow(Sentence sentence) {
        CLAIMS.forEach((words, verdicts) -> {
            if (sentence.pattern().contains(words)) {
                for (Verdict verdict : Verdict.values()) {
                    assertThat(sentence.fits(verdict) && !verdicts.contains(verdict))
                            .as("'%s' under '%s'", sentence.pattern(), verdict.word())
                            .isFalse();
                }
            }
        });
    }

    @Test
    void findsEachClaimInSomeSentence() {
        CLAIMS.keySet()
                .forEach(words -> assertThat(Arrays.stream(Sentence.values()))
                        .as(words)
                        .anyMatch(sentence -> sentence.pattern().contains(words)));
    }

    @ParameterizedTest
    @EnumSource
    void saysNothingThatNoBenchAllows(Sentence sentence) {
        assertThat(NEVER)
                .noneMatch(word ->
                        sentence.pattern().toLowerCase(java.util.Locale.ROOT).contains(word));
        assertThat(sentence.pattern()).matches("(?s).*[.}]");
    }

    @Test
    void refusesAPlaceLeftEmpty() {
        assertThatThrownBy(() -> Sentence.SIZE_OPEN.with("size", "5 %"))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Sentence.SIZE_OPEN.with())
                .isInstanceOf(IllegalStateException.class);
    }

    static Stream<Arguments> intervals() {
        double[] ends = {0.7, 0.93, 0.97, 1.02, 1.04, 1.06, 1.11, 1.3};
        Stream.Builder<Arguments> all = Stream.builder();
        for (double low : ends) {
            for (double high : ends) {
                if (low < high) {
                    for (Question question : questions()) {
                        all.add(Arguments.of(low, high, question));
                    }
                }
            }
        }
        return all.build();
    }

    private static List<Question> questions() {
        Question up = Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.HIGHER);
        Question down = Question.of(Specimens.STRENGTH, Effect.RATIO, Expectation.LOWER);
        return List.of(
                up,
                up.withWorth(0.05),
                up.withClaimed(0.1),
                up.withWorth(0.05).withClaimed(0.1),
                down,
                down.withWorth(0.05).withClaimed(0.1),
                Question.same(Specimens.STRENGTH, Effect.RATIO, 0.05));
    }

    /**
     * Every sentence that a comparison of these ends says fits the verdict that it says it under.
     */
    @ParameterizedTest
    @MethodSource("intervals")
    void composesOnlyWhatFits(double low, double high, Question question) {
        Found found = new Found(
                Effect.RATIO,
                Amount.of((low + high) / 2),
                Amount.of(low),
                Amount.of(high),
                0.95,
                Amount.of(8),
                "Fieller, unequal spread",
                Amount.of(0.05));
        Verdict verdict = VerdictRule.read(low, high, question);
        Sample plain = Sample.of("plain", Specimens.of("plain", Specimens.W_PLAIN));
        Sample coated = Sample.of("coated", Specimens.of("coated", Specimens.W_COATED));
        Wording wording = new Wording(
                question,
                Groups.of(coated, question, 0.1),
                java.util.Optional.of(Groups.of(plain, question, 0.1)),
                found,
                List.of());
        Judge judge = new Judge(question, 0.1);
        Needed specimens = new Needed.Specimens(
                9, java.util.Optional.empty(), 0.8, "exact", "if so", java.util.Optional.empty());
        List<String> said = wording.sentences(verdict, judge.reach(found), specimens);
        for (String text : said) {
            boolean fits = Arrays.stream(Sentence.values())
                    .filter(sentence -> text.matches(regex(sentence)))
                    .anyMatch(sentence -> sentence.fits(verdict));
            assertThat(fits).as("'%s' under '%s'", text, verdict.word()).isTrue();
        }
    }

    private static String regex(Sentence sentence) {
        return "\\Q" + sentence.pattern().replaceAll("\\{\\w+}", "\\\\E.+\\\\Q") + "\\E";
    }
}
