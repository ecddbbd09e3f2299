/**
 * What all studies of a workspace say together: gains and means side by side, the usual scatter,
 * several studies of one claim taken as one.
 *
 * <p>It reads judged studies and must not know how they are stored. Only like is put beside like:
 * the same method, property and kind of effect; what else differs between rows is said. Turned
 * down: a store of results, which would grow old where readings don't.
 */
@NullMarked
package org.twinbar.study.archive;

import org.jspecify.annotations.NullMarked;
