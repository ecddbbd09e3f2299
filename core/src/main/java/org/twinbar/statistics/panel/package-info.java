/**
 * Ratings and ranks beyond two groups: raters who judge the same parts, pairs, several groups.
 *
 * <p>Ten raters on one pair of parts are one pair of parts:
 * {@link org.twinbar.statistics.panel.Panel} reduces ratings to one value per part before groups
 * are compared. Must not know what was rated.
 *
 * <p>Turned down: counting each rating as a specimen; ordinal mixed models (a panel of five raters
 * can't carry one).
 */
@NullMarked
package org.twinbar.statistics.panel;

import org.jspecify.annotations.NullMarked;
