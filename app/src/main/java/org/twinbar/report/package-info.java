/**
 * Pictures and reports of a judged study: SVG, one self-contained HTML file, PDF.
 *
 * <p>Everything is made from what it is handed; the package never touches the store, the network or
 * the clock, so that the same judged study gives the same bytes. Pictures take plain records
 * ({@link org.twinbar.report.Clusters}, {@link org.twinbar.report.Effect}, …) and know nothing of
 * methods and verdicts; only {@link org.twinbar.report.Report} knows both sides.
 *
 * <p>Charts are laid out by JFreeChart and come out of Batik as shapes and real text;
 * {@code Canvas} keeps of that only what a page needs and names colours by their token, so that one
 * picture serves light, dark and print. Turned down: pictures as bitmaps (no text, no dark), a
 * script that draws in the browser (a report must read without one), clip paths (their ids collide
 * when several pictures stand on one page).
 */
@NullMarked
package org.twinbar.report;

import org.jspecify.annotations.NullMarked;
