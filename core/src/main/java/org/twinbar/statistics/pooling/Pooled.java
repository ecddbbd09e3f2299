package org.twinbar.statistics.pooling;

import java.util.Optional;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.Significance;

/**
 * What several studies say together.
 *
 * @param fixed the effect if it is one and the same in all studies
 * @param random the mean of effects that differ from study to study
 * @param betweenVariance τ², the variance of true effects (the effects' unit squared); 0 where no
 *     more was seen than the studies' own uncertainty explains
 * @param heterogeneity Q and its p
 * @param share I², the share of scatter that lies between studies, 0 to 1
 * @param next where the true effect of one further study lies; empty for two studies
 */
public record Pooled(
        Estimate fixed,
        Estimate random,
        double betweenVariance,
        Significance heterogeneity,
        double share,
        Optional<Estimate> next) {}
