package org.twinbar.decision;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What one specimen of one group gave for one property.
 *
 * @param specimen its code
 * @param group what was made alike
 * @param observed the value, the bound, the word, or why there is none
 * @param circumstances what it was made and tested with
 * @param ownUncertainty standard uncertainty of the value from errors of this specimen alone
 * @param moves how far one standard uncertainty of each shared error moves the value, by source
 * @param leftOut why it doesn't count, where it doesn't
 */
public record Observation(
        String specimen,
        String group,
        Observed observed,
        Circumstances circumstances,
        OptionalDouble ownUncertainty,
        Map<String, Double> moves,
        Optional<LeftOut> leftOut) {

    public Observation {
        moves = Collections.unmodifiableMap(new TreeMap<>(moves));
        if (ownUncertainty.isPresent() && !(ownUncertainty.getAsDouble() >= 0)) {
            throw new IllegalArgumentException(
                    "The standard uncertainty of %s must be zero or more, not %s."
                            .formatted(specimen, ownUncertainty.getAsDouble()));
        }
        for (Map.Entry<String, Double> move : moves.entrySet()) {
            if (!Double.isFinite(move.getValue())) {
                throw new IllegalArgumentException("The move of %s by '%s' must be finite, not %s."
                        .formatted(specimen, move.getKey(), move.getValue()));
            }
        }
    }

    public static Observation of(String specimen, String group, Observed observed) {
        return new Observation(
                specimen,
                group,
                observed,
                Circumstances.UNTOLD,
                OptionalDouble.empty(),
                Map.of(),
                Optional.empty());
    }

    public static Observation of(String specimen, String group, double value) {
        return of(specimen, group, new Observed.Number(value));
    }

    Optional<Block> block() {
        return circumstances.block();
    }

    Optional<String> unit() {
        return circumstances.unit();
    }

    /** Returns the same specimen with another value. */
    Observation with(Observed other) {
        return new Observation(
                specimen, group, other, circumstances, ownUncertainty, moves, leftOut);
    }

    public Observation with(Circumstances told) {
        return new Observation(specimen, group, observed, told, ownUncertainty, moves, leftOut);
    }

    public Observation inBlock(Block together) {
        return with(circumstances.inBlock(together));
    }

    public Observation inUnit(String name) {
        return with(circumstances.inUnit(name));
    }

    public Observation withOwnUncertainty(double standardUncertainty) {
        return new Observation(
                specimen,
                group,
                observed,
                circumstances,
                OptionalDouble.of(standardUncertainty),
                moves,
                leftOut);
    }

    public Observation withMoves(Map<String, Double> bySource) {
        return new Observation(
                specimen, group, observed, circumstances, ownUncertainty, bySource, leftOut);
    }

    public Observation leftOut(LeftOut because) {
        return new Observation(
                specimen,
                group,
                observed,
                circumstances,
                ownUncertainty,
                moves,
                Optional.of(because));
    }

    Observation withoutBlock() {
        return with(circumstances.withoutBlock());
    }

    boolean leftOutAfterSeen() {
        return leftOut.filter(out -> out.sight() == LeftOut.Sight.AFTER_VALUE_WAS_SEEN)
                .isPresent();
    }

    public boolean counts() {
        return leftOut.isEmpty();
    }
}
