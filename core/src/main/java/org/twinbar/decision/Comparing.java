package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.finding.Finding;

/** Holds treated specimens against their control and answers the question. */
public final class Comparing {

    private final Judge judge;
    private final Sample treated;
    private final Sample control;

    private Comparing(Judge judge, Sample treated, Sample control) {
        this.judge = judge;
        this.treated = treated;
        this.control = control;
    }

    /**
     * Returns the comparison of one treated group with its control.
     *
     * @param observations every specimen of both groups, the left-out ones included; others are
     *     passed over; their order is nothing
     * @throws QuestionException if a group has no specimen at all, or the effect is no sensible
     *     question of these values
     */
    public static Comparison of(
            Question question, List<Observation> observations, String control, String treated) {
        return comparing(question, observations, control, treated).comparison();
    }

    /**
     * Returns how one group stands to the level of the question.
     *
     * @throws QuestionException if the group has no specimen at all, or the question names no level
     */
    public static Comparison level(
            Question question, List<Observation> observations, String group) {
        requireGroup(observations, group, "group");
        if (question.effect() != Effect.LEVEL) {
            throw new QuestionException(
                    "A group without a control needs a level to be held against.");
        }
        Sample sample = Sample.of(group, observations);
        double step = question.resolution().orElseGet(() -> Step.of(sample.stream()));
        return new LevelComparing(new Judge(question, step), sample).comparison();
    }

    /**
     * Returns the verdict that {@link #of} gives, without all that stands beside it: for whoever
     * judges thousands of studies.
     *
     * @throws QuestionException as {@link #of} does
     */
    public static Judgement judge(
            Question question, List<Observation> observations, String control, String treated) {
        Comparing comparing = comparing(question, observations, control, treated);
        Judge.Judged judged = comparing.judged();
        return new Judgement(
                judged.found(),
                comparing.withLeftOut().map(judged.verdict()::weakerOf).orElse(judged.verdict()));
    }

    static Comparing comparing(
            Question question, List<Observation> observations, String control, String treated) {
        requireGroup(observations, control, "control");
        requireGroup(observations, treated, "treated group");
        if (control.equals(treated)) {
            throw new QuestionException("'%s' is both control and treated.".formatted(control));
        }
        Sample ours = Sample.of(treated, observations);
        Sample others = Sample.of(control, observations);
        double step = question.resolution()
                .orElseGet(() -> Step.of(Stream.of(ours, others).flatMapToDouble(Sample::stream)));
        return new Comparing(new Judge(question, step), ours, others);
    }

    private Comparison comparison() {
        Question question = judge.question();
        Judge.Judged judged = judged();
        Optional<Verdict> withAll = withLeftOut();
        Verdict verdict = withAll.map(judged.verdict()::weakerOf).orElse(judged.verdict());
        Found found = judged.found();
        Group treatedGroup = Groups.of(judged.treated(), question, judge.step());
        Group controlGroup = Groups.of(judged.control(), question, judge.step());
        Needed needed = new Settling(judge).needed(verdict, judged);
        Optional<Reach> reach = judge.reach(found);
        List<Finding> findings = new ArrayList<>(Limits.of(judge, treated, control, judged));
        Limits.step(judge, treated, control).ifPresent(findings::add);
        List<Ground> grounds =
                new Grounds(judge, judged, treated.counted(), control.counted()).looked();
        grounds.forEach(ground -> ground.doubt().ifPresent(findings::add));
        List<Beside> beside = new Besides(question, judge.step()).of(judged);
        Wording wording =
                new Wording(question, treatedGroup, Optional.of(controlGroup), found, beside);
        List<String> reasons = new ArrayList<>(wording.sentences(verdict, reach, needed));
        limits(judged, withAll, verdict).forEach(reasons::add);
        return new Comparison(
                question,
                Optional.of(controlGroup),
                treatedGroup,
                found,
                beside,
                reach,
                verdict,
                reasons,
                findings,
                needed,
                new Standing(verdict, views(judged)),
                Context.NONE.onGrounds(grounds).withTests(tests(judged)));
    }

    private List<Tested> tests(Judge.Judged judged) {
        return judge.question().effect() == Effect.RATE
                ? new Rates(judge.question())
                        .logRank(judged.treated(), judged.control()).stream().toList()
                : List.of();
    }

    /** Specimens that were left out after their values were seen weaken other views as well. */
    private List<Standing.View> views(Judge.Judged judged) {
        Views without = new Views(judge, treated.counted(), control.counted(), judged);
        if (seen().isEmpty()) {
            return without.all();
        }
        Sample ours = treated.withSeen();
        Sample others = control.withSeen();
        return Views.weaker(without, new Views(judge, ours, others, judge.judge(ours, others)));
    }

    double step() {
        return judge.step();
    }

    Judge.Judged judged() {
        return judge.judge(treated.counted(), control.counted());
    }

    /** Returns the verdict with the specimens that were left out after their values were seen. */
    private Optional<Verdict> withLeftOut() {
        return seen().isEmpty()
                ? Optional.empty()
                : Optional.of(
                        judge.judge(treated.withSeen(), control.withSeen()).verdict());
    }

    private List<Observation> seen() {
        return Stream.of(treated, control)
                .flatMap(sample -> sample.observations().stream())
                .filter(Observation::leftOutAfterSeen)
                .toList();
    }

    private List<String> limits(Judge.Judged judged, Optional<Verdict> withAll, Verdict verdict) {
        List<String> sentences = new ArrayList<>();
        withAll.filter(other -> other != judged.verdict()).ifPresent(other -> {
            String names =
                    seen().stream().map(Observation::specimen).collect(Collectors.joining(", "));
            sentences.add(Sentence.WEAKER.with(
                    "names",
                    names,
                    "with",
                    other.word(),
                    "without",
                    judged.verdict().word()));
        });
        String things = judge.question().subject().things();
        if (judged.layout() == Layout.CONFOUNDED) {
            sentences.add(Sentence.CONFOUNDED.with(
                    "treated",
                    treated.group(),
                    "control",
                    control.group(),
                    "block",
                    Layout.kind(treated)));
        }
        if (judged.layout() == Layout.TREATED_IN_ONE && verdict != Verdict.OPEN) {
            sentences.add(Sentence.ONE_BLOCK.with(
                    "treated",
                    treated.group(),
                    "things",
                    things,
                    "block",
                    Layout.kind(treated),
                    "name",
                    Layout.first(treated).map(Block::name).orElse("")));
        }
        return sentences;
    }

    private static void requireGroup(List<Observation> observations, String group, String what) {
        TreeSet<String> groups = new TreeSet<>();
        observations.forEach(observation -> groups.add(observation.group()));
        if (!groups.contains(group)) {
            throw new QuestionException("There is no specimen of the %s '%s'; the groups are %s."
                    .formatted(what, group, groups.isEmpty() ? "none" : String.join(", ", groups)));
        }
    }
}
