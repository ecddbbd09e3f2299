/**
 * Bars that sag while they are heated: what the record of one has in common whichever way it is
 * held, and where it bends.
 *
 * <p>Deflection counts from the row at which heating began; the record ends, as far as a bar's
 * softening goes, at its hottest row. A temperature is read where the deflection passes a limit, or
 * where two straight lines meet. Places on the record are rows, found once in the world without
 * errors; how many degrees a millimetre is worth there is taken from a stretch about the place, so
 * that the step of a gauge between two rows does not decide it.
 *
 * <p>The package knows no shapes of bars, loads, ovens or standards. Smoothing the record was
 * turned down, since it moves the bend by an amount that nobody sees; so was a third line for the
 * curve that a softening bar draws in truth: two lines with a stated doubt are what a reader can
 * check by eye.
 */
@NullMarked
package org.twinbar.method.heating;

import org.jspecify.annotations.NullMarked;
