package org.twinbar.instrument;

/**
 * What an instrument was held against.
 *
 * @param name such as {@code weights of class M1}
 * @param uncertainty standard uncertainty that all its values share, in the instrument's unit
 * @param shareUncertainty standard uncertainty of all its values together as a share of each
 */
public record Reference(String name, double uncertainty, double shareUncertainty) {

    /** @throws IllegalArgumentException unless both uncertainties are zero or more and finite */
    public Reference {
        requireNotNegative(name, uncertainty);
        requireNotNegative(name, shareUncertainty);
    }

    /** Returns a reference whose errors are taken as none. */
    public static Reference exact(String name) {
        return new Reference(name, 0, 0);
    }

    private static void requireNotNegative(String name, double u) {
        if (!(u >= 0 && u < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "standard uncertainty of %s is %s, must be zero or more".formatted(name, u));
        }
    }

    /** Returns the standard uncertainty of one of its values. */
    double at(double value) {
        double share = shareUncertainty * value;
        return Math.sqrt(uncertainty * uncertainty + share * share);
    }
}
