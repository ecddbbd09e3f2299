/**
 * Sources of error with an identity, and how they reach a result.
 *
 * <p>A model is a pure function of a world of errors. Propagation runs it again in worlds where one
 * source is moved (linear), or where all are drawn at random (Monte Carlo). Results that name the
 * same source move together, so that x − x has no uncertainty; covariances are never typed in.
 *
 * <p>The package knows no methods, instruments or units. Symbolic or dual-number differentiation
 * was turned down: it would leak into every formula, and a method that interpolates a curve has
 * none.
 */
@NullMarked
package org.twinbar.uncertainty;

import org.jspecify.annotations.NullMarked;
