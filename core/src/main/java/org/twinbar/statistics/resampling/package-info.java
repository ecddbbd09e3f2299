/**
 * Inference by rearranging or redrawing the values themselves: permutation tests and the bootstrap.
 *
 * <p>Knows plain doubles, groups and blocks; must not know units, properties or verdicts. Whatever
 * is drawn at random is drawn from a seed that the caller gives and the result repeats, by
 * xoshiro256++, so that it is the same on any machine and JDK.
 *
 * <p>Turned down: inverting the permutation test by bisection (each split has its own threshold, so
 * the ends of the interval are order statistics of the thresholds, exact and in one pass); sorting
 * the resamples of the bootstrap (four order statistics are wanted, which are selected).
 */
@NullMarked
package org.twinbar.statistics.resampling;

import org.jspecify.annotations.NullMarked;
