package org.twinbar.study.archive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.twinbar.decision.Effect;
import org.twinbar.exchange.InputException;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.pooling.Pooled;
import org.twinbar.statistics.pooling.Pooling;

/**
 * Several studies of one treatment and one property, taken together.
 *
 * @param gains the studies that take part
 * @param withoutInterval gains that can't, for want of a finite interval
 * @param pooled on logarithms for a ratio; ends and estimates of it are given back as ratios
 * @param differing what differs between the studies, in sentences
 */
public record Together(
        List<Gain> gains, List<Gain> withoutInterval, Pooled pooled, List<String> differing) {

    private static final double LEVEL = 0.95;
    private static final Set<Effect> POOLED =
            Set.of(Effect.RATIO, Effect.DIFFERENCE, Effect.RATE, Effect.SHARE);

    public Together {
        gains = List.copyOf(gains);
        withoutInterval = List.copyOf(withoutInterval);
        differing = List.copyOf(differing);
    }

    /**
     * Pools gains.
     *
     * @throws InputException unless there are two or more with finite intervals, of one method,
     *     property and kind of effect, each from a study of its own
     */
    public static Together of(List<Gain> all) {
        requireLike(all, "tests", Gain::method);
        requireLike(all, "properties", it -> it.property().column());
        requireLike(all, "kinds of effect", it -> it.kind().word());
        requireLike(all, "treatments", Gain::treated);
        List<Gain> gains =
                all.stream().filter(it -> it.standardError().isPresent()).toList();
        List<Gain> without =
                all.stream().filter(it -> it.standardError().isEmpty()).toList();
        if (gains.size() < 2) {
            throw new InputException(
                    "%s of the gains found %s a finite interval; two or more are taken together"
                            .formatted(gains.size(), gains.size() == 1 ? "has" : "have"));
        }
        if (!POOLED.contains(gains.get(0).kind())) {
            throw new InputException("a %s can't be taken together over studies"
                    .formatted(gains.get(0).kind().word()));
        }
        requireOneOfEachStudy(gains);
        List<Pooling.Study> studies = gains.stream()
                .map(it -> new Pooling.Study(
                        onScale(it, it.estimate().orElseThrow()),
                        it.standardError().orElseThrow(),
                        it.specimens()))
                .toList();
        return new Together(
                gains,
                without,
                Pooling.of(studies, Pooling.Between.RESTRICTED_LIKELIHOOD, LEVEL),
                differing(gains));
    }

    private static double onScale(Gain gain, double estimate) {
        return gain.isOnLogarithms() ? StrictMath.log(estimate) : estimate;
    }

    /** Returns a pooled estimate on the scale of the effect. */
    public Estimate back(Estimate estimate) {
        if (!gains.get(0).isOnLogarithms()) {
            return estimate;
        }
        return new Estimate(
                StrictMath.exp(estimate.value()),
                StrictMath.exp(estimate.low()),
                StrictMath.exp(estimate.high()),
                estimate.level(),
                estimate.df(),
                estimate.n(),
                estimate.method() + ", on logarithms");
    }

    private static void requireLike(List<Gain> gains, String what, Function<Gain, String> of) {
        Set<String> found = gains.stream().map(of).collect(Collectors.toCollection(TreeSet::new));
        if (found.size() > 1) {
            throw new InputException("only like is taken together, and here are several %s: %s"
                    .formatted(what, String.join(", ", found)));
        }
    }

    private static void requireOneOfEachStudy(List<Gain> gains) {
        Set<String> seen = new LinkedHashSet<>();
        for (Gain gain : gains) {
            if (!seen.add(gain.study().name())) {
                throw new InputException(
                        ("the study '%s' would count twice: say which of its answers by the"
                                        + " factors that tell them apart")
                                .formatted(gain.study().name()));
            }
        }
    }

    /** Returns what differs between gains that stand side by side, in sentences. */
    public static List<String> differing(List<Gain> gains) {
        List<String> sentences = new ArrayList<>();
        several(sentences, gains, "The tests differ", Gain::method);
        several(sentences, gains, "Versions of the method differ", it -> "" + it.version());
        several(sentences, gains, "The controls differ", Gain::control);
        several(sentences, gains, "What is set in the test differs", it -> words(it.settings()));
        Set<String> factors = new TreeSet<>();
        gains.forEach(it -> factors.addAll(it.alike().keySet()));
        for (String factor : factors) {
            several(
                    sentences,
                    gains,
                    "'%s' differs".formatted(factor.replace('_', ' ')),
                    it -> it.alike().getOrDefault(factor, "several, or not said"));
        }
        return sentences;
    }

    private static void several(
            List<String> sentences, List<Gain> gains, String what, Function<Gain, String> of) {
        Set<String> found = gains.stream().map(of).collect(Collectors.toCollection(TreeSet::new));
        if (found.size() > 1) {
            sentences.add(what + ": " + String.join("; ", found) + ".");
        }
    }

    private static String words(Map<String, String> settings) {
        return settings.isEmpty()
                ? "nothing"
                : settings.entrySet().stream()
                        .map(it -> it.getKey() + " = " + it.getValue())
                        .sorted()
                        .collect(Collectors.joining(", "));
    }
}
