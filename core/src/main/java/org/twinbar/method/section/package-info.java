/**
 * Sides of a specimen as a caliper reads them, on ridges or on a smooth coat.
 *
 * <p>A caliper rides on the ridges that layers leave and reads more than carries load; on a coated
 * bar it does not. That is no error which groups share: it moves the ridged group alone. The
 * package knows no stresses and no groups. Taking the ridges off in full was turned down: how much
 * of them carries is not known, so half is taken off and all of it is uncertain.
 */
@NullMarked
package org.twinbar.method.section;

import org.jspecify.annotations.NullMarked;
