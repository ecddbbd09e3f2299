/**
 * The command line: one class for each command, over the same use cases as the pages.
 *
 * <p>Results go to standard output, progress and errors to standard error. The exit status is 0
 * when done, 2 for wrong usage or input with one sentence, 1 for a failure of Twinbar's own. This
 * package knows nothing of the pages; what serves them is handed in by the main class.
 */
@NullMarked
package org.twinbar.cli;

import org.jspecify.annotations.NullMarked;
