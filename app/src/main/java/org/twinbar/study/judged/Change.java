package org.twinbar.study.judged;

import java.time.ZonedDateTime;

/**
 * A change that somebody made to what was read, or to what counts.
 *
 * @param what such as {@code width of A03: 9.98 → 9.89}
 * @param when with the zone that it was made in
 * @param who as they named themselves
 * @param why their reason
 */
public record Change(String what, ZonedDateTime when, String who, String why) {}
