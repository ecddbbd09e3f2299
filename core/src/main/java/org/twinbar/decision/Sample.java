package org.twinbar.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.Summary;

/**
 * The specimens of one group that count, in the order of their codes, so that rows may come in any.
 */
record Sample(String group, List<Observation> observations) {

    private static final double ROOT_OF_TWELVE = Math.sqrt(12);
    private static final double ROOT_OF_THREE = Math.sqrt(3);

    Sample {
        observations = observations.stream()
                .sorted((one, other) -> one.specimen().compareTo(other.specimen()))
                .toList();
    }

    static Sample of(String group, List<Observation> all) {
        return new Sample(
                group,
                all.stream()
                        .filter(observation -> observation.group().equals(group))
                        .toList());
    }

    /** Returns the specimens that were not left out. */
    Sample counted() {
        return new Sample(
                group, observations.stream().filter(Observation::counts).toList());
    }

    /**
     * Returns the specimens that count with those that were left out after their values were seen.
     */
    Sample withSeen() {
        return new Sample(
                group,
                observations.stream()
                        .filter(one -> one.counts() || one.leftOutAfterSeen())
                        .toList());
    }

    Sample withoutBlocks() {
        return new Sample(
                group, observations.stream().map(Observation::withoutBlock).toList());
    }

    int size() {
        return observations.size();
    }

    DoubleStream stream() {
        return Arrays.stream(values());
    }

    /** Returns the specimens that gave a plain number. */
    List<Observation> numbers() {
        return observations.stream()
                .filter(observation -> observation.observed() instanceof Observed.Number)
                .toList();
    }

    double[] values() {
        List<Double> values = new ArrayList<>();
        for (Observation observation : observations) {
            if (observation.observed() instanceof Observed.Number number) {
                values.add(number.value());
            }
        }
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Returns how many are "yes" and how many say yes or no at all. */
    int yes() {
        return (int) observations.stream()
                .filter(observation ->
                        observation.observed() instanceof Observed.YesNo word && word.yes())
                .count();
    }

    int answers() {
        return (int) observations.stream()
                .filter(observation -> observation.observed() instanceof Observed.YesNo)
                .count();
    }

    Sample without(String specimen) {
        return new Sample(
                group,
                observations.stream()
                        .filter(observation -> !observation.specimen().equals(specimen))
                        .toList());
    }

    /**
     * Returns the mean of at least two values, its scatter not believed below what the readings
     * resolve.
     *
     * @param step smallest step of the values, where they have no uncertainty of their own
     */
    MeanEstimate mean(double step) {
        return MeanEstimate.of(values()).withResolution(resolution(step));
    }

    /** Returns the standard uncertainty of one value from its reading. */
    double resolution(double step) {
        double squares = 0;
        int given = 0;
        for (Observation observation : numbers()) {
            OptionalDouble own = observation.ownUncertainty();
            if (own.isPresent()) {
                squares += own.getAsDouble() * own.getAsDouble();
                given++;
            }
        }
        return given > 0 ? Math.sqrt(squares / given) : step / ROOT_OF_TWELVE;
    }

    /**
     * Returns the standard uncertainty of one value from its reading where its scatter hides in it,
     * else 0.
     */
    double coarseness(double step) {
        double[] values = values();
        double u = resolution(step);
        return values.length > 1 && Summary.of(values).sd() < ROOT_OF_THREE * u ? u : 0;
    }

    /** Returns the sample with 1 for "yes" and 0 for "no". */
    Sample asNumbers() {
        return new Sample(
                group,
                observations.stream()
                        .map(observation -> observation.observed() instanceof Observed.YesNo word
                                ? observation.with(new Observed.Number(word.yes() ? 1 : 0))
                                : observation)
                        .toList());
    }

    /**
     * Returns the sample with values on another scale, their errors carried along to first order.
     */
    Sample scaled(DoubleUnaryOperator scale, DoubleUnaryOperator slope) {
        List<Observation> all = new ArrayList<>();
        for (Observation observation : observations) {
            if (observation.observed() instanceof Observed.Number number) {
                double factor = slope.applyAsDouble(number.value());
                Map<String, Double> moved = new TreeMap<>();
                observation.moves().forEach((source, move) -> moved.put(source, move * factor));
                Observation on = observation
                        .with(new Observed.Number(scale.applyAsDouble(number.value())))
                        .withMoves(moved);
                all.add(
                        observation.ownUncertainty().isPresent()
                                ? on.withOwnUncertainty(Math.abs(factor)
                                        * observation.ownUncertainty().getAsDouble())
                                : on);
            } else {
                all.add(observation);
            }
        }
        return new Sample(group, all);
    }

    boolean hasOwnUncertainties() {
        return numbers().stream().anyMatch(one -> one.ownUncertainty().isPresent());
    }

    /** Returns how far one standard uncertainty of a shared error moves the mean. */
    double moveOfMean(String source) {
        List<Observation> numbers = numbers();
        double sum = 0;
        for (Observation observation : numbers) {
            sum += observation.moves().getOrDefault(source, 0.0);
        }
        return sum / numbers.size();
    }

    Set<String> sources() {
        Set<String> sources = new TreeSet<>();
        numbers().forEach(observation -> sources.addAll(observation.moves().keySet()));
        return sources;
    }

    Summary summary() {
        return Summary.of(values());
    }
}
