package org.twinbar.decision;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What would settle an open question: how many specimens until the verdict would be "supported"
 * with a power of 80 %, for the effect as seen and for the effect as claimed.
 *
 * <p>The power is exact where there is a way to have it (means, blocks, shares) and simulated from
 * the study's own scatter elsewhere (rates, ranks); beside an exact one for means stands what
 * studies drawn from the values themselves make of it.
 */
record Settling(Judge judge) {

    private static final String AS_CLAIMED =
            "if the true effect is as claimed and scatter is as seen";
    private static final String NO_CHANGE = "if there is no change at all and scatter is as seen";

    Needed needed(Verdict verdict, Judge.Judged judged) {
        if (verdict != Verdict.OPEN && verdict != Verdict.BETTER_SIZE_OPEN) {
            return new Needed.None("Nothing is open.");
        }
        if (judged.layout() == Layout.CONFOUNDED) {
            return new Needed.None("No number of specimens from these blocks would settle it.");
        }
        Optional<Needed.Specimens> ifClaimHolds = ifClaimHolds(judged);
        Optional<String> hopeless = hopeless(judged);
        if (hopeless.isPresent()) {
            return new Needed.None(hopeless.get(), ifClaimHolds);
        }
        double estimate = judged.found().estimate().orElse(judge.question().none());
        return specimens(judged, estimate, asSeen())
                .<Needed>map(found -> new Needed.Specimens(
                        found.perGroup(),
                        found.blocks(),
                        found.power(),
                        found.method(),
                        found.assuming(),
                        found.simulated(),
                        ifClaimHolds))
                .orElseGet(() -> new Needed.None(
                        "No number of specimens can be reckoned from what was seen.",
                        ifClaimHolds));
    }

    /** Returns why more specimens like these would not support the claim, where they wouldn't. */
    private Optional<String> hopeless(Judge.Judged judged) {
        Question question = judge.question();
        if (!judged.found().estimate().isKnown()) {
            boolean times = question.effect() == Effect.RATE && !happened(judged);
            return Optional.of(
                    times
                            ? "Watch longer, or under a harder test: more specimens to which nothing happens tell no more."
                            : "Nothing was seen that a number could be reckoned from.");
        }
        double estimate = judged.found().estimate().orElse(question.none());
        if (question.expectation() == Expectation.SAME) {
            double size = question.worthSize().orElseThrow();
            return Math.abs(estimate - question.none()) < size
                    ? Optional.empty()
                    : Optional.of(
                            "The effect as seen lies outside what counts as no change: more specimens like these would not support the claim.");
        }
        boolean upwards = question.expectation() == Expectation.HIGHER;
        if (upwards ? estimate > question.worth() : estimate < question.worth()) {
            return Optional.empty();
        }
        return Optional.of(
                question.worth() == question.none()
                        ? "The effect as seen doesn't go the way that is claimed: more specimens like these would not support it."
                        : "The effect as seen lies short of what is worth having: more specimens like these would not support the claim.");
    }

    private static boolean happened(Judge.Judged judged) {
        return Rates.lives(judged.treated()).stream().anyMatch(life -> !life.isCensored())
                || Rates.lives(judged.control()).stream().anyMatch(life -> !life.isCensored());
    }

    private Optional<Needed.Specimens> ifClaimHolds(Judge.Judged judged) {
        Question question = judge.question();
        if (question.expectation() == Expectation.SAME) {
            return specimens(judged, question.none(), NO_CHANGE);
        }
        if (question.claimed().isEmpty()) {
            return Optional.empty();
        }
        double claimed = question.claimed().getAsDouble();
        boolean upwards = question.expectation() == Expectation.HIGHER;
        boolean beyond = upwards ? claimed > question.worth() : claimed < question.worth();
        return beyond ? specimens(judged, claimed, AS_CLAIMED) : Optional.empty();
    }

    private Optional<Needed.Specimens> specimens(
            Judge.Judged judged, double truth, String assuming) {
        return prospect(judged, truth)
                .flatMap(prospect -> fewest(prospect, judged)
                        .map(reached -> prospect.needed(reached.n(), reached.power(), assuming)))
                .map(planned -> simulated(judged, truth, planned));
    }

