/**
 * The bench itself: how well a gauge and its operators repeat, whether a reference stays where it
 * was, how laboratories agree.
 *
 * <p>Must not know instruments, methods or dates; values come in the order in which they were read.
 *
 * <p>Turned down: charts of subgroup means and ranges (a bench reads one reference specimen a day);
 * calling a gauge fit or unfit (10 and 30 % are habits of one industry; the caller says what they
 * are for).
 */
@NullMarked
package org.twinbar.statistics.gauge;

import org.jspecify.annotations.NullMarked;
