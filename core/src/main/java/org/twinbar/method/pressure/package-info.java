/**
 * A closed vessel is filled with air above the surroundings, and its pressure watched: how much
 * leaks.
 *
 * <p>Physics: the air is an ideal gas of fixed volume, so that its absolute pressure is first
 * brought to the temperature of the start, p·T₀/T; a kelvin is worth about 0.4 kPa and more than
 * many leaks. What is then above the surroundings falls as exp(−λt) through one leak in which the
 * air flows slowly; the leak rate is the volume of surrounding air per time at the pressure of the
 * start, V·λ·Δp₀/p_ambient.
 *
 * <p>There is no standard for a printed vessel; the pressure-change test of EN 1779 and EN 13184 is
 * the nearest (from memory). Departures: the air's temperature is taken to be what the thermometer
 * shows, and the vessel to be stiff.
 *
 * <p>The package knows nothing of liquids: what holds air at some kPa need not hold water for a
 * season, nor the other way round. Fitting volume and leak at once was turned down: a curve can't
 * tell them apart.
 */
@NullMarked
package org.twinbar.method.pressure;

import org.jspecify.annotations.NullMarked;
