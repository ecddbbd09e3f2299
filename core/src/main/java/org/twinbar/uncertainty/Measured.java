package org.twinbar.uncertainty;

import java.util.List;

/** A value and what may be wrong with it: value + Σ slope · error of a source. */
public record Measured(double value, List<Term> terms) {

    public Measured {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a measured value must be finite, not " + value);
        }
        terms = List.copyOf(terms);
    }

    /** Returns a value that nothing is wrong with, such as a count. */
    public static Measured exact(double value) {
        return new Measured(value, List.of());
    }

    /** Returns the value in a world. */
    public double in(Errors errors) {
        double moved = value;
        for (Term term : terms) {
            moved += term.slope() * errors.of(term.source());
        }
        return moved;
    }
}
