package org.twinbar.statistics.resampling;

import java.util.OptionalLong;

/**
 * What a permutation test found.
 *
 * @param estimate the effect: difference, or ratio, of means
 * @param pTwoSided share of splits whose statistic is at least as far from no effect as the
 *     observed one
 * @param pGreater share of splits whose statistic is at least as large as the observed one
 * @param pLess share of splits whose statistic is at most as large as the observed one
 * @param splits how many splits the shares are of, the observed one included
 * @param treatedCount treated values
 * @param controlCount control values
 * @param method what was done, in words
 * @param seed what the splits were drawn with; empty where all were listed
 */
public record PermutationTest(
        double estimate,
        double pTwoSided,
        double pGreater,
        double pLess,
        long splits,
        int treatedCount,
        int controlCount,
        String method,
        OptionalLong seed) {}
