/**
 * What is settled before anything breaks: how many specimens, and which goes where and when.
 *
 * <p>The package knows scatter, effects and chance; it must not know how a comparison is judged,
 * and asks of the statistics directly what the default interval would say. Everything drawn at
 * random takes its seed. Turned down: looking for the design that is best by some measure of
 * information; people can follow "half of each group in every run".
 */
@NullMarked
package org.twinbar.planning;

import org.jspecify.annotations.NullMarked;
