package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.twinbar.statistics.groups.Explained;
import org.twinbar.statistics.groups.FTest;

/**
 * Specimens beside those that were made alike and together with them: the same group, and the same
 * print run, mix or load where that is told. One that has no fellow is left aside.
 */
final class Fellows {

    private final List<Observation> members = new ArrayList<>();
    private final List<double[]> columns = new ArrayList<>();

    private Fellows(List<List<Observation>> sets) {
        sets.forEach(members::addAll);
        int at = 0;
        for (List<Observation> set : sets) {
            double[] column = new double[members.size()];
            for (int i = 0; i < set.size(); i++) {
                column[at++] = 1;
            }
            columns.add(column);
        }
    }

    static Fellows of(Sample treated, Sample control, Predicate<Observation> among) {
        Map<String, List<Observation>> sets = new TreeMap<>();
        Stream.of(treated, control)
                .flatMap(sample -> sample.numbers().stream())
                .filter(among)
                .forEach(one ->
                        sets.computeIfAbsent(name(one), it -> new ArrayList<>()).add(one));
        return new Fellows(sets.values().stream().filter(set -> set.size() > 1).toList());
    }

    private static String name(Observation one) {
        return one.group() + "\n" + one.block().map(Block::name).orElse("");
    }

    List<Observation> members() {
        return members;
    }

    double[] values() {
        return members.stream()
                .mapToDouble(one -> ((Observed.Number) one.observed()).value())
                .toArray();
    }

    /** Returns a column, one number per member, less the mean of its fellows. */
    double[] centred(double[] column) {
        return Explained.rest(column, columns);
    }

    /** Tests whether these columns explain more of the values than fellows already do. */
    Optional<FTest> explainedBy(List<double[]> more, String method) {
        return members.isEmpty()
                ? Optional.empty()
                : Explained.beyond(values(), columns, more, method);
    }

    /** Returns what these columns explain of the values beyond the means of fellows. */
    double[] fitted(List<double[]> more) {
        double[] own = centred(values());
        List<double[]> all = new ArrayList<>(columns);
        all.addAll(more);
        double[] rest = Explained.rest(values(), all);
        double[] fitted = new double[own.length];
        for (int i = 0; i < own.length; i++) {
            fitted[i] = own[i] - rest[i];
        }
        return fitted;
    }
}
