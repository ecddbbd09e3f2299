package org.twinbar.uncertainty;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;

/** One world: the error that each source has in it; sources that it doesn't name have none. */
public final class Errors {

    /** The world in which every reading is right. */
    public static final Errors NONE = new Errors(Map.of(), List.of());

    /** Questions of one world whose answers are remembered, for each source that is drawn. */
    private static final int REMEMBERED = 4;

    private final Map<String, Integer> places;
    private final Source[] drawn;
    private final double[] errors;

    /**
     * What was asked in the world before, and where its errors stand: a model asks in the same
     * order each time, so that a draw needs no search. Empty where nothing is drawn anew.
     */
    private final Source[] asked;

    private final int[] placesAsked;
    private int turn;

    private Errors(Map<String, Integer> places, List<Source> drawn) {
        this.places = places;
        this.drawn = drawn.toArray(new Source[0]);
        this.errors = new double[places.size()];
        this.asked = new Source[REMEMBERED * drawn.size()];
        this.placesAsked = new int[asked.length];
    }

    /** Returns the world in which one source alone is off. */
    public static Errors of(Source source, double error) {
        Errors world = new Errors(Map.of(source.identity(), 0), List.of());
        world.errors[0] = error;
        return world;
    }

    /** Returns the world with these errors, by the identity of their source. */
    public static Errors of(Map<String, Double> byIdentity) {
        Map<String, Integer> places = new LinkedHashMap<>();
        byIdentity.keySet().forEach(identity -> places.put(identity, places.size()));
        Errors world = new Errors(places, List.of());
        int place = 0;
        for (double error : byIdentity.values()) {
            world.errors[place++] = error;
        }
        return world;
    }

    /** Returns a world of these sources that is drawn anew, again and again; without errors yet. */
    static Errors toBeDrawn(List<Source> sources) {
        Map<String, Source> distinct = new LinkedHashMap<>();
        sources.forEach(source -> distinct.putIfAbsent(source.identity(), source));
        Map<String, Integer> places = new LinkedHashMap<>();
        distinct.keySet().forEach(identity -> places.put(identity, places.size()));
        return new Errors(places, List.copyOf(distinct.values()));
    }

    /** Draws the error of each source anew. */
    void draw(UniformRandomProvider random) {
        for (int i = 0; i < drawn.length; i++) {
            errors[i] = drawn[i].draw(random);
        }
        turn = 0;
    }

    /** Returns the error of a source here, in the unit of what it moves. */
    public double of(Source source) {
        if (turn == asked.length) {
            Integer place = places.get(source.identity());
            return place == null ? 0 : errors[place];
        }
        int now = turn++;
        if (asked[now] != source) {
            Integer place = places.get(source.identity());
            if (place == null) {
                return 0;
            }
            asked[now] = source;
            placesAsked[now] = place;
        }
        return errors[placesAsked[now]];
    }
}
