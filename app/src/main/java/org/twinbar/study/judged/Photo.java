package org.twinbar.study.judged;

import java.time.ZonedDateTime;

/**
 * A photo of a specimen, kept byte for byte.
 *
 * @param when it was taken, as the one who took it says
 * @param who as they named themselves
 * @param words what it is, such as the frame of a film; empty where it speaks for itself
 */
public record Photo(KeptFile file, ZonedDateTime when, String who, String words) {}
