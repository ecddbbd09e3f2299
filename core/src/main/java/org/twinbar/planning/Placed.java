package org.twinbar.planning;

import java.util.OptionalInt;

/**
 * One specimen of a plan.
 *
 * @param code blind: a letter and three figures, drawn at random
 * @param group name of the group that it belongs to; kept from whoever reads the instruments
 * @param series name of the series that it belongs to
 * @param run print run, counted from 1; 0 for pilots, which are printed before all others
 * @param position place in the run, counted from 1
 * @param mix that it is coated from, counted from 1; empty where its group takes none
 * @param load of the oven that it is heated in, counted from 1; empty where its group takes none
 * @param test when it is tested within its series, counted from 1
 */
public record Placed(
        String code,
        String group,
        String series,
        int run,
        int position,
        OptionalInt mix,
        OptionalInt load,
        int test) {

    private static final int BEFORE_ALL_RUNS = 0;

    /**
     * Returns a pilot.
     *
     * @param control name of the untreated group, which it is made as
     */
    public static Placed pilot(String code, String control, String series, int position, int test) {
        return new Placed(
                code,
                control,
                series,
                BEFORE_ALL_RUNS,
                position,
                OptionalInt.empty(),
                OptionalInt.empty(),
                test);
    }

    /** Returns whether it is a pilot, which is never compared. */
    public boolean isPilot() {
        return run == BEFORE_ALL_RUNS;
    }

    Placed tested(int order) {
        return new Placed(code, group, series, run, position, mix, load, order);
    }
}
