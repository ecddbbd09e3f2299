/**
 * Test pieces: their shapes, sections and meshes, and what a coat adds to them.
 *
 * <p>The package knows geometry and stiffness; it must not know how a test is made or judged, nor
 * the file formats that meshes travel in. A shape's area and volume come from closed forms, and its
 * mesh must agree with them. Turned down: finite elements for coated sections, since a film is thin
 * against the bar and what is not known of its thickness and modulus weighs more; bodies made by
 * cutting others, since every shape here is an outline with a thickness or a vessel.
 */
@NullMarked
package org.twinbar.specimen;

import org.jspecify.annotations.NullMarked;
