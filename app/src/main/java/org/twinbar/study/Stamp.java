package org.twinbar.study;

/**
 * Tells one state of a study from another: entries are only added, so that two states with the same
 * last entries are the same.
 *
 * @param study place of the last entry on the study, among all entries of the workspace
 * @param bench place of the last entry on any instrument
 */
public record Stamp(long study, long bench) {}
