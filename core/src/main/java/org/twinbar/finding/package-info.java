/**
 * What a person should know about readings or results: a departure, a doubt, a limit.
 *
 * <p>A kind of finding is declared once, where it is raised, with its code, level and sentence; a
 * finding is that kind with the numbers that it saw. The package knows nothing else of Twinbar.
 * Exceptions were turned down: bad data give a result and findings, exceptions are for misuse.
 */
@NullMarked
package org.twinbar.finding;

import org.jspecify.annotations.NullMarked;