    private Optional<Prospect> prospect(Judge.Judged judged, double truth) {
        Question question = judge.question();
        boolean counted = judged.treated().values().length + judged.control().values().length == 0;
        return switch (question.effect()) {
            case RATIO, DIFFERENCE ->
                judged.layout() == Layout.CROSSED
                                && WithinBlocks.fits(question, judged.treated(), judged.control())
                        ? BlocksProspect.of(judge, judged, truth)
                        : MeansProspect.of(judge, judged, truth);
            case SHARE -> counted ? shares(judged, truth) : MeansProspect.of(judge, judged, truth);
            case RATE -> RatesProspect.of(question, judged, truth);
            case RANK -> RanksProspect.of(question, judged, truth);
            case LEVEL -> Optional.empty();
        };
    }

    private Optional<Prospect> shares(Judge.Judged judged, double difference) {
        return judged.control().answers() == 0
                ? Optional.empty()
                : Optional.of(SharesProspect.of(
                        judge.question(), Shares.count(judged.control()).share(), difference));
    }

    private static Optional<Fewest.Reached> fewest(Prospect prospect, Judge.Judged judged) {
        if (prospect instanceof SharesProspect shares) {
            return Fewest.first(
                    shares::supported,
                    Prospect.FEWEST,
                    SharesProspect.EVERY_ONE,
                    SharesProspect.MOST);
        }
        if (prospect instanceof RatesProspect || prospect instanceof RanksProspect) {
            int start = (judged.treated().size() + judged.control().size()) / 2;
            return Fewest.simulated(prospect::supported, start, Prospect.FEWEST);
        }
        return Fewest.growing(prospect::supported, Prospect.FEWEST);
    }

    private String asSeen() {
        return switch (judge.question().effect()) {
            case SHARE -> "if the true shares are as seen";
            case RATE -> "if times come as they did, at the rates as seen";
            case RANK -> "if values come as they did";
            case RATIO, DIFFERENCE, LEVEL -> "if the true effect and scatter are as seen";
        };
    }

    /**
     * Adds what studies drawn from the values themselves make of a number of specimens, and where
     * they want more of them, how many.
     */
    private Needed.Specimens simulated(
            Judge.Judged judged, double truth, Needed.Specimens planned) {
        Effect effect = judge.question().effect();
        boolean means = effect == Effect.RATIO || effect == Effect.DIFFERENCE;
        boolean blocks =
                judged.layout() == Layout.CROSSED || judged.layout() == Layout.TREATED_IN_SEVERAL;
        int counted = planned.blocks().map(Needed.InBlocks::number).orElse(planned.perGroup());
        if (!means || blocks || counted > SimulatedStudies.MOST_PER_GROUP) {
            return planned;
        }
        SimulatedStudies studies = new SimulatedStudies(judge, judged, truth);
        double share = studies.supported(counted);
        return planned.with(drawn(studies, share, counted));
    }

    private static Needed.Simulated drawn(SimulatedStudies studies, double share, int counted) {
        String percent = Written.fixed(100 * share, 0) + Written.THIN + "%";
        if (share >= Fewest.POWER - SimulatedStudies.NOISE) {
            return new Needed.Simulated(
                    share,
                    OptionalInt.of(counted),
                    true,
                    Sentence.SIMULATED_TOO.with(
                            "studies",
                            Integer.toString(SimulatedStudies.STUDIES),
                            "share",
                            percent));
        }
        OptionalInt enough = studies.enough(counted);
        return new Needed.Simulated(
                share,
                enough,
                false,
                Sentence.SIMULATED_MORE.with(
                        "studies",
                        Integer.toString(SimulatedStudies.STUDIES),
                        "share",
                        percent,
                        "enough",
                        enough.isPresent()
                                ? "four in five from about %s of each on"
                                        .formatted(enough.getAsInt())
                                : "no number up to %s is enough"
                                        .formatted(SimulatedStudies.MOST_PER_GROUP)));
    }
}
