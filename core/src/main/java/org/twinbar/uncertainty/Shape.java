package org.twinbar.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/** How an error is distributed about zero, scaled to its standard uncertainty. */
public enum Shape {
    /** Normal. */
    NORMAL("normal"),
    /** Rectangular: anywhere within ±√3 u, as the rounding of a display. */
    RECTANGULAR("rectangular"),
    /** Triangular: within ±√6 u, as the sum of two equal roundings. */
    TRIANGULAR("triangular"),
    /** Arcsine, U-shaped: within ±√2 u, as a temperature that a controller swings. */
    ARCSINE("U-shaped"),
    /** Student's t, from few readings; its degrees of freedom stand in the source. */
    STUDENT("Student's t");

    private final String word;

    Shape(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /**
     * Draws an error for a standard uncertainty of 1.
     *
     * <p>Normal by layers ({@link Ziggurat}), Student's t by Bailey's polar method, rectangular,
     * triangular and U-shaped by their inverse; with StrictMath, so that a seed draws the same on
     * every machine. A t is scaled by u and not to it, as JCGM 101:2008, 6.4.9.3 has it: its
     * standard deviation is √(ν/(ν − 2)). Source of the polar method: R. W. Bailey, Mathematics of
     * Computation 62 (1994), 779 to 781.
     *
     * @param degreesOfFreedom ν, of Student's t alone; infinite ones make it normal
     */
    double draw(UniformRandomProvider random, double degreesOfFreedom) {
        return switch (this) {
            case NORMAL -> Ziggurat.draw(random);
            case RECTANGULAR -> Math.sqrt(3) * (2 * random.nextDouble() - 1);
            case TRIANGULAR -> Math.sqrt(6) * (random.nextDouble() + random.nextDouble() - 1);
            case ARCSINE -> Math.sqrt(2) * StrictMath.sin(2 * Math.PI * random.nextDouble());
            case STUDENT ->
                Double.isInfinite(degreesOfFreedom)
                        ? Ziggurat.draw(random)
                        : polar(random, degreesOfFreedom);
        };
    }

    private static double polar(UniformRandomProvider random, double freedom) {
        while (true) {
            double first = 2 * random.nextDouble() - 1;
            double second = 2 * random.nextDouble() - 1;
            double square = first * first + second * second;
            if (square > 0 && square <= 1) {
                double radius = freedom * (StrictMath.pow(square, -2 / freedom) - 1);
                return first * Math.sqrt(radius / square);
            }
        }
    }
}
