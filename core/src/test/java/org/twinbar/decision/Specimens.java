package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.quantity.Unit;

/** Specimens for tests. */
final class Specimens {

    static final Subject STRENGTH = new Subject("tensile strength", Unit.of("MPa"), "bars");

    /** METHODS.md I.1, set W. */
    static final double[] W_PLAIN = {42.1, 44.0, 41.3, 43.5, 42.8};

    static final double[] W_COATED = {47.9, 46.2, 49.0, 48.1, 45.6, 47.4};

    private Specimens() {}

    static List<Observation> of(
            String control, double[] untreated, String treated, double[] values) {
        List<Observation> all = new ArrayList<>(of(control, untreated));
        all.addAll(of(treated, values));
        return all;
    }

    static List<Observation> of(String group, double... values) {
        List<Observation> all = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            String code = "%s%02d".formatted(Sentence.capital(group.substring(0, 1)), i + 1);
            all.add(Observation.of(code, group, values[i]));
        }
        return all;
    }
}
