package org.twinbar.statistics;

import java.util.Arrays;

/**
 * The values of a treated group and of its control, in one unit.
 *
 * <p>Two arrays side by side are too easily swapped; this keeps them apart by name.
 */
public final class TwoGroups {
    private final double[] treated;
    private final double[] control;

    private TwoGroups(double[] treated, double[] control) {
        this.treated = treated;
        this.control = control;
    }

    /**
     * Two groups of finite values; either may be empty, since a block may hold one group only.
     *
     * @throws IllegalArgumentException if a value is not finite
     */
    public static TwoGroups of(double[] treated, double[] control) {
        return new TwoGroups(finite(treated, "treated"), finite(control, "control"));
    }

    public double[] treated() {
        return treated.clone();
    }

    public double[] control() {
        return control.clone();
    }

    public int treatedCount() {
        return treated.length;
    }

    public int controlCount() {
        return control.length;
    }

    /** The same values with the groups in each other's place. */
    public TwoGroups swapped() {
        return new TwoGroups(control, treated);
    }

    /**
     * These groups, where each holds at least so many values.
     *
     * @throws IllegalArgumentException if a group holds fewer than {@code leastInclusive} values
     */
    public TwoGroups holdingEach(int leastInclusive) {
        int fewest = Math.min(treated.length, control.length);
        if (fewest < leastInclusive) {
            throw new IllegalArgumentException("Each group needs at least " + leastInclusive
                    + " values, but one has " + fewest + ".");
        }
        return this;
    }

    /** Whether every value is above zero, as a ratio needs. */
    public boolean isAboveZero() {
        return Arrays.stream(treated).allMatch(value -> value > 0)
                && Arrays.stream(control).allMatch(value -> value > 0);
    }

    /**
     * These groups, where every value is above zero, as a ratio needs.
     *
     * @throws IllegalArgumentException if a value is ≤ 0
     */
    public TwoGroups aboveZero() {
        if (!isAboveZero()) {
            double least = Math.min(
                    Arrays.stream(treated).min().orElse(Double.MAX_VALUE),
                    Arrays.stream(control).min().orElse(Double.MAX_VALUE));
            throw new IllegalArgumentException(
                    "A ratio needs values above 0, but one is " + least + ".");
        }
        return this;
    }

    private static double[] finite(double[] values, String name) {
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("The values of the " + name
                        + " group must be finite, but one is " + value + ".");
            }
        }
        return values.clone();
    }

    @Override
    public String toString() {
        return "treated " + Arrays.toString(treated) + ", control " + Arrays.toString(control);
    }
}
