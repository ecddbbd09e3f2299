/**
 * What is measured on pictures and film: lengths, heights and angles from places on them, with what
 * the step of a place and the scale leave open; clock time from film time; a reading between two.
 *
 * <p>The package knows places and numbers. It must not know image files, frames that are drawn,
 * test methods or specimens. A correction for the lens was turned down: it needs a picture of a
 * known grid, which nobody takes at home; what a lens and an oblique view do is said in numbers
 * instead, and taken into the scale's uncertainty where a person says how far off they may be.
 */
@NullMarked
package org.twinbar.picture;

import org.jspecify.annotations.NullMarked;
