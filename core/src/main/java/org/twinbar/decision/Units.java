package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;

/** What was treated independently in place of its specimens: each unit becomes the mean of them. */
final class Units {

    private Units() {}

    /**
     * Returns the sample by the unit that each specimen names; a specimen that names none is its
     * own.
     */
    static Sample named(Sample sample) {
        return collapse(sample, Observation::unit);
    }

    /** Returns the sample by blocks; a specimen without a block is its own. */
    static Sample byBlock(Sample sample) {
        return collapse(sample, observation -> observation.block().map(Block::name));
    }

    private static Sample collapse(Sample sample, Function<Observation, Optional<String>> unitOf) {
        Map<String, List<Observation>> units = new TreeMap<>();
        for (Observation observation : sample.observations()) {
            // Only what has a value is a repeat; a unit without any stays as it is, with its
            // reason.
            String name = unitOf.apply(observation).orElse(observation.specimen());
            units.computeIfAbsent(name, unused -> new ArrayList<>()).add(observation);
        }
        List<Observation> all = new ArrayList<>();
        units.forEach((name, repeats) -> all.addAll(mean(name, repeats)));
        return new Sample(sample.group(), all);
    }

    /** Returns the unit as one observation; bounds and missing values stay beside it. */
    private static List<Observation> mean(String name, List<Observation> repeats) {
        if (repeats.size() == 1) {
            return repeats;
        }
        List<Observation> rest = new ArrayList<>();
        List<Observation> valued = new ArrayList<>();
        for (Observation repeat : repeats) {
            (number(repeat).isPresent() ? valued : rest).add(repeat);
        }
        if (!valued.isEmpty()) {
            double n = valued.size();
            Map<String, Double> moves = new TreeMap<>();
            double sum = 0;
            double squares = 0;
            boolean own = true;
            for (Observation repeat : valued) {
                sum += number(repeat).orElseThrow() / n;
                repeat.moves()
                        .forEach((source, move) -> moves.merge(source, move / n, Double::sum));
                own &= repeat.ownUncertainty().isPresent();
                double u = repeat.ownUncertainty().orElse(0);
                squares += u * u / n;
            }
            Observation first = valued.get(0);
            rest.add(new Observation(
                    name,
                    first.group(),
                    new Observed.Number(sum),
                    first.block(),
                    Optional.empty(),
                    own ? OptionalDouble.of(Math.sqrt(squares)) : OptionalDouble.empty(),
                    moves,
                    Optional.empty()));
        }
        return rest;
    }

    private static OptionalDouble number(Observation observation) {
        if (observation.observed() instanceof Observed.Number number) {
            return OptionalDouble.of(number.value());
        }
        if (observation.observed() instanceof Observed.YesNo word) {
            return OptionalDouble.of(word.yes() ? 1 : 0);
        }
        return OptionalDouble.empty();
    }
}
