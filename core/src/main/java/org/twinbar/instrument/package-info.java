/**
 * What a reading is read on, and which errors that brings.
 *
 * <p>Resolution gives each reading an error of its own; calibration gives all readings on one
 * instrument a shared gain and zero. Where nobody said which instrument it was, the usual one of
 * its kind is assumed, and that is said. The package knows no methods.
 */
@NullMarked
package org.twinbar.instrument;

import org.jspecify.annotations.NullMarked;
