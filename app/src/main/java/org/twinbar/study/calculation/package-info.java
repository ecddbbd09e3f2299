/**
 * From readings to results, and from results to comparisons, without a store: a table on the
 * command line, one in the browser and a study in a workspace are calculated by the same code.
 *
 * <p>Begin with {@link org.twinbar.study.calculation.Calculation} for results,
 * {@link org.twinbar.study.calculation.Comparisons} for verdicts on a table, and
 * {@link org.twinbar.study.calculation.BenchLook} for what a bench could tell apart. The statistics
 * are core's; here is decided which specimens and which question they see.
 */
@NullMarked
package org.twinbar.study.calculation;

import org.jspecify.annotations.NullMarked;
