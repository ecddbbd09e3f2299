/**
 * A bar on two supports, loaded to a stress and heated: the temperature at which it has sagged by
 * the standard deflection.
 *
 * <p>Physics: the force for a surface stress is F = 2σbh²/(3L); rod and gauge press with part of
 * it, so that (F − F_gauge)/g − m_rod is laid on. The standard deflection is the one at which the
 * strain of the surface has grown by 0.2 %, Δs = L²Δε/(600h) with Δε in per cent; the temperature
 * is read there, straight between two rows.
 *
 * <p>In the manner of ISO 75-1 and -2:2013 (flat); ASTM D648 bends on edge and reads at 0.25 mm,
 * and may be chosen: their results must not be mixed. Departures: heated in air a bar trails the
 * thermometer, which is said and not corrected here; start temperature and heating rate are limits
 * from memory. The figure is no temperature of use, as ISO 75 itself says.
 *
 * <p>The package knows nothing of groups or coats. The tables of deflections by height of older
 * editions were turned down: they lie up to 0.015 mm below the formula, and jump by steps of the
 * height. A correction for thermal lag belongs to the oven test, where air is the rule.
 */
@NullMarked
package org.twinbar.method.heatdeflection;

import org.jspecify.annotations.NullMarked;
