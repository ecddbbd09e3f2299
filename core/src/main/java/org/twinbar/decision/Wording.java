package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A comparison in sentences: what was found, how sure, on what, and what now. */
record Wording(Question question, Group treated, Optional<Group> control, Found found) {

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
        shareLimit().ifPresent(all::add);
        reach.flatMap(reached -> claim(verdict, reached)).ifPresent(all::add);
        boolean unsettled = verdict == Verdict.OPEN || verdict == Verdict.BETTER_SIZE_OPEN;
        if (unsettled && needed instanceof Needed.Specimens specimens) {
            all.add(Sentence.MORE_SPECIMENS.with(
                    "number", specimens.words(), "assuming", specimens.assuming()));
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

    /** Returns what a share of none or all leaves possible, where the treated have one. */
    private Optional<String> shareLimit() {
        return treated.tally()
                .filter(tally -> question.effect() == Effect.SHARE)
                .filter(tally -> tally.count() == 0 || tally.count() == tally.n())
                .map(tally -> {
                    boolean all = tally.count() == tally.n();
                    return Sentence.SHARE_LIMIT.with(
                            "n",
                            tally.n(),
                            "treated",
                            treated.name(),
                            "things",
                            question.subject().things(),
                            "share",
                            Written.fixed(100 * (all ? 1 - tally.low() : tally.high()), 0)
                                    + Written.THIN
                                    + "%",
                            "be",
                            all ? "not be" : "be",
                            "label",
                            question.subject().label());
                });
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
            case CONTRADICTED -> Sentence.OTHER_WAY.with();
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
                ? Sentence.CHANGE_SHOWN.with()
                : Sentence.WORTH_REACHED.with("worth", worth());
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
