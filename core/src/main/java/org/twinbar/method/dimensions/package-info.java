/**
 * What a treatment does to the size and the mass of a part.
 *
 * <p>Physics: heat relaxes what was drawn out in printing, so a part shrinks along its strands and
 * swells across them; a coat adds its film to every face and its mass. The film follows from the
 * growth of the thickness, or from the mass that was gained over an area, and the two check each
 * other.
 *
 * <p>There is no standard for it on printed parts: common practice, stated in full. Changes are
 * compared by difference, since most of them lie about zero.
 *
 * <p>Turned down: one figure for the shrinkage of a part; it differs from axis to axis, and a mean
 * hides just that.
 */
@NullMarked
package org.twinbar.method.dimensions;

import org.jspecify.annotations.NullMarked;
