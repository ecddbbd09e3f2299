/**
 * Gloss of a surface at 20°, 60° and 85°, along and across its lines.
 *
 * <p>Physics: a meter compares the light that a surface throws back at the mirror's angle with that
 * of polished black glass of refractive index 1.567, which is 100 by definition. 60° suits most
 * surfaces; very glossy ones are told apart at 20°, matt ones at 85°. How much a perfectly smooth
 * surface throws back follows from its index by Fresnel's equations.
 *
 * <p>In the manner of ISO 2813 and ASTM D523. Departures: those hold for flat coats that are not
 * metallic; on a print the light also falls on ridges, so that along and across differ and both are
 * given.
 *
 * <p>The package knows nothing of groups or coats. One gloss at "the angle that the standard takes"
 * was turned down as a property: specimens of one comparison could then stand at different angles.
 */
@NullMarked
package org.twinbar.method.gloss;

import org.jspecify.annotations.NullMarked;
