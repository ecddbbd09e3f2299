package org.twinbar.report.paper;

import java.util.Optional;

/**
 * One specimen as sheets name it; texts are empty where nothing is known.
 *
 * @param code that stands on it
 * @param kind what it is alike with but for its group
 * @param test name of the method that it is tested by
 * @param shape name of its shape
 * @param orientation how it stands on the bed
 * @param run print run
 * @param position place in that run
 * @param mix that it is coated from
 * @param load of the oven that it is heated in
 * @param group what it belongs to; only for those who treat it
 * @param treatment what is done to it, in a few words
 */
public record Piece(
        String code,
        String kind,
        String test,
        String shape,
        String orientation,
        String run,
        String position,
        String mix,
        String load,
        Optional<String> group,
        String treatment) {

    /** Print run of those that are printed and tested before all others. */
    static final String PILOT_RUN = "0";

    boolean isPilot() {
        return run.equals(PILOT_RUN);
    }

    /** Returns a specimen of which only the code is known. */
    public static Piece of(String code) {
        return new Piece(code, "", "", "", "", "", "", "", "", Optional.empty(), "");
    }
}
