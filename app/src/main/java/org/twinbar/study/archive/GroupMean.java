package org.twinbar.study.archive;

import java.util.Map;
import java.util.OptionalDouble;
import org.twinbar.method.Property;
import org.twinbar.statistics.StudentT;
import org.twinbar.study.judged.StudyName;

/**
 * What one group of one study gave.
 *
 * @param alike the factors that all its specimens share
 * @param n specimens with a number
 * @param sd standard deviation of one of them; 0 for a single one
 */
public record GroupMean(
        StudyName study,
        String method,
        Property property,
        String group,
        Map<String, String> alike,
        int n,
        double mean,
        double sd) {

    private static final double LEVEL = 0.95;

    public GroupMean {
        alike = Map.copyOf(alike);
    }

    /** Returns half of the mean's 95 % interval, t·s/√n; empty for a single specimen. */
    public OptionalDouble half() {
        return n < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(new StudentT(n - 1).twoSided(LEVEL) * sd / Math.sqrt(n));
    }
}
