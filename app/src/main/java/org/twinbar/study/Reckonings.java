package org.twinbar.study;

import java.util.List;
import org.twinbar.planning.Aim;
import org.twinbar.planning.ReckonedOnce;

/**
 * The aims that were asked for last, with the chances that were reckoned for them.
 *
 * <p>An aim hangs on what was asked and on what earlier studies tell, and on nothing else in the
 * workspace; so it is kept under these two, and no entry can make it stale.
 */
final class Reckonings {

    /** Two hundred chances and smallest effects, boxed and mapped. */
    private static final long BYTES_OF_ONE = 40_000;

    private final Remembered<NumbersAsked, List<Double>, Aim> aims =
            new Remembered<>(Remembered.shareOfMemory(64), it -> BYTES_OF_ONE);

    /**
     * Returns the aim with what was reckoned for it before.
     *
     * @param told what earlier studies tell
     */
    Aim of(NumbersAsked asked, List<Double> told, Aim aim) {
        return aims.get(asked.ofTheAim(), told, () -> new ReckonedOnce(aim));
    }
}
