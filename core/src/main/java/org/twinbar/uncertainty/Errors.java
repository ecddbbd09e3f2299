package org.twinbar.uncertainty;

import java.util.HashMap;
import java.util.Map;

/** One world: the error that each source has in it; sources that it doesn't name have none. */
public final class Errors {

    /** The world in which every reading is right. */
    public static final Errors NONE = new Errors(Map.of());

    /** A slot for each source, so that whoever draws worlds need not box each error. */
    private final Map<String, double[]> byIdentity;

    private Errors(Map<String, double[]> byIdentity) {
        this.byIdentity = byIdentity;
    }

    /** Returns the world in which one source alone is off. */
    public static Errors of(Source source, double error) {
        return new Errors(Map.of(source.identity(), new double[] {error}));
    }

    /** Returns the world with these errors, by the identity of their source. */
    public static Errors of(Map<String, Double> byIdentity) {
        Map<String, double[]> slots = new HashMap<>();
        byIdentity.forEach((identity, error) -> slots.put(identity, new double[] {error}));
        return new Errors(slots);
    }

    /** Returns the world of slots that their owner fills from draw to draw. */
    static Errors backedBy(Map<String, double[]> byIdentity) {
        return new Errors(byIdentity);
    }

    /** Returns the error of a source here, in the unit of what it moves. */
    public double of(Source source) {
        double[] slot = byIdentity.get(source.identity());
        return slot == null ? 0 : slot[0];
    }
}
