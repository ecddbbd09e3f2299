package org.twinbar.planning.resolving;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Named;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;

/**
 * Readings as they will be, of one specimen.
 *
 * @param method calculates them
 * @param readings of one ordinary specimen; nothing corrects them
 * @param control what the untreated group is called
 * @param treated what the treated group is called
 * @param sameForAll what a person chooses once for all specimens, such as a span or a hammer
 * @param spread how far other numbers differ from specimen to specimen, as a share of themselves
 */
public record Typical(
        TestMethod method,
        Readings readings,
        String control,
        String treated,
        Set<Named> sameForAll,
        Map<Named, Double> spread) {

    public Typical {
        sameForAll = Set.copyOf(sameForAll);
        spread = Collections.unmodifiableMap(new LinkedHashMap<>(spread));
    }

    /** Returns the readings of the untreated group on another bench, to be changed. */
    Readings.Builder on(Bench bench) {
        return readings.again(control, bench);
    }
}
