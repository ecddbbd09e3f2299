package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Trending;
import org.twinbar.quantity.Labelled;
import org.twinbar.quantity.Unit;

/**
 * What specimens were given more or less of: film thickness, time in the oven.
 *
 * @param amount its name and unit, from the header of its column
 * @param given each specimen that has an amount
 * @param without codes of those that have none
 */
record Amounts(Subject amount, List<Trending.Given> given, List<String> without) {

    Amounts {
        given = List.copyOf(given);
        without = List.copyOf(without);
    }

    /** The amounts of observations, one for each, in the same order. */
    static Amounts of(String column, List<Observation> observations, List<OptionalDouble> amounts) {
        Labelled labelled = Labelled.parse(column);
        List<Trending.Given> given = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (int i = 0; i < observations.size(); i++) {
            Observation one = observations.get(i);
            if (amounts.get(i).isPresent()) {
                given.add(new Trending.Given(one, amounts.get(i).getAsDouble()));
            } else {
                without.add(one.specimen());
            }
        }
        return new Amounts(
                Subject.of(labelled.name().replace('_', ' '), labelled.unit().orElse(Unit.ONE)),
                given,
                without);
    }
}
