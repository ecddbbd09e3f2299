package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.groups.DunnettRange;
import org.twinbar.statistics.groups.StudentizedRange;

/**
 * Holds several treated groups against one control, and says what changes when they are taken
 * together.
 *
 * <p>Each comparison is made again with its own default interval, at the error rate at which all
 * intervals hold together: for means, that of Dunnett's critical |t| (against the control) or of
 * Tukey's (all pairs), each group keeping its own spread and each comparison its own degrees of
 * freedom; for all else and within blocks the error rate over the number of comparisons
 * (Bonferroni). So an interval never becomes narrower by having fellows.
 *
 * <p>Limits: simulated with four groups of normal scatter (300 studies each, Monte Carlo error 1.3
 * %), the three intervals against the control held together in 96 % with five specimens a group and
 * 95 % with spreads of 1 to 8, but in 91 % with four specimens and such spreads, where each alone
 * left 87 %. Sources: {@link DunnettRange#ofVariances}; P. A. Games, J. F. Howell, Pairwise
 * multiple comparison procedures with unequal n's and/or variances (1976),
 * doi:10.3102/10769986001002113.
 */
public final class Several {

    static final Finding.Kind ONE_OF_SEVERAL = Finding.Kind.note(
            "one-of-several",
            "%s is one of %s treatments held against %s. Judged so that all of them hold together, its interval is %s"
                    + " and the verdict %s.");
    static final Finding.Kind BEST_OF_SEVERAL = Finding.Kind.warning(
            "best-of-several",
            "%s did best of %s treatments held against %s, and the best of several is partly the luckiest: expect"
                    + " somewhat less of it next time. Judged so that all of them hold together, its interval is %s and"
                    + " the verdict %s.");

    /** Beyond it Student's t is the normal distribution to six digits. */
    private static final double MOST_DF = 1e6;

    private final Question question;
    private final List<Observation> observations;
    private final String control;
    private final List<String> treated;

    private Several(
            Question question,
            List<Observation> observations,
            String control,
            List<String> treated) {
        this.question = question;
        this.observations = observations;
        this.control = control;
        this.treated = treated;
    }

    /**
     * Returns a comparison of each treated group with the control, in their order; where there are
     * several, each among its fellows.
     *
     * @throws QuestionException as {@link Comparing#of} does
     */
    public static List<Comparison> of(
            Question question,
            List<Observation> observations,
            String control,
            List<String> treated) {
        List<String> groups = treated.stream().distinct().toList();
        List<Comparison> alone = groups.stream()
                .map(group -> Comparing.of(question, observations, control, group))
                .toList();
        return groups.size() < 2
                ? alone
                : new Several(question, observations, control, groups).among(alone);
    }

    private List<Comparison> among(List<Comparison> alone) {
        Family family = new Family(held(), pairs());
        Optional<Comparison> best = best(alone);
        List<Comparison> among = new ArrayList<>();
        for (Comparison one : alone) {
            Family.Held held = family.of(one.treated().name());
            Finding.Kind kind =
                    best.filter(it -> it == one).isPresent() ? BEST_OF_SEVERAL : ONE_OF_SEVERAL;
            String interval = ScaleWords.of(question, held.found()).interval(held.found());
            Finding finding = kind.with(
                    held.treated(),
                    treated.size(),
                    control,
                    interval,
                    held.verdict() == one.verdict()
                            ? "stays"
                            : "would be \"%s\"".formatted(held.verdict().word()));
            Optional<String> said = held.verdict() == one.verdict()
                    ? Optional.empty()
                    : Optional.of(Sentence.AMONG_SEVERAL.with(
                            "n",
                            treated.size(),
                            "control",
                            control,
                            "verdict",
                            held.verdict().word(),
                            "interval",
                            interval));
            Standing standing = one.standing()
                    .with(new Standing.View(
                            treated.size() == 2
                                    ? "judged together with both treatments"
                                    : "judged together with all %s treatments"
                                            .formatted(treated.size()),
                            held.verdict()));
            among.add(one.with(family, standing, said, finding));
        }
        return among;
    }

    /** The best is told only where there is a gain to be the best at. */
    private Optional<Comparison> best(List<Comparison> alone) {
        if (question.expectation() == Expectation.SAME) {
            return Optional.empty();
        }
        int sign = question.expectation() == Expectation.LOWER ? -1 : 1;
        Optional<Comparison> best = Optional.empty();
        double farthest = Double.NEGATIVE_INFINITY;
        for (Comparison one : alone) {
            double gain = sign * one.found().estimate().orElse(Double.NEGATIVE_INFINITY * sign);
            boolean gained =
                    one.verdict() == Verdict.SUPPORTED || one.verdict() == Verdict.BETTER_SIZE_OPEN;
            if (gained && gain > farthest) {
                best = Optional.of(one);
                farthest = gain;
            }
        }
        return best;
    }

