package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A comparison in sentences: what was found, how sure, on what, and what now. */
record Wording(
        Question question,
        Group treated,
        Optional<Group> control,
        Found found,
        List<Beside> beside) {

    static final String NO_SCATTER = "the interval rests on no estimate of scatter";
    static final String NO_BOUND = "the data set no bound on this side";
    static final String NO_TEST = "a limit is held against the level itself";
    static final String TIMES_HAVE_NO_MEAN =
            "tests may have ended first, so that the times have no mean";
    static final String NO_SD = "one specimen alone has no scatter";

    static String noValue(String group) {
        return Sentence.NO_VALUE.with("group", group);
    }

    static String oneSpecimen(String group) {
        return Sentence.ONE_SPECIMEN.with("group", group);
    }

    /** Returns what was found and what it answers, and what would settle it. */
    List<String> sentences(Verdict verdict, Optional<Reach> reach, Needed needed) {
        List<String> all = new ArrayList<>();
        all.add(whatWasFound());
        all.add(answer(verdict, reach));
        all.addAll(shareLimits());
        all.addAll(lasted());
        reach.flatMap(reached -> claim(verdict, reached)).ifPresent(all::add);
        boolean unsettled = verdict == Verdict.OPEN || verdict == Verdict.BETTER_SIZE_OPEN;
        if (unsettled && needed instanceof Needed.Specimens specimens) {
            all.add(Sentence.MORE_SPECIMENS.with(
                    "number", specimens.words(), "assuming", specimens.assuming()));
            specimens
                    .simulated()
                    .filter(drawn -> !drawn.agrees())
                    .ifPresent(drawn -> all.add(drawn.words()));
        } else if (unsettled && needed instanceof Needed.None none) {
            all.add(Sentence.NO_NUMBER_SETTLES.with("reason", none.reason()));
        }
        Sentence ifSo = question.expectation() == Expectation.SAME
                ? Sentence.IF_NO_CHANGE
                : Sentence.IF_CLAIM_HOLDS;
        needed.ifClaimHolds().ifPresent(more -> all.add(ifSo.with("number", more.words())));
        return all;
    }

    private String whatWasFound() {
        boolean bounded = found.low().isKnown() || found.high().isKnown();
        if (question.effect() == Effect.RATE && bounded) {
            return rates();
        }
        if (!found.estimate().isKnown()) {
            return Sentence.NOTHING_SEEN.with("label", question.subject().label());
        }
        if (question.effect() == Effect.SHARE && treated.tally().isPresent()) {
            return shares();
        }
        if (question.effect() == Effect.RANK) {
            return ranks();
        }
        Sentence pattern = found.low().isKnown() || found.high().isKnown()
                ? Sentence.RATIO_FOUND
                : Sentence.ONLY_SEEN;
        return pattern.with(
                "label",
                question.subject().label(),
                "change",
                scale().change(found.estimate().orElse(question.none())),
                "treated",
                treated.name(),
                "control",
                controlName(),
                "things",
                question.subject().things(),
                "interval",
                interval(),
                "counts",
                counts());
    }

    private String rates() {
        Group.Tally ours = treated.tally().orElseThrow();
        Group.Tally others = control.flatMap(Group::tally).orElseThrow();
        String counts = "it came to %s of %s and %s of %s"
                .formatted(ours.count(), ours.n(), others.count(), others.n());
        if (found.estimate().orElse(1) == 0) {
            return never(ours, others);
        }
        if (!found.estimate().isKnown()) {
            return Sentence.RATE_ALONE.with(
                    "label",
                    question.subject().label(),
                    "treated",
                    treated.name(),
                    "things",
                    question.subject().things(),
                    "interval",
                    interval(),
                    "counts",
                    counts);
        }
        return Sentence.RATE_FOUND.with(
                "label",
                question.subject().label(),
                "change",
                scale().change(found.estimate().orElse(question.none())),
                "treated",
                treated.name(),
                "control",
                controlName(),
                "things",
                question.subject().things(),
                "interval",
                interval(),
                "counts",
                counts);
    }

    /** Returns what no event among the treated leaves possible: one end of the interval. */
    private String never(Group.Tally ours, Group.Tally others) {
        boolean slower = found.highest() < question.none();
        String most = Double.isFinite(found.highest())
                ? scale().change(found.highest())
                : "anything faster";
        return Sentence.RATE_NEVER.with(
                "label",
                question.subject().label(),
                "n",
                ours.n(),
                "treated",
                treated.name(),
                "things",
                question.subject().things(),
                "control",
                controlName(),
                "count",
                others.count(),
                "m",
                others.n(),
                "limit",
                (slower ? "at least " : "possibly up to ") + most,
                "level",
                Written.percent(found.level()));
    }

    private String ranks() {
        double chance = found.estimate().orElse(question.none());
        String interval = found.low().isKnown()
                ? Written.percent(found.level())
                        + " interval "
                        + Written.fixed(100 * found.lowest(), 0)
                        + " to "
                        + Written.fixed(100 * found.highest(), 0)
                        + Written.THIN
                        + "%"
                : "without an interval";
        return Sentence.RANK_FOUND.with(
                "label",
                question.subject().label(),
                "treated",
                treated.name(),
                "control",
                controlName(),
                "estimate",
                Written.fixed(100 * chance, 0) + Written.THIN + "%",
                "interval",
                interval,
                "counts",
                counts());
    }

    private String shares() {
        Group.Tally ours = treated.tally().orElseThrow();
        Group.Tally others = control.flatMap(Group::tally).orElseThrow();
        return Sentence.SHARE_FOUND.with(
                "label",
                question.subject().label(),
                "yesTreated",
                ours.count(),
                "nTreated",
                ours.n(),
                "yesControl",
                others.count(),
                "nControl",
                others.n(),
                "treated",
                treated.name(),
                "control",
                controlName(),
                "things",
                question.subject().things(),
                "change",
                scale().change(found.estimate().orElse(0)),
                "interval",
                interval());
    }

    /** Returns what each group's share leaves possible: few specimens leave much. */
    private List<String> shareLimits() {
        List<String> all = new ArrayList<>();
        if (question.effect() == Effect.SHARE) {
            shareLimit(treated).ifPresent(all::add);
            control.flatMap(this::shareLimit).ifPresent(all::add);
        }
        return all;
    }

    private Optional<String> shareLimit(Group group) {
        return group.tally().map(tally -> {
            boolean none = tally.count() == 0;
            boolean every = tally.count() == tally.n();
            Sentence sentence =
                    none ? Sentence.SHARE_NONE : every ? Sentence.SHARE_ALL : Sentence.SHARE_SOME;
            return sentence.with(
                    "label",
                    question.subject().label(),
                    "count",
                    tally.count(),
                    "n",
                    tally.n(),
                    "group",
                    group.name(),
                    "things",
                    question.subject().things(),
                    "share",
                    Written.fixed(100 * (every ? 1 - tally.low() : tally.high()), 0)
                            + Written.THIN
                            + "%",
                    "limits",
                    Written.fixed(100 * tally.low(), 0)
                            + " to "
                            + Written.fixed(100 * tally.high(), 0)
                            + Written.THIN
                            + "%");
        });
    }

    /** Returns how much longer the treated lasted, or that it happened to nobody. */
    private List<String> lasted() {
        if (question.effect() != Effect.RATE || treated.tally().isEmpty()) {
            return List.of();
        }
        Optional<Group.Tally> others = control.flatMap(Group::tally);
        if (treated.tally().get().count() == 0
                && others.filter(tally -> tally.count() == 0).isPresent()) {
            return List.of(Sentence.NEVER_HAPPENED.with(
                    "n",
                    treated.n() + " and " + others.orElseThrow().n(),
                    "things",
                    question.subject().things()));
        }
        return beside.stream()
                .filter(one -> one.interval().equals(Besides.RESTRICTED_MEAN))
                .map(this::lasted)
                .toList();
    }

    private String lasted(Beside longer) {
        double mean = longer.estimate().orElse(0);
        double low = longer.low().orElse(mean);
        double high = longer.high().orElse(mean);
        String unit = Written.unit(question.subject().unit());
        int decimals = Written.decimalsOf(Math.max((high - low) / 2, Math.abs(mean) / 100));
        double limit = Math.min(
                treated.leftOver().orElseThrow().watchedTo(),
                control.flatMap(Group::leftOver).orElseThrow().watchedTo());
        return Sentence.LASTED_LONGER.with(
                "limit",
                Written.exact(limit) + unit,
                "treated",
                treated.name(),
                "control",
                controlName(),
                "things",
                question.subject().things(),
                "change",
                Written.fixed(Math.abs(mean), decimals)
                        + unit
                        + (mean < 0 ? " less long" : " longer"),
                "interval",
                Written.percent(found.level())
                        + " interval "
                        + Written.fixed(low, decimals)
                        + " to "
                        + (low < 0 && high > 0 ? "+" : "")
                        + Written.fixed(high, decimals)
                        + unit);
    }

    private String answer(Verdict verdict, Optional<Reach> reach) {
        if (question.expectation() == Expectation.SAME) {
            Sentence same = switch (verdict) {
                case SUPPORTED -> Sentence.ALIKE;
                case CONTRADICTED -> Sentence.NOT_ALIKE;
                default -> Sentence.ALIKE_OPEN;
            };
            return same.with("worth", worth());
        }
        return switch (verdict) {
            case SUPPORTED -> supported(reach);
            case CONTRADICTED -> otherWay().with();
            case TOO_SMALL -> Sentence.SMALLER_THAN_WORTH.with("worth", worth());
            case BETTER_SIZE_OPEN -> Sentence.SIZE_OPEN.with("worth", worth());
            case OPEN, NOT_FOR_THIS_BENCH -> Sentence.CANNOT_TELL.with();
        };
    }

    private String supported(Optional<Reach> reach) {
        if (claimIsWorth() && reach.filter(Reach.REACHED::equals).isPresent()) {
            return Sentence.CLAIM_HOLDS.with("claimed", claimed());
        }
        return question.worth() == question.none()
                ? shown().with()
                : Sentence.WORTH_REACHED.with("worth", worth());
    }

    /** Of a rate it is said which way it went, since "higher" is easily taken for longer. */
    private Sentence shown() {
        if (question.effect() != Effect.RATE) {
            return Sentence.CHANGE_SHOWN;
        }
        return question.expectation() == Expectation.LOWER
                ? Sentence.CAME_LATER
                : Sentence.CAME_SOONER;
    }

    private Sentence otherWay() {
        if (question.effect() != Effect.RATE) {
            return Sentence.OTHER_WAY;
        }
        return question.expectation() == Expectation.LOWER
                ? Sentence.CAME_SOONER_INSTEAD
                : Sentence.CAME_LATER_INSTEAD;
    }

    private Optional<String> claim(Verdict verdict, Reach reached) {
        if (claimIsWorth()) {
            return Optional.empty();
        }
        Sentence sentence = switch (reached) {
            case REACHED -> Sentence.CLAIM_REACHED;
            case NOT_REACHED -> Sentence.CLAIM_MISSED;
            case OPEN -> Sentence.CLAIM_OPEN;
        };
        return Optional.of(sentence)
                .filter(fitting -> fitting.fits(verdict))
                .map(fitting -> fitting.with("claimed", claimed()));
    }

    private boolean claimIsWorth() {
        return question.claimed().isPresent()
                && question.claimed().getAsDouble() == question.worth();
    }

    private String interval() {
        return Written.percent(found.level()) + " interval " + scale().interval(found);
    }

    private String counts() {
        return control.map(other -> treated.n() + " and " + other.n() + " specimens")
                .orElse(treated.n() + " specimens");
    }

    private String worth() {
        return scale().size(Math.abs(question.worth() - question.none()));
    }

    private String claimed() {
        return scale().size(Math.abs(question.claimed().orElseThrow() - question.none()));
    }

    private String controlName() {
        return control.map(Group::name).orElse("control");
    }

    private ScaleWords scale() {
        return ScaleWords.of(question, found);
    }
}
