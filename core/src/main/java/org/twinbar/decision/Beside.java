package org.twinbar.decision;

/**
 * An interval that stands beside the default one; no verdict reads it.
 *
 * @param interval its short name, such as {@code log}
 * @param estimate the effect as this way sees it
 * @param low lower end
 * @param high upper end
 * @param method how it was calculated, in the words of a report
 */
public record Beside(String interval, Amount estimate, Amount low, Amount high, String method) {}
