package org.twinbar.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;

/** What a report says of the questions of claims, one after the other. */
final class Answers {

    private final JudgedStudy study;
    private final Set<List<String>> shownCurves = new HashSet<>();

    Answers(JudgedStudy study) {
        this.study = study;
    }

    Sheet.Answer of(Answer answer, String anchor) {
        if (answer instanceof Answer.Compared compared) {
            return ComparedAnswer.of(with(compared), anchor);
        }
        if (answer instanceof Answer.Lined lined) {
            return LinedAnswer.of(lined, anchor);
        }
        if (answer instanceof Answer.OffBench off) {
            return offBench(off, anchor);
        }
        if (answer instanceof Answer.Unanswered unanswered) {
            return unanswered(unanswered, anchor);
        }
        throw new IllegalStateException("a report has no words for " + answer.getClass());
    }

    /** Returns what was recorded for each answer that shows curves, by the answer's anchor. */
    static Map<String, Curves> curves(JudgedStudy study) {
        Answers answers = new Answers(study);
        Map<String, Curves> curves = new LinkedHashMap<>();
        int number = 0;
        for (JudgedClaim claim : study.claims()) {
            for (Answer answer : claim.answers()) {
                String anchor = Composition.anchor(++number);
                if (answer instanceof Answer.Compared it) {
                    Compared compared = answers.with(it);
                    if (compared.curves() == Compared.Curves.SHOWN_HERE) {
                        new GroupPictures(compared)
                                .recorded()
                                .ifPresent(found -> curves.put(anchor, found));
                    }
                }
            }
        }
        return curves;
    }

    private Compared with(Answer.Compared compared) {
        List<JudgedSpecimen> specimens =
                study.specimens().stream().filter(compared::about).toList();
        boolean first =
                shownCurves.add(specimens.stream().map(JudgedSpecimen::code).toList());
        return new Compared(
                compared.question(),
                compared.property(),
                specimens,
                compared.comparison(),
                first ? Compared.Curves.SHOWN_HERE : Compared.Curves.SHOWN_BEFORE);
    }

    private static Sheet.Answer offBench(Answer.OffBench off, String anchor) {
        List<String> conditions = new ArrayList<>();
        off.conditions().forEach(c -> conditions.add(c.text() + " Evidence: " + c.evidence()));
        List<Sheet.Item> items = new ArrayList<>();
        if (!conditions.isEmpty()) {
            items.add(new Sheet.Item("What would have to hold", conditions));
        }
        return new Sheet.Answer(
                anchor,
                capital(off.question()),
                "",
                "not for this bench",
                Optional.empty(),
                "This can't be settled by a test on this bench. " + off.whoDecides(),
                "This can't be settled by a test on this bench. " + off.whoDecides(),
                List.of(),
                items);
    }

    private static Sheet.Answer unanswered(Answer.Unanswered unanswered, String anchor) {
        String reason = unanswered.reason();
        String sentence = reason.endsWith(".")
                ? "There is no verdict yet. " + reason
                : "There is no verdict yet: " + reason + ".";
        return new Sheet.Answer(
                anchor,
                capital(unanswered.question()),
                "",
                "no verdict yet",
                Optional.empty(),
                sentence,
                sentence,
                List.of(),
                List.of());
    }

    static String capital(String words) {
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
