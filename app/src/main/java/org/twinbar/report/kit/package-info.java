/**
 * What a video, a post or a forum needs of a judged study: each verdict as a picture in three
 * shapes and two lights, curves that draw themselves, a table, words to paste, shots to film.
 *
 * <p>Pictures are put together from those of the report, so that both say the same. All text is
 * turned into outlines: a picture looks alike wherever it is shown, and no typeface has to be
 * there. Nothing here knows the store. Turned down: pictures of web pages by a browser, which not
 * every machine has.
 */
@NullMarked
package org.twinbar.report.kit;

import org.jspecify.annotations.NullMarked;
