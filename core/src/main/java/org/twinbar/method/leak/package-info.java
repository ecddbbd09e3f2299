/**
 * Does it hold water: dry until when, wet at which look, and how fast it loses mass.
 *
 * <p>Physics: a head H of liquid presses with ρ·g·H; a pore lets through what Hagen and Poiseuille
 * say once it is wetted, and nothing before the pressure is above 4γ|cos θ|/d where the wall repels
 * the liquid, so that a short dry test proves little. A vessel is looked at now and then: the time
 * to leak lies between the last look that found it dry and the first that found it wet, or beyond
 * the end. Evaporation is taken off by a tight control that stands beside it.
 *
 * <p>There is no standard for a printed vessel under a head of water; what is done here is common
 * practice, stated in full. A test that ended before the time that the claim names says neither yes
 * nor no.
 *
 * <p>The package knows nothing of shares or survival curves: it says of each vessel what is known.
 * Taking the middle between two looks for the time was turned down: it makes a number of what is an
 * interval.
 */
@NullMarked
package org.twinbar.method.leak;

import org.jspecify.annotations.NullMarked;
