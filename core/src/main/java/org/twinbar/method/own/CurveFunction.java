package org.twinbar.method.own;

import java.util.Locale;

/** The numbers that a formula may take from a curve. */
enum CurveFunction {
    /** The largest value of a channel, or the one at the mark that a person moved. */
    PEAK(1),
    FIRST(1),
    LAST(1),
    MEAN(1),
    /** The value of the first channel in the row where the second one has its peak. */
    AT_PEAK(2),
    /** ∫ of the first channel over the second, by the trapezoid rule, row by row. */
    AREA(2);

    private final int channels;

    CurveFunction(int channels) {
        this.channels = channels;
    }

    int channels() {
        return channels;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
