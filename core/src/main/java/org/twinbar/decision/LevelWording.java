package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;

/** A claim about a level in sentences. */
record LevelWording(Question question, Group group, Found found) {

    List<String> sentences(Verdict verdict, Needed needed) {
        List<String> all = new ArrayList<>();
        all.add(whatWasFound());
        Sentence answer = switch (verdict) {
            case SUPPORTED -> Sentence.LEVEL_CLEARED;
            case CONTRADICTED -> Sentence.LEVEL_MISSED;
            default -> Sentence.LEVEL_OPEN;
        };
        all.add(answer.with(
                "share", share(), "things", question.subject().things(), "level", level()));
        if (verdict == Verdict.OPEN && needed instanceof Needed.Specimens more) {
            all.add(Sentence.LEVEL_MORE.with("n", more.perGroup(), "assuming", more.assuming()));
        } else if (verdict == Verdict.OPEN && needed instanceof Needed.None none) {
            all.add(Sentence.NO_NUMBER_SETTLES.with("reason", none.reason()));
        }
        return all;
    }

    private String whatWasFound() {
        if (!found.estimate().isKnown()) {
            return Sentence.NOTHING_SEEN.with("label", question.subject().label());
        }
        String confidence = Written.percent(question.confidence());
        if (group.tally().isPresent()) {
            Group.Tally tally = group.tally().get();
            return Sentence.LEVEL_SHARE_FOUND.with(
                    "label",
                    question.subject().label(),
                    "count",
                    tally.count(),
                    "n",
                    tally.n(),
                    "things",
                    question.subject().things(),
                    "level",
                    level(),
                    "confidence",
                    confidence,
                    "limit",
                    Written.fixed(100 * found.low().orElse(0), 0) + Written.THIN + "%");
        }
        if (!found.low().isKnown()) {
            return Sentence.LEVEL_ONLY_SEEN.with(
                    "label",
                    question.subject().label(),
                    "value",
                    Written.exact(found.estimate().orElse(0)) + unit());
        }
        boolean upwards = question.expectation() != Expectation.LOWER;
        double half = (found.highest() - found.lowest()) / 2;
        String limit =
                Written.fixed(upwards ? found.lowest() : found.highest(), Written.decimalsOf(half));
        return Sentence.LEVEL_FOUND.with(
                "label",
                question.subject().label(),
                "confidence",
                confidence,
                "share",
                share(),
                "things",
                question.subject().things(),
                "limit",
                limit + unit() + (upwards ? " or more" : " or less"),
                "counts",
                group.n() + " specimens");
    }

    private String share() {
        return Written.percent(question.level().orElseThrow().share());
    }

    private String level() {
        return question.subject().unit().symbol().isEmpty() && group.tally().isPresent()
                ? "it"
                : Written.exact(question.level().orElseThrow().value()) + unit();
    }

    private String unit() {
        return Written.unit(question.subject().unit());
    }
}
