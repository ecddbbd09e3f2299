package org.twinbar.decision;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a specimen was made and tested with, as far as it is told.
 *
 * @param block what it was printed, mixed, heated or paired with
 * @param unit what was treated independently, where several specimens share one treatment
 * @param order when it was tested: a running number, or a time in any unit; only the order counts
 * @param spot where on the plate it was printed
 */
public record Circumstances(
        Optional<Block> block, Optional<String> unit, OptionalDouble order, Optional<Spot> spot) {

    public static final Circumstances UNTOLD = new Circumstances(
            Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());

    public Circumstances {
        if (order.isPresent() && !Double.isFinite(order.getAsDouble())) {
            throw new IllegalArgumentException(
                    "An order must be finite, not %s.".formatted(order.getAsDouble()));
        }
    }

    public Circumstances inBlock(Block together) {
        return new Circumstances(Optional.of(together), unit, order, spot);
    }

    public Circumstances inUnit(String name) {
        return new Circumstances(block, Optional.of(name), order, spot);
    }

    public Circumstances testedAs(double place) {
        return new Circumstances(block, unit, OptionalDouble.of(place), spot);
    }

    public Circumstances printedAt(Spot place) {
        return new Circumstances(block, unit, order, Optional.of(place));
    }

    Circumstances withoutBlock() {
        return new Circumstances(Optional.empty(), unit, order, spot);
    }
}
