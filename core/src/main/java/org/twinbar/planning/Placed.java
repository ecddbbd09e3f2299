package org.twinbar.planning;

import java.util.OptionalInt;

/**
 * One specimen of a plan.
 *
 * @param code blind: a letter and three figures, drawn at random
 * @param group name of the group that it belongs to; kept from whoever reads the instruments
 * @param series name of the series that it belongs to
 * @param run print run, counted from 1
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

    Placed tested(int order) {
        return new Placed(code, group, series, run, position, mix, load, order);
    }
}
