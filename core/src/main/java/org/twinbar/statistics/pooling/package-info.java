/**
 * Several studies of one claim taken together: fixed and random effects.
 *
 * <p>Must not know what was studied; the caller sees that only like is pooled with like, and gives
 * logarithms for ratios.
 *
 * <p>Turned down: DerSimonian and Laird's variance between studies (too small where they are few);
 * the normal interval of a random-effects mean (five studies don't make the variance known); a test
 * of heterogeneity as the gate between fixed and random effects.
 */
@NullMarked
package org.twinbar.statistics.pooling;

import org.jspecify.annotations.NullMarked;
