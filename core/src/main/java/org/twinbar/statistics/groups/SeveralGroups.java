package org.twinbar.statistics.groups;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.twinbar.statistics.Arguments;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Summary;

/**
 * Means of several groups with one spread pooled over them, compared so that all intervals hold
 * together.
 *
 * @param means the groups' means
 * @param counts how many specimens each mean is of
 * @param sd standard deviation of one specimen, pooled
 * @param df its degrees of freedom
 */
public record SeveralGroups(List<Double> means, List<Integer> counts, double sd, double df) {

    /**
     * One of the comparisons.
     *
     * @param first index of the group that is compared
     * @param second index of the group that it is compared with
     * @param difference first less second, with the interval that holds together with all others
     * @param p the probability of a difference at least as large anywhere among the comparisons, if
     *     there is none
     */
    public record Difference(int first, int second, Estimate difference, double p) {}

    /**
     * @throws IllegalArgumentException unless there are 2 means or more, a count ≥ 1 for each, sd ≥
     *     0, df ≥ 1
     */
    public SeveralGroups {
        means = List.copyOf(means);
        counts = List.copyOf(counts);
        Arguments.requireAtLeast(means.size(), 2, "number of groups");
        if (means.size() != counts.size()) {
            throw new IllegalArgumentException(
                    means.size() + " means need as many counts, not " + counts.size() + ".");
        }
        counts.forEach(count -> Arguments.requireAtLeast(count, 1, "number of specimens"));
        Arguments.requireNotNegative(sd, "standard deviation");
        if (!(df >= 1)) {
            throw new IllegalArgumentException(
                    "The degrees of freedom must be at least 1, not " + df + ".");
        }
    }

    /**
     * Groups of readings, their spread pooled.
     *
     * @throws IllegalArgumentException if there are fewer than 2 groups, one is empty, or none has
     *     2 values
     */
    public static SeveralGroups of(double[]... groups) {
        OneWay analysis = OneWay.of(groups);
        return new SeveralGroups(
                Arrays.stream(groups).map(group -> Summary.of(group).mean()).toList(),
                Arrays.stream(groups).map(group -> group.length).toList(),
                analysis.sd(),
                analysis.withinDf());
    }

    /**
     * All pairs, Tukey and Kramer: x̄ᵢ − x̄ⱼ ± q·s·√((1/nᵢ + 1/nⱼ)/2), q from the studentized
     * range.
     *
     * <p>Exact for equal numbers; for unequal ones a little wide. Source: C. Y. Kramer, Extension
     * of multiple range tests to group means with unequal numbers of replications (1956),
     * doi:10.2307/3001469.
     *
     * @return a comparison of each later group with each earlier one
     * @throws IllegalArgumentException unless 0 < level < 1
     */
    public List<Difference> allPairs(double level) {
        StudentizedRange range = new StudentizedRange(means.size(), df);
        double reach = range.quantile(Arguments.requireInside(level, "level")) / Math.sqrt(2);
        List<Difference> all = new ArrayList<>();
        for (int second = 0; second < means.size(); second++) {
            for (int first = second + 1; first < means.size(); first++) {
                double t = t(first, second);
                all.add(difference(
                        first,
                        second,
                        reach,
                        level,
                        "Tukey",
                        range.above(Math.abs(t) * Math.sqrt(2))));
            }
        }
        return all;
    }

    /**
     * Every other group against one control, Dunnett: x̄ᵢ − x̄₀ ± d·s·√(1/nᵢ + 1/n₀), d from
     * {@link DunnettRange}.
     *
     * @param control index of the control
     * @throws IllegalArgumentException unless 0 < level < 1 and the control is one of the groups
     */
    public List<Difference> against(int control, double level) {
        if (control < 0 || control >= means.size()) {
            throw new IllegalArgumentException("The control must be one of the groups 0 to "
                    + (means.size() - 1) + ", not " + control + ".");
        }
        int[] treated = new int[means.size() - 1];
        for (int i = 0; i < treated.length; i++) {
            treated[i] = counts.get(i < control ? i : i + 1);
        }
        DunnettRange range = DunnettRange.of(counts.get(control), treated, df);
        double reach = range.quantile(Arguments.requireInside(level, "level"));
        List<Difference> all = new ArrayList<>();
        for (int first = 0; first < means.size(); first++) {
            if (first != control) {
                double t = t(first, control);
                all.add(difference(
                        first, control, reach, level, "Dunnett", range.above(Math.abs(t))));
            }
        }
        return all;
    }

    private Difference difference(
            int first, int second, double reach, double level, String method, double p) {
        double value = means.get(first) - means.get(second);
        double half = reach * standardError(first, second);
        Estimate estimate = new Estimate(
                value,
                value - half,
                value + half,
                level,
                df,
                counts.get(first) + counts.get(second),
                method);
        return new Difference(first, second, estimate, Math.min(1, Math.max(0, p)));
    }

    private double t(int first, int second) {
        double value = means.get(first) - means.get(second);
        return value == 0 ? 0 : value / standardError(first, second);
    }

    private double standardError(int first, int second) {
        return sd * Math.sqrt(1.0 / counts.get(first) + 1.0 / counts.get(second));
    }
}
