package org.twinbar.decision;

/**
 * A test that is usual beside the effect, for who looks for it; no verdict reads it.
 *
 * @param name such as {@code log-rank}
 * @param statistic what it rests on
 * @param p two-sided, of no change
 * @param words what was seen, with statistic and p, in a sentence
 */
public record Tested(String name, double statistic, double p, String words) {}
