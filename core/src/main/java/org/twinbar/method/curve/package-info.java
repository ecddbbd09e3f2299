/**
 * What curves of force have in common, whichever method pulls or bends: the straight stretch, the
 * peak, the break, noise, slips and saturation.
 *
 * <p>Places on a curve are rows, found once in the world without errors; what is read there is read
 * again in every world. The package knows no shapes of specimens, stresses or standards. Smoothing
 * the curve was turned down: it lowers the peak by an amount that nobody sees; noise is measured
 * and said instead.
 */
@NullMarked
package org.twinbar.method.curve;

import org.jspecify.annotations.NullMarked;
