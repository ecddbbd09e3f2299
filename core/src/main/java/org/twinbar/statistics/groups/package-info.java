/**
 * More than two groups: analysis of variance, all pairs (Tukey), many against one control
 * (Dunnett), several claims together (Holm), and whether a treatment acts alike in two
 * orientations.
 *
 * <p>Must not know units, properties or verdicts. Means of several groups are compared with one
 * spread pooled over all of them, as these methods are made; a comparison of two groups alone uses
 * {@link org.twinbar.statistics.Welch} instead.
 *
 * <p>Turned down: type I sums of squares, which depend on the order in which factors are named;
 * tables of critical values (both distributions are integrated).
 */
@NullMarked
package org.twinbar.statistics.groups;

import org.jspecify.annotations.NullMarked;
