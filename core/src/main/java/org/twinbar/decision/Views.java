package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.LogRatio;
import org.twinbar.statistics.MannWhitney;
import org.twinbar.statistics.resampling.PermutationInterval;

/** The other ways of looking at the same readings, each with the verdict that it gives. */
record Views(Judge judge, Sample treated, Sample control, Judge.Judged judged) {

    /** Beyond it the count of all choices of ranks takes longer than its say is worth. */
    private static final int MOST_FOR_PAIRS = 60;

    /** However one looks, a treatment can't be told from the one run that it was made in. */
    List<Standing.View> all() {
        if (judged.layout() == Layout.CONFOUNDED) {
            return List.of();
        }
        List<Standing.View> views = new ArrayList<>();
        withoutDoubted(views);
        withAndWithoutBlocks(views);
        if (judge.question().effect() == Effect.RATIO) {
            onLogarithms(views);
        }
        byPairs(views);
        byResampling(views);
        return views;
    }

    /**
     * Returns each view with the weaker of the verdicts that it gives with some specimens and
     * without them; where one of the two has no such view, its own verdict stands for it.
     */
    static List<Standing.View> weaker(Views ones, Views others) {
        Map<String, Verdict> one = ones.byWords();
        Map<String, Verdict> other = others.byWords();
        Set<String> words = new LinkedHashSet<>(one.keySet());
        words.addAll(other.keySet());
        return words.stream()
                .map(view -> new Standing.View(
                        view,
                        one.getOrDefault(view, ones.judged().verdict())
                                .weakerOf(
                                        other.getOrDefault(view, others.judged().verdict()))))
                .toList();
    }

    private Map<String, Verdict> byWords() {
        Map<String, Verdict> verdicts = new LinkedHashMap<>();
        all().forEach(view -> verdicts.put(view.words(), view.verdict()));
        return verdicts;
    }

    private void withoutDoubted(List<Standing.View> views) {
        if (!judge.question().effect().readsDistances()) {
            return;
        }
        List<String> codes = Stream.of(treated, control)
                .flatMap(sample -> Doubts.doubted(sample).stream())
                .map(Observation::specimen)
                .toList();
        codes.forEach(code -> views.add(without(List.of(code))));
        if (codes.size() > 1) {
            views.add(without(codes));
        }
    }

    private Standing.View without(List<String> codes) {
        Sample ours = treated;
        Sample others = control;
        for (String code : codes) {
            ours = ours.without(code);
            others = others.without(code);
        }
        return new Standing.View(
                "without " + String.join(" and ", codes),
                judge.judge(ours, others).verdict());
    }

    private void withAndWithoutBlocks(List<Standing.View> views) {
        if (judged.layout() == Layout.CROSSED) {
            Judge.Judged other = judge.judge(treated.withoutBlocks(), control.withoutBlocks());
            views.add(new Standing.View(
                    "without telling the " + Written.plural(Layout.kind(treated)) + " apart",
                    other.verdict()));
        }
    }

    private void onLogarithms(List<Standing.View> views) {
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (judged.layout() != Layout.CROSSED
                && Math.min(ours.length, others.length) > 1
                && judged.treated().summary().min() > 0
                && judged.control().summary().min() > 0) {
            Estimate logs =
                    LogRatio.ofGeometricMeans(ours, others, judge.question().confidence());
            views.add(view("on logarithms", logs.low(), logs.high()));
        }
    }

    /**
     * Reads the exact interval of the middle of all pairs, which one odd specimen moves little; a
     * ratio by way of logarithms. With too few specimens for one it has no say.
     */
    private void byPairs(List<Standing.View> views) {
        boolean ratio = judge.question().effect() == Effect.RATIO;
        boolean means = ratio || judge.question().effect() == Effect.DIFFERENCE;
        double[] ours = judged.treated().values();
        double[] others = judged.control().values();
        if (!means
                || judged.layout() == Layout.CROSSED
                || Math.min(ours.length, others.length) < 2
                || ours.length + others.length > MOST_FOR_PAIRS) {
            return;
        }
        if (ratio
                && !(Math.min(
                                judged.treated().summary().min(),
                                judged.control().summary().min())
                        > 0)) {
            return;
        }
        MannWhitney.shift(
                        ratio ? logarithms(ours) : ours,
                        ratio ? logarithms(others) : others,
                        judge.question().confidence())
                .ifPresent(shift -> views.add(view(
                        "by the middle of all pairs",
                        ratio ? StrictMath.exp(shift.low()) : shift.low(),
                        ratio ? StrictMath.exp(shift.high()) : shift.high())));
    }

    /** With too few splits for two ends the permutation has no say. */
    private void byResampling(List<Standing.View> views) {
        if (judged.layout() == Layout.CROSSED) {
            return;
        }
        Resampled resampled = new Resampled(judge.question());
        resampled
                .permutation(judged)
                .filter(PermutationInterval::isBounded)
                .ifPresent(found -> views.add(view("by permutation", found.low(), found.high())));
        resampled
                .bootstrap(judged)
                .ifPresent(found -> views.add(view("by the bootstrap", found.low(), found.high())));
    }

    private static double[] logarithms(double[] values) {
        return Arrays.stream(values).map(StrictMath::log).toArray();
    }

    private Standing.View view(String words, double low, double high) {
        return new Standing.View(words, VerdictRule.read(low, high, judge.question()));
    }
}
