/**
 * What is done to specimens: mixing resin by weight, and how much of it a surface takes.
 *
 * <p>The package knows masses, densities, areas and films; it must not know the shapes that give an
 * area, nor how a treated specimen is tested or judged. A data sheet's own limits come before the
 * common practice that the findings name. Turned down: a store of resins with their ratios and
 * densities, which would be out of date on the day it is made; the data sheet in the hand is not.
 */
@NullMarked
package org.twinbar.treatment;

import org.jspecify.annotations.NullMarked;
