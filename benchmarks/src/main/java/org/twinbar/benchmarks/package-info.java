/**
 * Whether the verdicts hold what they promise, and how fast: run by hand, built with the rest.
 *
 * <p>The calibration study judges simulated studies, whose truth is known, by the same code that
 * judges real ones. It must not know how a verdict is reached, only what it is. Turned down: a
 * faster copy of the interval for the simulation, which would prove the copy.
 */
@NullMarked
package org.twinbar.benchmarks;

import org.jspecify.annotations.NullMarked;
