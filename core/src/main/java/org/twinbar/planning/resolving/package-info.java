/**
 * What a bench can tell apart, before any specimen is broken.
 *
 * <p>Typical readings are calculated by the method itself, on the instruments that there are; what
 * would help is found by calculating them again with one thing changed: a finer display, a better
 * calibration, another size of what is the same for all specimens. Nothing here knows what a hammer
 * or a span is; it reads the method's description. A list of advice by method was turned down: it
 * would be wrong on somebody's bench.
 */
@NullMarked
package org.twinbar.planning.resolving;

import org.jspecify.annotations.NullMarked;
