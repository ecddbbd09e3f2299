package org.twinbar.statistics;

import java.util.Arrays;

/** Data sets that several tests check values on. */
final class Data {

    /** Working set W of METHODS.md I.1, made there: untreated. */
    static final double[] W_CONTROL = numbers("42.1 44.0 41.3 43.5 42.8");

    /** Working set W of METHODS.md I.1, made there: treated. */
    static final double[] W_TREATED = numbers("47.9 46.2 49.0 48.1 45.6 47.4");

    /** Student (1908), as R's data set "sleep" has it: first drug. */
    static final double[] SLEEP_1 = numbers("0.7 -1.6 -0.2 -1.2 -0.1 3.4 3.7 0.8 0 2");

    /** Student (1908), as R's data set "sleep" has it: second drug. */
    static final double[] SLEEP_2 = numbers("1.9 0.8 1.1 0.1 -0.1 4.4 5.5 1.6 4.6 3.4");

    private Data() {}

    static double[] numbers(String text) {
        return Arrays.stream(text.trim().split("\\s+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
