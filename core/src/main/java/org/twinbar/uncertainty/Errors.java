package org.twinbar.uncertainty;

import java.util.Map;

/** One world: the error that each source has in it; sources that it doesn't name have none. */
public final class Errors {

    /** The world in which every reading is right. */
    public static final Errors NONE = new Errors(Map.of());

    private final Map<String, Double> byIdentity;

    private Errors(Map<String, Double> byIdentity) {
        this.byIdentity = byIdentity;
    }

    /** Returns the world in which one source alone is off. */
    public static Errors of(Source source, double error) {
        return new Errors(Map.of(source.identity(), error));
    }

    /** Returns the world with these errors, by the identity of their source. */
    public static Errors of(Map<String, Double> byIdentity) {
        return new Errors(Map.copyOf(byIdentity));
    }

    /** Returns the world of a map that its owner changes from draw to draw. */
    static Errors backedBy(Map<String, Double> byIdentity) {
        return new Errors(byIdentity);
    }

    /** Returns the error of a source here, in the unit of what it moves. */
    public double of(Source source) {
        Double error = byIdentity.get(source.identity());
        return error == null ? 0 : error;
    }
}
