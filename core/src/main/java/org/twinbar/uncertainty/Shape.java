package org.twinbar.uncertainty;

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
}
