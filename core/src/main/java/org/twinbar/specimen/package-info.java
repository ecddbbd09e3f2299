/**
 * Test pieces: their shapes and sections, and what a coat adds to them.
 *
 * <p>The package knows geometry and stiffness; it must not know how a test is made or judged.
 * Turned down: finite elements for coated sections; a film is thin against the bar, and what is not
 * known of its thickness and modulus weighs more.
 */
@NullMarked
package org.twinbar.specimen;

import org.jspecify.annotations.NullMarked;
