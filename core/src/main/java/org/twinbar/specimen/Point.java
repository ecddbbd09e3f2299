package org.twinbar.specimen;

/**
 * A place in the plane of an outline (mm).
 *
 * @param x along the specimen
 * @param y across it
 */
public record Point(double x, double y) {}
