package org.twinbar.study;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.quantity.QuantityException;
import org.twinbar.statistics.MannWhitney;
import org.twinbar.statistics.panel.Panel;

/**
 * What viewers voted on stills whose groups they did not know.
 *
 * <p>Votes on one specimen are repeats of one reading: each specimen counts once, by their median,
 * and groups are compared by specimens (METHODS.md F).
 *
 * @param voters how many different ones; 0 where nobody wrote down who voted
 * @param votes that count
 * @param first and second group with the median of each of its specimens, by code
 * @param secondHigher pairs of one specimen of each group in which the second's was rated higher;
 *     alike ones count half
 * @param p two-sided share of all ways to deal the specimens into the groups whose pairs lie as far
 *     from even
 * @param smallestP that any votes on so many specimens could give
 */
public record Votes(
        int voters,
        int votes,
        Rated first,
        Rated second,
        double secondHigher,
        double p,
        double smallestP) {

    private static final int MOST_SPECIMENS = 400;
    private static final double LEAST = 1;
    private static final double MOST = 5;

    /** A group and the median vote on each of its specimens. */
    public record Rated(String group, Map<String, Double> medians) {
        public Rated {
            medians = java.util.Collections.unmodifiableMap(new TreeMap<>(medians));
        }

        double[] values() {
            return medians.values().stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /** A still, by the key. */
    private record Shown(String specimen, String group) {}

    /**
     * Opens votes by their key.
     *
     * @param votes with columns {@code still}, {@code vote} and maybe {@code voter}; who votes
     *     twice on one still has changed their mind, and rows without a vote are passed over
     * @param key with columns {@code still}, {@code specimen} and {@code group}
     * @param between two groups of the key, where it has more
     * @throws InputException where a column is missing, a still is not in the key, a vote is not 1
     *     to 5, or there are not two groups with votes
     */
    public static Votes of(Table votes, Table key, List<String> between) {
        Map<String, Shown> shown = shown(key);
        List<String> groups = groups(shown, between, key.name());
        Column still = column(votes, "still");
        Column vote = column(votes, "vote");
        Optional<Column> voter = votes.column("voter");
        Map<List<String>, Double> counted = new LinkedHashMap<>();
        Set<String> voters = new HashSet<>();
        for (Row row : votes.rows()) {
            String cell = row.cell(vote.index()).strip();
            if (cell.isEmpty()) {
                continue;
            }
            String number = row.cell(still.index()).strip();
            Place place = Place.of(votes.name()).line(row.line());
            if (!shown.containsKey(number)) {
                throw place.column(still.header())
                        .value(number)
                        .refuseValue("is no still of %s".formatted(key.name()));
            }
            String who = voter.map(it -> row.cell(it.index()).strip()).orElse("");
            if (!who.isEmpty()) {
                voters.add(who);
            }
            counted.put(
                    List.of(number, who.isEmpty() ? "line " + row.line() : who),
                    rating(votes, place.column(vote.header()), cell));
        }
        Map<String, Map<String, List<Double>>> byGroup = new LinkedHashMap<>();
        groups.forEach(group -> byGroup.put(group, new LinkedHashMap<>()));
        int used = 0;
        for (Map.Entry<List<String>, Double> each : counted.entrySet()) {
            Shown of = shown.get(each.getKey().get(0));
            Map<String, List<Double>> group = of == null ? null : byGroup.get(of.group());
            if (of != null && group != null) {
                group.computeIfAbsent(of.specimen(), it -> new ArrayList<>()).add(each.getValue());
                used++;
            }
        }
        Rated first = rated(groups.get(0), byGroup, votes.name());
        Rated second = rated(groups.get(1), byGroup, votes.name());
        int specimens = first.medians().size() + second.medians().size();
        if (specimens > MOST_SPECIMENS) {
            throw new InputException("%s holds votes on %s specimens, must be %s or fewer"
                    .formatted(votes.name(), specimens, MOST_SPECIMENS));
        }
        var test = MannWhitney.twoSided(second.values(), first.values());
        return new Votes(
                voters.size(),
                used,
                first,
                second,
                test.statistic(),
                test.p(),
                smallest(first.medians().size(), second.medians().size()));
    }

    /** The two ways that lie farthest from even, among all ways to deal. */
    private static double smallest(int first, int second) {
        double ways = 1;
        for (int i = 1; i <= first; i++) {
            ways = ways * (second + i) / i;
        }
        return Math.min(1, 2 / ways);
    }

    private static Map<String, Shown> shown(Table key) {
        Column still = column(key, "still");
        Column specimen = column(key, "specimen");
        Column group = column(key, "group");
        Map<String, Shown> shown = new LinkedHashMap<>();
        for (Row row : key.rows()) {
            shown.put(
                    row.cell(still.index()).strip(),
                    new Shown(
                            row.cell(specimen.index()).strip(),
                            row.cell(group.index()).strip()));
        }
        return shown;
    }

    private static List<String> groups(
            Map<String, Shown> shown, List<String> between, String name) {
        List<String> all =
                shown.values().stream().map(Shown::group).distinct().sorted().toList();
        for (String group : between) {
            if (!all.contains(group)) {
                throw new InputException(
                        "%s has no group '%s'%s".formatted(name, group, Spelling.hint(group, all)));
            }
        }
        List<String> chosen =
                between.isEmpty() ? all : between.stream().distinct().toList();
        if (chosen.size() != 2) {
            throw new InputException("%s has the groups %s; name two of them"
                    .formatted(name, String.join(", ", all)));
        }
        return chosen;
    }

    private static Rated rated(
            String group, Map<String, Map<String, List<Double>>> byGroup, String name) {
        Map<String, List<Double>> specimens = byGroup.getOrDefault(group, Map.of());
        if (specimens.isEmpty()) {
            throw new InputException("%s holds no vote on '%s'".formatted(name, group));
        }
        Map<String, Double> medians = new TreeMap<>();
        specimens.forEach((code, ratings) -> medians.put(
                code,
                Panel.perPart(
                        new double[][] {
                            ratings.stream().mapToDouble(Double::doubleValue).toArray()
                        },
                        Panel.Reduction.MEDIAN)[0]));
        return new Rated(group, medians);
    }

    private static double rating(Table votes, Place place, String cell) {
        try {
            double rating = votes.dialect().number(cell);
            if (rating >= LEAST && rating <= MOST) {
                return rating;
            }
        } catch (QuantityException e) {
            // It is said below, with what stands there.
        }
        throw place.value(cell).refuseValue("is no vote from 1 to 5");
    }

    private static Column column(Table table, String header) {
        return table.column(header)
                .orElseThrow(() ->
                        Place.of(table.name()).refuse("there is no column '%s'".formatted(header)));
    }

    /** Returns how many pairs of one specimen of each group there are. */
    public int pairs() {
        return first.medians().size() * second.medians().size();
    }
}
