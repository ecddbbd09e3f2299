/**
 * A bar clamped at one end, with a mass at its tip, in an oven that grows hotter: when it begins to
 * sag.
 *
 * <p>Physics: the stress at the clamp is σ = 6PL/(bh²), and 3wL²/(bh²) of the bar's own weight w
 * per length; the surface strain there is ε = 3hδ/(2L²), for deflections below a tenth of the arm.
 * The onset is where two straight lines of deflection against temperature meet, with the limits of
 * its profile; or lies between two readings of a thermometer, the last at which the bar was
 * straight and the first at which it sagged. In a ramp r a bar trails the air by r·τ(1 − exp(−t/τ))
 * with its time constant τ, measured by a step or reckoned from its size; that is taken off, and
 * what is wrong with τ is an error that a whole group has, since a coated bar has another mass and
 * another skin. Where nothing is known to take off, that error is as large as the lag that is
 * likely.
 *
 * <p>There is no standard for this test: it is a maker's, and compares bars of one oven. The strain
 * of 0.2 % is ISO 75's, whose numbers it must not be mixed with.
 *
 * <p>The package knows nothing of groups beyond the name of a specimen's own, nor of coats.
 * Shifting a coated group's temperatures by an assumed mass of film was turned down: a step test of
 * each group's dummy takes ten minutes and leaves no argument.
 */
@NullMarked
package org.twinbar.method.oven;

import org.jspecify.annotations.NullMarked;
