/**
 * A dummy is put into an oven that is held at one temperature: how slowly it warms.
 *
 * <p>Physics: a body whose inside warms evenly comes up to the oven by one exponential, T(t) = T∞ −
 * (T∞ − T₀)·exp(−t/τ), τ = ρcV/(αA). In a ramp r it then trails the air by r·τ. All three numbers
 * are fitted at once by least squares, so that neither the moment at which the door shut nor the
 * oven's own thermometer has to be trusted. A thermometer's gain and zero don't move τ at all.
 *
 * <p>What is left between the readings and the exponential is seldom independent from row to row
 * (an oven that swings, steps of a display), so that the uncertainty is widened by what rows that
 * follow one another have in common.
 *
 * <p>There is no standard for it. The package knows nothing of bars, loads or coats. Reading τ off
 * at 63 % of the rise was turned down: it trusts one reading and a guess at where the rise ends.
 */
@NullMarked
package org.twinbar.method.timeconstant;

import org.jspecify.annotations.NullMarked;
