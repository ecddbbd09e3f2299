package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.StudentT;
import org.twinbar.statistics.TwoMeans;
import org.twinbar.statistics.groups.Interaction;

/**
 * Asks whether a treatment that is crossed with a factor, orientation say, acts alike at all of its
 * levels.
 *
 * <p>Means of specimens: {@link Interaction}, errors that all share counted once. All else, and
 * means within blocks: the two effects with their own intervals, whose distances to their ends are
 * combined, √(a² + b²) (G. Y. Zou, A. Donner, Construction of confidence limits about effect
 * measures, 2008, doi:10.1002/sim.3095); ratios and rates on logarithms. With more than two levels
 * the error rate is shared among all pairs of them (Bonferroni).
 */
public final class Crossing {

    /**
     * The specimens at one level of the factor.
     *
     * @param words the level, such as {@code flat}
     */
    public record Part(String words, List<Observation> observations) {
        public Part {
            observations = List.copyOf(observations);
        }
    }

    /** One part with what it came to. */
    private record Seen(String words, double step, Judge.Judged judged) {}

    private final Question question;

    private Crossing(Question question) {
        this.question = question;
    }

    /**
     * Returns an answer for every two parts that hold both groups; none for a level, which has no
     * control.
     *
     * @throws QuestionException as {@link Comparing#of} does
     */
    public static List<Alike> of(
            Question question, List<Part> parts, String control, String treated) {
        if (question.effect() == Effect.LEVEL) {
            return List.of();
        }
        List<Part> both = parts.stream()
                .filter(part -> holds(part, control) && holds(part, treated))
                .toList();
        int pairs = both.size() * (both.size() - 1) / 2;
        if (pairs == 0) {
            return List.of();
        }
        Question shared = question.withErrorRate(question.errorRate() / pairs);
        List<Seen> seen = both.stream()
                .map(part -> {
                    Comparing comparing =
                            Comparing.comparing(shared, part.observations(), control, treated);
                    return new Seen(part.words(), comparing.step(), comparing.judged());
                })
                .toList();
        List<Alike> all = new ArrayList<>();
        for (int one = 0; one < seen.size(); one++) {
            for (int other = one + 1; other < seen.size(); other++) {
                all.add(new Crossing(shared)
                        .alike(seen.get(one), seen.get(other), question.confidence()));
            }
        }
        return all;
    }

    private static boolean holds(Part part, String group) {
        return part.observations().stream().anyMatch(it -> it.group().equals(group));
    }

    private Alike alike(Seen here, Seen there, double level) {
        Found contrast = contrast(here, there);
        Found shown = new Found(
                contrast.kind(),
                contrast.estimate(),
                contrast.low(),
                contrast.high(),
                level,
                contrast.df(),
                contrast.method(),
                contrast.p());
        Alike.Answer answer = here.judged().layout() == Layout.CONFOUNDED
                        || there.judged().layout() == Layout.CONFOUNDED
                ? Alike.Answer.OPEN
                : answer(shown);
        return new Alike(
                here.words(), there.words(), shown, answer, words(here, there, shown, answer));
    }

    private Found contrast(Seen here, Seen there) {
        boolean means = question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
        boolean plain = here.judged().layout().comparesMeansAlone()
                && there.judged().layout().comparesMeansAlone();
        if (!here.judged().found().estimate().isKnown()
                || !there.judged().found().estimate().isKnown()) {
            return open("one of the two has no effect that could be seen");
        }
        if (means && plain) {
            return ofMeans(here, there);
        }
        return ofIntervals(here.judged().found(), there.judged().found());
    }

    private Found ofMeans(Seen here, Seen there) {
        for (Seen seen : List.of(here, there)) {
            if (Math.min(
                            seen.judged().treated().values().length,
                            seen.judged().control().values().length)
                    < 2) {
                return open("a group of one specimen shows no scatter");
            }
        }
        Set<String> sources = new TreeSet<>(sources(here));
        sources.addAll(sources(there));
        TwoMeans one = means(here, sources);
        TwoMeans other = means(there, sources);
        if (one.treated().variance()
                        + one.control().variance()
                        + other.treated().variance()
                        + other.control().variance()
                == 0) {
            return open("nothing scatters, and there is nothing to judge by");
        }
        boolean ratio = logarithmic();
        Estimate estimate = ratio
                ? Interaction.ofRatios(one, other, question.confidence())
                : Interaction.ofDifferences(one, other, question.confidence());
        double half = (scale(estimate.high()) - scale(estimate.low())) / 2;
        StudentT t = new StudentT(estimate.df());
        double p = t.twoSidedP(scale(estimate.value()) * t.twoSided(question.confidence()) / half);
        return Founds.of(question.effect(), estimate, Amount.of(p));
    }

