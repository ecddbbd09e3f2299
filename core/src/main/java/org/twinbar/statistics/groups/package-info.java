/**
 * More than two groups: analysis of variance, the largest difference among all pairs (Tukey) or
 * against one control (Dunnett), several claims together (Holm), whether a treatment acts alike in
 * two orientations, what further columns explain.
 *
 * <p>Must not know units, properties or verdicts. Analyses of variance pool one spread over all
 * groups; comparisons that are to hold together keep each group's own, and take from here how far
 * their intervals must reach.
 *
 * <p>Turned down: type I sums of squares, which depend on the order in which factors are named;
 * tables of critical values (both distributions are integrated); intervals with one spread pooled
 * over all groups, which may be narrower than those of two groups alone.
 */
@NullMarked
package org.twinbar.statistics.groups;

import org.jspecify.annotations.NullMarked;
