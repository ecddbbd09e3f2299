/**
 * What a comparison of means takes for granted, looked at: odd values, shape of scatter, equal
 * spread, order in time.
 *
 * <p>Answers are for findings and never for gates: nothing here drops a value or chooses a method,
 * since with five specimens such a test sees gross departures only, and choosing by it spoils the
 * error rate of what follows. Must not know units, specimens or verdicts.
 *
 * <p>Turned down: Levene's test about means (Brown and Forsythe's about medians holds its rate for
 * skewed values); Kolmogorov-Smirnov with estimated parameters (Anderson-Darling sees tails
 * better); the number of runs about the median (the exact trend sees a drift over few tests
 * sooner).
 */
@NullMarked
package org.twinbar.statistics.assumption;

import org.jspecify.annotations.NullMarked;
