package org.twinbar.study.judged;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.LeftOut;
import org.twinbar.method.Result;

/**
 * One specimen: what was read on it and what it gave.
 *
 * @param code what is written on it
 * @param method the test that it was made for
 * @param group what was made alike
 * @param factors what else tells specimens apart, such as {@code orientation} and {@code print_run}
 * @param readings what was read, as it came
 * @param result what the method made of it, left out or not
 * @param curve its record, thinned for drawing, where there is one
 * @param leftOut why it doesn't count, where it doesn't
 */
public record JudgedSpecimen(
        String code,
        String method,
        String group,
        Map<String, String> factors,
        List<Reading> readings,
        Result result,
        Optional<Curve> curve,
        Optional<LeftOut> leftOut) {

    public JudgedSpecimen {
        factors = Ordered.copy(factors);
        readings = List.copyOf(readings);
    }

    public boolean counts() {
        return leftOut.isEmpty();
    }
}
