/**
 * The bench: instruments with their calibrations and zero checks, which of them a test names, and
 * whether gauge, operator and reference still read what they read.
 *
 * <p>Begin with {@link org.twinbar.study.bench.KeptInstrument} and
 * {@link org.twinbar.study.bench.TestBench}. How instruments are kept is no business of this
 * package ({@link org.twinbar.study.Instruments} does that).
 */
@NullMarked
package org.twinbar.study.bench;

import org.jspecify.annotations.NullMarked;
