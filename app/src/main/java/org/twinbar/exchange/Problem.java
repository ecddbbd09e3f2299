package org.twinbar.exchange;

/**
 * What is wrong with some rows of a curve, from which a value can still be had.
 *
 * @param first where it stands first
 * @param rows how many rows it concerns
 * @param sentence what is wrong there
 */
public record Problem(Place first, int rows, String sentence) {}
