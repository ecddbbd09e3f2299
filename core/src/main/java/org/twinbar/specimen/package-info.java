/**
 * Test pieces: their shapes, sections and meshes, and what a coat adds to them.
 *
 * <p>The package knows geometry and stiffness; it must not know how a test is made or judged, nor
 * the file formats that meshes travel in. A shape's area and volume come from closed forms, and its
 * mesh must agree with them. Turned down: finite elements for coated sections, since a film is thin
 * against the bar and what is not known of its thickness and modulus weighs more; bodies made by
 * cutting others, since every shape here is an outline with a thickness or a vessel; a library that
 * cuts faces into triangles, since those tried drop corners that lie on a straight line, and leave
 * the mesh open there; letters from a typeface, whose curves a nozzle of 0.4 mm can't draw.
 */
@NullMarked
package org.twinbar.specimen;

import org.jspecify.annotations.NullMarked;
