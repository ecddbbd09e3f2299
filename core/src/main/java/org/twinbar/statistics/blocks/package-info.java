/**
 * Specimens that were made together: print runs, mixes, oven loads. A linear mixed model by
 * restricted maximum likelihood, its degrees of freedom by Kenward and Roger.
 *
 * <p>Specimens of one run resemble each other, and a comparison that forgets it takes one lucky run
 * for a treatment that works (METHODS.md I.6: 56 % false alarms). Must not know units, specimens or
 * verdicts; ratios are compared by giving logarithms.
 *
 * <p>Turned down: holding variances at zero with equal numbers, which with three runs makes Kenward
 * and Roger's intervals a quarter too wide where analysis of variance is exact; letting them fall
 * below zero with unequal numbers, where degrees of freedom break down; dropping a variance that
 * came out as zero before degrees of freedom are counted (the data chose it); Satterthwaite's
 * degrees of freedom with the plain standard error, which is too small for few runs; sparse
 * matrices, since a study has at most a few hundred specimens.
 */
@NullMarked
package org.twinbar.statistics.blocks;

import org.jspecify.annotations.NullMarked;
