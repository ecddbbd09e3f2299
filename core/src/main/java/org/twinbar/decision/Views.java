package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.LogRatio;

/** The other ways of looking at the same readings, each with the verdict that it gives. */
record Views(Judge judge, Sample treated, Sample control, Judge.Judged judged) {

    Standing standing(Verdict given) {
        List<Standing.View> views = new ArrayList<>();
        withoutDoubted(views);
        withAndWithoutBlocks(views);
        if (judge.question().effect() == Effect.RATIO) {
            onLogarithms(views);
        }
        return new Standing(given, views);
    }

    private void withoutDoubted(List<Standing.View> views) {
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
                    "without telling the " + Layout.kind(treated) + "s apart", other.verdict()));
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

    private Standing.View view(String words, double low, double high) {
        return new Standing.View(words, VerdictRule.read(low, high, judge.question()));
    }
}
