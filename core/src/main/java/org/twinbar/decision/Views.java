package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.LogRatio;
import org.twinbar.statistics.MannWhitney;
import org.twinbar.statistics.resampling.PermutationInterval;

/** The other ways of looking at the same readings, each with the verdict that it gives. */
record Views(Judge judge, Sample treated, Sample control, Judge.Judged judged) {

    /** Beyond it the count of all choices of ranks takes longer than its say is worth. */
    private static final int MOST_FOR_PAIRS = 60;

    Standing standing(Verdict given) {
        List<Standing.View> views = new ArrayList<>();
        withoutDoubted(views);
        withAndWithoutBlocks(views);
        if (judge.question().effect() == Effect.RATIO) {
            onLogarithms(views);
        }
        byPairs(views);
        byResampling(views);
        return new Standing(given, views);
    }

    private void withoutDoubted(List<Standing.View> views) {
        if (!judge.question().effect().readsDistances()) {
            return;
        }
        for (Sample sample : List.of(treated, control)) {
            Doubts.doubted(sample).ifPresent(doubted -> {
                String code = doubted.specimen();
                Judge.Judged other = judge.judge(treated.without(code), control.without(code));
                views.add(new Standing.View("without " + code, other.verdict()));
            });
        }
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
