package org.twinbar.statistics;

/**
 * How far one standard uncertainty of a shared error moves the two means, all its specimens
 * together.
 *
 * <p>A load cell's gain moves both by the same per cent and leaves their ratio; a bias that one
 * group alone has moves one of them.
 *
 * @param treated move of the treated mean, with its sign
 * @param control move of the control's mean, with its sign
 * @param df degrees of freedom of that standard uncertainty; ∞ where it is known
 */
public record Shift(double treated, double control, double df) {

    /** @throws IllegalArgumentException unless both moves are finite and df > 0 */
    public Shift {
        Arguments.requireFinite(treated, "move of the treated mean");
        Arguments.requireFinite(control, "move of the control's mean");
        Arguments.requireDegreesOfFreedom(df);
    }

    /** How far treated − ratio · control moves. */
    double of(double ratio) {
        return treated - ratio * control;
    }

    Shift swapped() {
        return new Shift(control, treated, df);
    }
}
