package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.statistics.Summary;

/**
 * The specimens of one group that count, in the order of their codes, so that rows may come in any.
 */
record Sample(String group, List<Observation> observations) {

    private static final double ROOT_OF_TWELVE = Math.sqrt(12);

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
    private double resolution(double step) {
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
