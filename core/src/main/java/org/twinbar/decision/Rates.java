package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.statistics.HazardRatio;
import org.twinbar.statistics.Lifetime;
import org.twinbar.statistics.LogRank;
import org.twinbar.statistics.Stratum;

/**
 * How much faster it happens to the treated: the hazard ratio, where tests may have ended first.
 *
 * <p>Where blocks hold both groups, specimens are compared within their block alone; those of a
 * block that holds one group say nothing. Those without a block are one of their own.
 */
record Rates(Question question) implements Calculation {

    @Override
    public Found found(Sample treated, Sample control) {
        List<Lifetime> ours = lives(treated);
        List<Lifetime> others = lives(control);
        if (ours.isEmpty() || others.isEmpty()) {
            String reason = Wording.noValue(ours.isEmpty() ? treated.group() : control.group());
            return Found.open(
                    Effect.RATE, Amount.none(reason), question.confidence(), "none", reason);
        }
        HazardRatio ratio = HazardRatio.of(strata(treated, control), question.confidence());
        if (ratio instanceof HazardRatio.Known known) {
            return Founds.of(
                    Effect.RATE, known.estimate(), Amount.of(known.test().p()));
        }
        String reason = ((HazardRatio.Unknown) ratio).reason();
        return Found.open(
                Effect.RATE, Amount.none(reason), question.confidence(), "hazard ratio", reason);
    }

    /** Returns the specimens by block, where blocks hold both groups; else all as one. */
    static List<Stratum> strata(Sample treated, Sample control) {
        if (Layout.of(treated, control) != Layout.CROSSED) {
            return List.of(new Stratum(lives(treated), lives(control)));
        }
        Map<String, List<Observation>> ours = byBlock(treated);
        Map<String, List<Observation>> others = byBlock(control);
        Set<String> names = new TreeSet<>(ours.keySet());
        names.addAll(others.keySet());
        return names.stream()
                .map(name -> new Stratum(
                        lives(ours.getOrDefault(name, List.of())),
                        lives(others.getOrDefault(name, List.of()))))
                .toList();
    }

    /** Returns the log-rank test; none where times lie between looks, or no event tells. */
    Optional<Tested> logRank(Sample treated, Sample control) {
        List<Stratum> strata = strata(treated, control);
        boolean exact = strata.stream()
                .flatMap(each -> Stream.concat(each.treated().stream(), each.control().stream()))
                .noneMatch(Lifetime::isBetweenLooks);
        if (!exact || lives(treated).isEmpty() || lives(control).isEmpty()) {
            return Optional.empty();
        }
        LogRank test = LogRank.of(strata);
        double p = test.test().p();
        return test.test().statistic() > 0
                ? Optional.of(new Tested(
                        "log-rank",
                        test.test().statistic(),
                        p,
                        Sentence.LOG_RANK.with(
                                "within",
                                strata.size() > 1 ? " within each " + Layout.kind(treated) : "",
                                "observed",
                                Integer.toString(test.observed()),
                                "treated",
                                treated.group(),
                                "things",
                                question.subject().things(),
                                "expected",
                                Written.fixed(test.expected(), 1),
                                "statistic",
                                Written.fixed(test.test().statistic(), 2))))
                : Optional.empty();
    }

    private static Map<String, List<Observation>> byBlock(Sample sample) {
        return sample.observations().stream()
                .collect(Collectors.groupingBy(
                        one -> one.block().map(Block::name).orElse("")));
    }

    /**
     * Returns when it happened to each, as far as that was seen; what has no time at all has no
     * say.
     */
    static List<Lifetime> lives(Sample sample) {
        return lives(sample.observations());
    }

    private static List<Lifetime> lives(List<Observation> observations) {
        List<Lifetime> lives = new ArrayList<>();
        for (Observation one : observations) {
            Observed observed = one.observed();
            if (observed instanceof Observed.Number number) {
                lives.add(Lifetime.event(time(one, number.value())));
            } else if (observed instanceof Observed.AtLeast bound) {
                lives.add(Lifetime.censored(time(one, bound.bound())));
            } else if (observed instanceof Observed.Between looks) {
                lives.add(Lifetime.between(time(one, looks.from()), looks.to()));
            } else if (observed instanceof Observed.Below bound) {
                lives.add(Lifetime.between(0, time(one, bound.bound())));
            }
        }
        return lives;
    }

    private static double time(Observation one, double time) {
        if (!(time >= 0)) {
            throw new QuestionException("The time of %s is %s; a rate needs times of zero or more."
                    .formatted(one.specimen(), Written.exact(time)));
        }
        return time;
    }
}
