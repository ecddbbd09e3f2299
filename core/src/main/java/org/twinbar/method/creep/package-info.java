/**
 * A bar under a load that stays: how it goes on stretching.
 *
 * <p>Physics: the creep modulus is E_c(t) = σ/ε(t). Findley's law ε = ε₀ + m·tⁿ describes the first
 * two stages; ε₀, m and n hang together strongly, so that a value between or beyond the readings
 * takes its uncertainty from the whole covariance. Nothing is said beyond ten times the last
 * reading.
 *
 * <p>In the manner of ISO 899-1 (tension) and ISO 899-2 (bending). Departures: a stretch may be
 * read from the grips, which ISO 899-1 allows for quality control alone; times of reading are free.
 *
 * <p>The package knows nothing of groups or coats. A line through logarithms was turned down: it
 * needs ε₀ to be known, which it is not. So was shifting curves of several temperatures onto one:
 * prints of one filament do not keep one law across their glass transition.
 */
@NullMarked
package org.twinbar.method.creep;

import org.jspecify.annotations.NullMarked;
