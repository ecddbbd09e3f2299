package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;

/** Puts a judged study into the words and pictures of a report. */
final class Composition {

    private Composition() {}

    static Sheet of(JudgedStudy study) {
        List<Sheet.Claim> claims = new ArrayList<>();
        Answers composed = new Answers(study);
        PublishedBefore published = new PublishedBefore(study);
        int number = 0;
        for (JudgedClaim claim : study.claims()) {
            List<Sheet.Answer> answers = new ArrayList<>();
            for (Answer answer : claim.answers()) {
                number++;
                Sheet.Answer now = composed.of(answer, anchor(number));
                answers.add(published.beside(now, number - 1));
            }
            claims.add(new Sheet.Claim(claim.words(), claim.saidBy(), answers));
        }
        return new Sheet(
                study.question().isBlank() ? study.name() : study.question(),
                about(study),
                study.invented() ? Sheet.Origin.INVENTED : Sheet.Origin.MEASURED,
                claims,
                HowFound.of(study),
                "Calculated by %s, seed %s. The same readings give the same verdicts on any machine."
                        .formatted(study.maker().program(), study.maker().seed()));
    }

    /** Returns where the answer of this number, counted from 1, stands in the page. */
    static String anchor(int number) {
        return "answer-" + number;
    }

    private static String about(JudgedStudy study) {
        List<String> parts = new ArrayList<>();
        if (!study.about().isBlank()) {
            parts.add(study.about().strip());
        }
        List<String> groups = new ArrayList<>();
        for (Map.Entry<String, List<JudgedSpecimen>> group :
                Budgets.byGroup(study.specimens()).entrySet()) {
            groups.add(group.getValue().size() + " " + group.getKey());
        }
        String counted = Cells.count(study.specimens().size(), "specimen");
        parts.add(groups.isEmpty() ? counted : counted + ": " + String.join(", ", groups));
        runs(study).ifPresent(parts::add);
        return String.join(" · ", parts);
    }

    private static Optional<String> runs(JudgedStudy study) {
        Set<String> runs = new LinkedHashSet<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            String run = specimen.factors().get("print_run");
            if (run != null) {
                runs.add(run);
            }
        }
        return runs.isEmpty()
                ? Optional.empty()
                : Optional.of(Cells.count(runs.size(), "print run"));
    }
}
