/**
 * A part that several people judge by eye or touch: panel ratings on a scale of steps.
 *
 * <p>A part's value is the median of its raters. Ten raters on one pair of parts are one pair of
 * parts: raters tell how surely a part is rated, and nothing about the next part. Steps of a scale
 * have an order and no size, so that ratings are compared by rank.
 *
 * <p>No standard; ISO 8587 ranks samples by panels in the same spirit (from memory).
 *
 * <p>The package knows nothing of groups, and nothing of how raters agree over many parts, which
 * one part cannot tell. A mean of the steps was turned down: from 1 to 2 is not as far as from 4 to
 * 5.
 */
@NullMarked
package org.twinbar.method.rating;

import org.jspecify.annotations.NullMarked;
