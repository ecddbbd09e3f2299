package org.twinbar.uncertainty;

/**
 * Results as a pure function of the errors of a world.
 *
 * <p>A result that can't be had in a world is NaN there, and there alone: it never leaves this
 * package.
 */
@FunctionalInterface
public interface Model {
    double[] at(Errors errors);
}