    private static Set<String> sources(Seen seen) {
        Set<String> sources = new TreeSet<>(seen.judged().treated().sources());
        sources.addAll(seen.judged().control().sources());
        return sources;
    }

    private TwoMeans means(Seen seen, Set<String> sources) {
        return new Means(question, seen.step())
                .means(seen.judged().treated(), seen.judged().control(), sources);
    }

    private Found ofIntervals(Found here, Found there) {
        double one = scale(here.estimate().orElse(0));
        double other = scale(there.estimate().orElse(0));
        Amount low =
                end(one - other, one - scale(here.lowest()), scale(there.highest()) - other, -1);
        Amount high =
                end(one - other, scale(here.highest()) - one, other - scale(there.lowest()), 1);
        return new Found(
                question.effect(),
                Amount.of(back(one - other)),
                low,
                high,
                question.confidence(),
                Amount.none(Wording.NO_SCATTER),
                "two intervals combined, " + here.method(),
                Amount.none("none was calculated"));
    }

    private Amount end(double value, double a, double b, int side) {
        double distance = Math.sqrt(a * a + b * b);
        return Double.isFinite(distance)
                ? Amount.of(back(value + side * distance))
                : Amount.none(Wording.NO_BOUND);
    }

    private Found open(String reason) {
        return Found.open(
                question.effect(), Amount.none(reason), question.confidence(), "none", reason);
    }

    private boolean logarithmic() {
        return question.effect() == Effect.RATIO || question.effect() == Effect.RATE;
    }

    private double scale(double effect) {
        return logarithmic() ? StrictMath.log(Math.max(0, effect)) : effect;
    }

    private double back(double scaled) {
        return logarithmic() ? StrictMath.exp(scaled) : scaled;
    }

    /** Returns the contrast's value where the treatment acts alike. */
    private double same() {
        return logarithmic() ? 1 : 0;
    }

    private Alike.Answer answer(Found contrast) {
        if (contrast.lowest() > same() || contrast.highest() < same()) {
            return Alike.Answer.DIFFERENT;
        }
        if (question.worthSize().isEmpty()) {
            return Alike.Answer.OPEN;
        }
        double worth = question.worthSize().getAsDouble();
        double most = logarithmic() ? 1 + worth : worth;
        double least = logarithmic() ? 1 / most : -worth;
        boolean inside = contrast.lowest() > least && contrast.highest() < most;
        return inside ? Alike.Answer.ALIKE : Alike.Answer.OPEN;
    }

    private String words(Seen here, Seen there, Found contrast, Alike.Answer answer) {
        if (!contrast.estimate().isKnown()) {
            return Sentence.ALIKE_UNKNOWN.with(
                    "label", question.subject().label(),
                    "treated", here.judged().treated().group(),
                    "here", here.words(),
                    "there", there.words(),
                    "reason", ((Amount.None) contrast.estimate()).reason());
        }
        Sentence sentence = switch (answer) {
            case ALIKE -> Sentence.ACTS_ALIKE;
            case DIFFERENT -> Sentence.ACTS_DIFFERENTLY;
            case OPEN -> Sentence.MAY_ACT_ALIKE;
        };
        ScaleWords scale = ScaleWords.ofContrast(question, contrast);
        String text = sentence.with(
                "label",
                question.subject().label(),
                "one",
                change(here.judged().found()),
                "other",
                change(there.judged().found()),
                "here",
                here.words(),
                "there",
                there.words(),
                "treated",
                here.judged().treated().group(),
                "control",
                here.judged().control().group(),
                "scale",
                logarithmic() ? "ratio " : "",
                "contrast",
                scale.change(contrast.estimate().orElse(same())),
                "interval",
                Written.percent(contrast.level()) + " interval " + scale.interval(contrast),
                "worth",
                question.worthSize().isPresent()
                        ? scale.size(question.worthSize().getAsDouble())
                        : "");
        return text;
    }

    private String change(Found found) {
        return ScaleWords.of(question, found).change(found.estimate().orElse(question.none()));
    }
}
