package org.twinbar.cli;

import org.twinbar.decision.Comparison;
import org.twinbar.study.Answer;
import org.twinbar.study.JudgedClaim;
import org.twinbar.study.JudgedStudy;

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
                        .append(ComparisonsText.wrapped(sentence(answer), "    "));
            }
        }
        return rows + "\n" + sentences;
    }

    private static String verdict(Answer answer) {
        if (answer instanceof Answer.Compared compared) {
            return compared.comparison().verdict().word();
        }
        return answer instanceof Answer.OffBench
                ? org.twinbar.decision.Verdict.NOT_FOR_THIS_BENCH.word()
                : "not asked of readings yet";
    }

    private static String sentence(Answer answer) {
        if (answer instanceof Answer.Compared compared) {
            Comparison comparison = compared.comparison();
            return comparison.headline()
                    + comparison.material().map(it -> " " + it.words()).orElse("");
        } else if (answer instanceof Answer.OffBench off) {
            return "No test on this bench can settle it. Who decides: %s"
                    .formatted(off.whoDecides());
        }
        return ((Answer.Unanswered) answer).reason();
    }
}
