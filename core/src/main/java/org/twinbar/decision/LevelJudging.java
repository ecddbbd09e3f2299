package org.twinbar.decision;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.statistics.WeibullPivots;

/**
 * Judges thousands of groups against one level, each as {@link Comparing#level} does: how Weibull
 * fits scatter is simulated once for each number of specimens.
 */
public final class LevelJudging {

    private final Question question;
    private final Map<Integer, WeibullPivots> pivots = new HashMap<>();

    /** @throws QuestionException unless the question names a level and a resolution */
    public LevelJudging(Question question) {
        if (question.level().isEmpty() || question.resolution().isEmpty()) {
            throw new QuestionException("Judging many groups needs a level and a resolution.");
        }
        this.question = question;
    }

    /** Returns the verdict on one group. */
    public Judgement judge(List<Observation> observations, String group) {
        double step = question.resolution().orElse(0);
        Levels levels = new Levels(
                question,
                step,
                n -> pivots.computeIfAbsent(
                        n, specimens -> Levels.simulated(specimens, question.seed())));
        return new LevelComparing(new Judge(question, step), Sample.of(group, observations), levels)
                .judgement();
    }
}
