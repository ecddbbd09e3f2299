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
 * @param block what it was printed, mixed, heated or paired with
 * @param unit what was treated independently, where several specimens share one treatment
 * @param ownUncertainty standard uncertainty of the value from errors of this specimen alone
 * @param moves how far one standard uncertainty of each shared error moves the value, by source
 * @param leftOut why it doesn't count, where it doesn't
 */
public record Observation(
        String specimen,
        String group,
        Observed observed,
        Optional<Block> block,
        Optional<String> unit,
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
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Map.of(),
                Optional.empty());
    }

    public static Observation of(String specimen, String group, double value) {
        return of(specimen, group, new Observed.Number(value));
    }

    /** Returns the same specimen with another value. */
    Observation with(Observed other) {
        return new Observation(specimen, group, other, block, unit, ownUncertainty, moves, leftOut);
    }

    public Observation inBlock(Block together) {
        return new Observation(
                specimen,
                group,
                observed,
                Optional.of(together),
                unit,
                ownUncertainty,
                moves,
                leftOut);
    }

    public Observation inUnit(String name) {
        return new Observation(
                specimen,
                group,
                observed,
                block,
                Optional.of(name),
                ownUncertainty,
                moves,
                leftOut);
    }

    public Observation withOwnUncertainty(double standardUncertainty) {
        return new Observation(
                specimen,
                group,
                observed,
                block,
                unit,
                OptionalDouble.of(standardUncertainty),
                moves,
                leftOut);
    }

    public Observation withMoves(Map<String, Double> bySource) {
        return new Observation(
                specimen, group, observed, block, unit, ownUncertainty, bySource, leftOut);
    }

    public Observation leftOut(LeftOut because) {
        return new Observation(
                specimen,
                group,
                observed,
                block,
                unit,
                ownUncertainty,
                moves,
                Optional.of(because));
    }

    Observation withoutBlock() {
        return new Observation(
                specimen, group, observed, Optional.empty(), unit, ownUncertainty, moves, leftOut);
    }

    boolean leftOutAfterSeen() {
        return leftOut.filter(out -> out.sight() == LeftOut.Sight.AFTER_VALUE_WAS_SEEN)
                .isPresent();
    }

    public boolean counts() {
        return leftOut.isEmpty();
    }
}
