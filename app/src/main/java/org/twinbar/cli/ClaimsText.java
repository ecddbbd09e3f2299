package org.twinbar.cli;

import java.util.List;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Verdict;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedStudy;

/** A study's claims with their verdicts, for a person. */
final class ClaimsText {

    private ClaimsText() {}

    static String of(JudgedStudy study) {
        if (study.claims().isEmpty()) {
            return "This study holds no claim yet.\n";
        }
        Aligned rows = new Aligned().row("claim", "asked of", "verdict");
        StringBuilder sentences = new StringBuilder();
        for (JudgedClaim claim : study.claims()) {
            for (Answer answer : claim.answers()) {
                rows.row("“" + claim.words() + "”", answer.question(), verdict(answer));
                sentences
                        .append("  ")
                        .append(answer.question())
                        .append('\n')
                        .append(ComparisonsText.wrapped(answer.sentence(), "    "));
            }
        }
        return rows + "\n" + sentences + together(study);
    }

    private static String together(JudgedStudy study) {
        List<Comparison> comparisons =
                study.compared().stream().map(Answer.Compared::comparison).toList();
        List<String> questions =
                study.compared().stream().map(Answer.Compared::question).toList();
        return Together.of(comparisons)
                .sentence(comparisons, questions)
                .map(words -> "\n" + ComparisonsText.wrapped(words, "  "))
                .orElse("");
    }

    private static String verdict(Answer answer) {
        return answer.verdict().map(Verdict::word).orElse("not asked of readings yet");
    }
}
