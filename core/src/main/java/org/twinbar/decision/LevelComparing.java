package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.Count;
import org.twinbar.statistics.Share;

/** Holds one group against a level and answers the question. */
record LevelComparing(Judge judge, Sample group, Levels levels) {

    LevelComparing(Judge judge, Sample group) {
        this(judge, group, new Levels(judge.question(), judge.step()));
    }

    /** What a look at the readings gave. */
    private record Looked(Sample sample, Levels.Limit limit, Verdict verdict) {}

    Comparison comparison() {
        Question question = judge.question();
        Looked looked = look(group.counted());
        Optional<Verdict> withAll = seen().isEmpty()
                ? Optional.empty()
                : Optional.of(look(group.withSeen()).verdict());
        Verdict verdict = withAll.map(looked.verdict()::weakerOf).orElse(looked.verdict());
        List<Finding> findings = new ArrayList<>(Limits.ofOne(judge, group, looked.sample()));
        Group shown = shown(looked);
        Needed needed = new LevelSettling(judge, looked.sample()).needed(verdict, looked.limit());
        List<String> reasons =
                new ArrayList<>(new LevelWording(question, shown, looked.limit().found())
                        .sentences(verdict, needed));
        withAll.filter(other -> other != looked.verdict())
                .ifPresent(other -> reasons.add(Sentence.WEAKER.with(
                        "names",
                        seen().stream()
                                .map(Observation::specimen)
                                .collect(Collectors.joining(", ")),
                        "with",
                        other.word(),
                        "without",
                        looked.verdict().word())));
        return new Comparison(
                question,
                Optional.empty(),
                shown,
                looked.limit().found(),
                List.of(),
                Optional.empty(),
                verdict,
                reasons,
                findings,
                needed,
                standing(verdict),
                Context.NONE);
    }

    /** Returns the verdict without all that stands beside it. */
    Judgement judgement() {
        Looked looked = look(group.counted());
        Verdict verdict = seen().isEmpty()
                ? looked.verdict()
                : looked.verdict().weakerOf(look(group.withSeen()).verdict());
        return new Judgement(looked.limit().found(), verdict);
    }

    private Looked look(Sample specimens) {
        Sample sample = Units.named(specimens, judge.question());
        if (Layout.severalBlocks(sample)) {
            sample = Units.byBlock(sample, judge.question());
        }
        Levels.Limit limit = levels.of(sample);
        double low = limit.found().lowest();
        double high = limit.found().highest();
        boolean turned = judge.question().expectation() == Expectation.LOWER && !limit.counted();
        Verdict verdict = turned
                ? VerdictRule.level(-high, -low, -limit.threshold())
                : VerdictRule.level(low, high, limit.threshold());
        return new Looked(sample, limit, verdict);
    }

    private List<Observation> seen() {
        return group.observations().stream()
                .filter(Observation::leftOutAfterSeen)
                .toList();
    }

    /**
     * Returns the group with the tally of those that clear the level, where shares were counted.
     */
    private Group shown(Looked looked) {
        Group plain = Groups.of(looked.sample(), judge.question(), judge.step());
        Optional<Count> clearing =
                looked.limit().counted() ? levels.clearing(looked.sample()) : Optional.empty();
        return clearing.map(count -> plain.with(new Group.Tally(
                        "clear the level",
                        count.yes(),
                        count.n(),
                        Share.exact(count, judge.question().confidence()).low(),
                        Share.exact(count, judge.question().confidence()).high())))
                .orElse(plain);
    }

    private Standing standing(Verdict verdict) {
        List<Standing.View> views = new ArrayList<>();
        for (Observation doubted : Doubts.doubted(group.counted())) {
            views.add(new Standing.View(
                    "without " + doubted.specimen(),
                    look(group.counted().without(doubted.specimen())).verdict()));
        }
        return new Standing(verdict, views);
    }
}
