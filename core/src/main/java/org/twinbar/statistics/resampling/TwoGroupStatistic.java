package org.twinbar.statistics.resampling;

/** An effect that compares the centre of a treated group with that of its control. */
public enum TwoGroupStatistic {
    DIFFERENCE_OF_MEANS("difference of means"),
    RATIO_OF_MEANS("ratio of means"),
    DIFFERENCE_OF_MEDIANS("difference of medians"),
    RATIO_OF_MEDIANS("ratio of medians");

    private final String words;

    TwoGroupStatistic(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    boolean isRatio() {
        return this == RATIO_OF_MEANS || this == RATIO_OF_MEDIANS;
    }

    double effect(double treated, double control) {
        return isRatio() ? treated / control : treated - control;
    }

    Centre centre(double[] values) {
        return switch (this) {
            case DIFFERENCE_OF_MEANS, RATIO_OF_MEANS -> new Centre.Mean(values);
            case DIFFERENCE_OF_MEDIANS, RATIO_OF_MEDIANS -> Centre.Median.of(values);
        };
    }
}
