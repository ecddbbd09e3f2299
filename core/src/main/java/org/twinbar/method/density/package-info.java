/**
 * Density by weighing in air and in a liquid, and the share of voids that it tells of.
 *
 * <p>Physics: what hangs in a liquid is lighter by the liquid that it pushes aside, so two
 * weighings give the volume; the air pushes too, a tenth of a per cent. Water's density follows
 * from its temperature. A part that floats is held down by a sinker, whose mass in the liquid is
 * taken off.
 *
 * <p>Standard: ISO 1183-1, method A. It departs from it in that a print is not free of voids: a
 * bubble or a void that water can't enter counts as part of the print, one that fills with water
 * does not, and so the porosity is that of closed voids alone unless the water is kept out.
 *
 * <p>The package knows nothing of materials. A table of densities of solid filament was turned
 * down: makers' figures differ by more than the voids that are sought; weigh a solid piece of the
 * same spool instead.
 */
@NullMarked
package org.twinbar.method.density;

import org.jspecify.annotations.NullMarked;
