/**
 * How much water a part takes up, by weighing it before and after immersion.
 *
 * <p>Physics: water creeps into a polymer by diffusion, first with the square root of time, then
 * towards saturation; a thick part takes weeks. A print also has voids, which fill at once where
 * they are open.
 *
 * <p>Standard: ISO 62, from which it departs in that prints have voids: the standard is not for
 * cellular bodies, so the result is uptake with the voids included, and says so.
 *
 * <p>Turned down: fitting a diffusion coefficient to one weighing; it needs the mass at saturation
 * as well, and there is none without it.
 */
@NullMarked
package org.twinbar.method.uptake;

import org.jspecify.annotations.NullMarked;
