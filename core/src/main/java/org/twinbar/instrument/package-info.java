/**
 * What a reading is read on, and which errors that brings.
 *
 * <p>Resolution gives each reading an error of its own; calibration corrects readings and gives all
 * that are read on one instrument shared errors of gain and zero. A line is held by its height at
 * the middle of its points and its slope, which are independent: a covariance of offset and slope
 * was turned down, since nothing else here carries one. Where nobody said which instrument it was,
 * the usual one of its kind is assumed, and that is said. The package knows no methods.
 */
@NullMarked
package org.twinbar.instrument;

import org.jspecify.annotations.NullMarked;
