package org.twinbar.statistics;

import java.util.OptionalDouble;

/**
 * How many specimens a comparison of two equal groups needs.
 *
 * @param perGroup whole number per group, at least 3
 * @param exact the number at which the power is just reached, not whole and without that floor
 * @param power power with {@code perGroup}
 * @param smallestEffect effect that {@code perGroup} finds with the power asked for; empty where
 *     none is large enough
 */
public record SampleSize(int perGroup, double exact, double power, OptionalDouble smallestEffect) {}