    private List<Family.Held> held() {
        List<Judge.Judged> alone = treated.stream()
                .map(group -> Comparing.comparing(question, observations, control, group)
                        .judged())
                .toList();
        Optional<DunnettRange> range = variances(alone)
                .map(it ->
                        DunnettRange.ofVariances(it[0], Arrays.copyOfRange(it, 1, it.length), 1));
        List<Family.Held> held = new ArrayList<>();
        for (int i = 0; i < treated.size(); i++) {
            Optional<Double> df = df(alone.get(i)).filter(unused -> range.isPresent());
            double rate = df.map(it -> dunnett(range.orElseThrow(), it))
                    .orElse(question.errorRate() / treated.size());
            Judgement at = Comparing.judge(
                    question.withErrorRate(rate), observations, control, treated.get(i));
            String method = df.isPresent() ? "Dunnett" : "Bonferroni";
            held.add(new Family.Held(
                    treated.get(i),
                    together(at.found(), treated.size() + " comparisons", method),
                    at.verdict()));
        }
        return held;
    }

    private List<Family.Pair> pairs() {
        List<String> groups = new ArrayList<>(List.of(control));
        groups.addAll(treated);
        int count = groups.size() * (groups.size() - 1) / 2;
        List<Family.Pair> pairs = new ArrayList<>();
        for (int one = 1; one < groups.size(); one++) {
            for (int other = 0; other < one; other++) {
                Judge.Judged alone = Comparing.comparing(
                                question, observations, groups.get(other), groups.get(one))
                        .judged();
                Optional<Double> df = df(alone);
                double rate =
                        df.map(it -> tukey(groups.size(), it)).orElse(question.errorRate() / count);
                Found found = Comparing.judge(
                                question.withErrorRate(rate),
                                observations,
                                groups.get(other),
                                groups.get(one))
                        .found();
                String method = df.isPresent() ? "Tukey" : "Bonferroni";
                pairs.add(new Family.Pair(
                        groups.get(one),
                        groups.get(other),
                        together(found, count + " pairs", method)));
            }
        }
        return pairs;
    }

    /** Returns v₀ of the control's mean, then vᵢ/ρᵢ² of each treated one. */
    private Optional<double[]> variances(List<Judge.Judged> alone) {
        double[] variances = new double[alone.size() + 1];
        for (int i = 0; i < alone.size(); i++) {
            Judge.Judged one = alone.get(i);
            if (df(one).isEmpty()) {
                return Optional.empty();
            }
            TwoMeans means = new Means(question, stepOf(i)).means(one.treated(), one.control());
            double ratio =
                    question.effect() == Effect.RATIO ? one.found().estimate().orElse(1) : 1;
            variances[0] = means.control().variance();
            variances[i + 1] = means.treated().variance() / (ratio * ratio);
            if (!(variances[0] > 0 && variances[i + 1] > 0)) {
                return Optional.empty();
            }
        }
        return Optional.of(variances);
    }

    private double stepOf(int place) {
        return Comparing.comparing(question, observations, control, treated.get(place))
                .step();
    }

    /** Returns the degrees of freedom of two means with spreads of their own, where it is these. */
    private Optional<Double> df(Judge.Judged alone) {
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        return means
                        && alone.layout().comparesMeansAlone()
                        && alone.found().df() instanceof Amount.Known known
                ? Optional.of(Math.min(MOST_DF, Math.max(1, known.value())))
                : Optional.empty();
    }

    private double dunnett(DunnettRange range, double df) {
        double critical = range.withDf(df).quantile(question.confidence());
        return new StudentT(df).twoSidedP(critical);
    }

    private double tukey(int groups, double df) {
        double critical =
                new StudentizedRange(groups, df).quantile(question.confidence()) / Math.sqrt(2);
        return new StudentT(df).twoSidedP(critical);
    }

    private Found together(Found found, String count, String method) {
        return new Found(
                found.kind(),
                found.estimate(),
                found.low(),
                found.high(),
                question.confidence(),
                found.df(),
                "%s, as wide as %s together need (%s)".formatted(found.method(), count, method),
                Amount.none("the interval answers for all together"));
    }
}
