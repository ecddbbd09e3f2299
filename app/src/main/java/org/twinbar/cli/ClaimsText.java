package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.decision.Claims;
import org.twinbar.decision.Verdict;
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
                        .append(ComparisonsText.wrapped(answer.sentence(), "    "));
            }
        }
        return rows + "\n" + sentences + together(study);
    }

    /** Each claim keeps its own error rate; beside it stands what is left by Holm's. */
    private static String together(JudgedStudy study) {
        List<Answer.Compared> compared = study.compared();
        List<Claims.Together> all = Claims.together(
                compared.stream().map(Answer.Compared::comparison).toList());
        if (all.stream().filter(it -> it.p().isKnown()).count() < 2) {
            return "";
        }
        List<String> told = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).together()) {
                told.add(compared.get(i).question());
            }
        }
        return "\n"
                + ComparisonsText.wrapped(
                        "Each verdict keeps its own error rate. If all %s are to be right together"
                                        .formatted(all.size())
                                + " (Holm), a change is still told from none in: %s."
                                        .formatted(
                                                told.isEmpty()
                                                        ? "none of them"
                                                        : String.join("; ", told)),
                        "  ");
    }

    private static String verdict(Answer answer) {
        return answer.verdict().map(Verdict::word).orElse("not asked of readings yet");
    }
}
