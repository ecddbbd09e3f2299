package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.twinbar.statistics.Summary;

/**
 * What was treated independently in place of its specimens: each unit becomes the mean of them, or
 * for ranks the middle one, since steps of a scale have an order and no size.
 *
 * <p>Rows that name the same specimen are repeats of it, as a panel's ratings of one part are.
 */
final class Units {

    private Units() {}

    /** What becomes of repeats. */
    private enum Middle {
        MEAN,
        MEDIAN;

        static Middle of(Question question) {
            return question.effect() == Effect.RANK ? MEDIAN : MEAN;
        }

        double of(double... values) {
            Summary summary = Summary.of(values);
            return this == MEDIAN ? summary.median() : summary.mean();
        }
    }

    /**
     * Returns the sample by the unit that each specimen names; a specimen that names none is its
     * own.
     *
     * @throws QuestionException for a rate of which several share a unit
     */
    static Sample named(Sample sample, Question question) {
        if (question.effect() == Effect.RATE) {
            requireEachForItself(sample);
            return sample;
        }
        return collapse(sample, Observation::unit, Middle.of(question));
    }

    /** Returns the sample by blocks; a specimen without a block is its own. */
    static Sample byBlock(Sample sample, Question question) {
        return collapse(
                sample, observation -> observation.block().map(Block::name), Middle.of(question));
    }

    /** Tests that may have ended first leave no mean that could stand for several. */
    private static void requireEachForItself(Sample sample) {
        Set<String> names = new TreeSet<>();
        for (Observation one : sample.observations()) {
            String name = one.unit().orElse(one.specimen());
            if (!names.add(name)) {
                throw new QuestionException(
                        "'%s' of %s has several times, and times that may have ended first have no mean that could stand for it; give one time for each unit, or ask for a level or a share."
                                .formatted(name, sample.group()));
            }
        }
    }

    private static Sample collapse(
            Sample sample, Function<Observation, Optional<String>> unitOf, Middle middle) {
        Map<String, List<Observation>> units = new TreeMap<>();
        for (Observation observation : sample.observations()) {
            // Only what has a value is a repeat; a unit without any stays as it is, with its
            // reason.
            String name = unitOf.apply(observation).orElse(observation.specimen());
            units.computeIfAbsent(name, unused -> new ArrayList<>()).add(observation);
        }
        List<Observation> all = new ArrayList<>();
        units.forEach((name, repeats) -> all.addAll(one(name, repeats, middle)));
        return new Sample(sample.group(), all);
    }

    /** Returns the unit as one observation; bounds and missing values stay beside it. */
    private static List<Observation> one(String name, List<Observation> repeats, Middle middle) {
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
            double squares = 0;
            boolean own = true;
            for (Observation repeat : valued) {
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
                    new Observed.Number(middle.of(valued.stream()
                            .mapToDouble(repeat -> number(repeat).orElseThrow())
                            .toArray())),
                    blockAlone(first),
                    own ? OptionalDouble.of(Math.sqrt(squares)) : OptionalDouble.empty(),
                    moves,
                    Optional.empty()));
        }
        return rest;
    }

    private static Circumstances blockAlone(Observation one) {
        return one.block().map(Circumstances.UNTOLD::inBlock).orElse(Circumstances.UNTOLD);
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
