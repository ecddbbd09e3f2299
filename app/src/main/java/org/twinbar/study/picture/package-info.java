/**
 * What a person set on a picture or a film: places, what is known of them, what was noted on
 * frames. It is read from what a page sends and told in values of {@link org.twinbar.picture},
 * ready to be kept as a reading or as a curve.
 *
 * <p>The package knows no picture, which stays where it was chosen, no study and no store. Keeping
 * is the business of {@link org.twinbar.study.Typing} and {@link org.twinbar.study.Picturing}.
 */
@NullMarked
package org.twinbar.study.picture;

import org.jspecify.annotations.NullMarked;
