package org.twinbar.decision;

/**
 * A level that parts must clear.
 *
 * @param value in the unit of the property; for a yes or no it plays no part
 * @param share of all parts that must clear it, 0.9 for nine in ten
 */
public record Level(double value, double share) {

    public Level {
        if (!Double.isFinite(value)) {
            throw new QuestionException("The level must be a finite number, not " + value + ".");
        }
        if (!(share > 0 && share < 1)) {
            throw new QuestionException(
                    "The share of parts that must clear the level lies between 0 and 1, not at %s."
                            .formatted(share));
        }
    }
}
