/**
 * Estimates, intervals and tests on plain doubles, for groups of about three to twenty specimens.
 *
 * <p>Every result is a record with its interval, degrees of freedom and method; a p-value never
 * stands alone. What has no finite answer (a ratio whose control may be zero, a median that was not
 * reached) is a value of its own type, never NaN. The package knows no units, no methods of
 * measurement and no verdicts, and uses nothing else of Twinbar.
 *
 * <p><b>The same digits everywhere.</b> Our own formulas take transcendental functions from
 * {@link StrictMath}. Five wrappers ({@link org.twinbar.statistics.Normal},
 * {@link org.twinbar.statistics.StudentT}, {@link org.twinbar.statistics.ChiSquared},
 * {@link org.twinbar.statistics.FisherF}, {@link org.twinbar.statistics.Beta}) ask Apache Commons
 * Statistics, whose inside uses {@code Math.exp}, {@code Math.log}, {@code Math.log1p} and
 * {@code Math.pow}; a JDK may round their last bit differently, which is beyond the twelve digits
 * that are promised. Each sits in one file, so that the choice can be changed there. Root finding
 * is Hipparchus's, whose {@code FastMath} is plain Java.
 *
 * <p><b>Turned down.</b> Pretests that choose the method (Levene, then pooled or Welch): they spoil
 * the error rate. Asymptotic intervals of shares (Wald): at five specimens they cover far too
 * little. Profile likelihood for hazard ratios: the score needs no maximum, so that it also answers
 * when one group had no event.
 */
@NullMarked
package org.twinbar.statistics;

import org.jspecify.annotations.NullMarked;
