package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.twinbar.method.Property;
import org.twinbar.method.Words;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.statistics.Estimate;
import org.twinbar.statistics.MeanEstimate;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.uncertainty.Source;

/**
 * Mean, standard deviation and interval of the mean of each group: what the report clauses of test
 * standards ask for (METHODS.md L, 9 and 10). No verdict reads them.
 */
final class GroupTables {

    private static final double LEVEL = 0.95;

    private GroupTables() {}

    static List<Block> of(JudgedStudy study) {
        List<Block> blocks = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            Map<String, List<JudgedSpecimen>> groups = alike(study, used);
            List<List<String>> rows = new ArrayList<>();
            for (Property property : used.description().properties()) {
                groups.forEach((name, specimens) -> row(property, name, specimens, rows));
            }
            List<String> counted = words(used, groups);
            if (!rows.isEmpty() || !counted.isEmpty()) {
                blocks.add(new Block.Heading(used.description().title()));
            }
            if (!rows.isEmpty()) {
                blocks.add(new Block.Table(
                        "Of the specimens that count; the 95 % interval is of the group's mean,"
                                + " by Student's t",
                        List.of(
                                Column.name("Property"),
                                Column.text("Group"),
                                Column.number("Specimens"),
                                Column.number("Mean"),
                                Column.number("Standard deviation"),
                                Column.number("95 % interval")),
                        rows));
            }
            if (!counted.isEmpty()) {
                blocks.add(new Block.Sentences(counted, Sheet.Weight.PLAIN));
            }
        }
        return blocks;
    }

    /** Specimens that a question tells apart by a factor are not of one mean. */
    private static Map<String, List<JudgedSpecimen>> alike(JudgedStudy study, MethodUsed used) {
        Set<String> factors = new LinkedHashSet<>();
        study.claims()
                .forEach(claim -> claim.answers().forEach(answer -> {
                    if (answer instanceof Answer.Compared compared
                            && compared.method().equals(used.name())) {
                        factors.addAll(compared.where().keySet());
                    }
                }));
        Map<String, List<JudgedSpecimen>> groups = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : study.specimensOf(used.name())) {
            if (specimen.counts()) {
                StringBuilder name = new StringBuilder(specimen.group());
                factors.forEach(it ->
                        name.append(", ").append(specimen.factors().getOrDefault(it, "not said")));
                groups.computeIfAbsent(name.toString(), it -> new ArrayList<>()).add(specimen);
            }
        }
        return groups;
    }

    private static void row(
            Property property,
            String group,
            List<JudgedSpecimen> specimens,
            List<List<String>> rows) {
        double[] values = specimens.stream()
                .flatMap(it -> Cells.number(it.result(), property).stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        if (values.length == 0) {
            return;
        }
        String count = values.length == specimens.size()
                ? Integer.toString(values.length)
                : "%s of %s".formatted(values.length, specimens.size());
        if (values.length == 1) {
            rows.add(List.of(
                    Cells.header(property),
                    group,
                    count,
                    Written.number(values[0], 4),
                    "one specimen",
                    "one specimen"));
            return;
        }
        MeanEstimate plain = MeanEstimate.of(values);
        double sd = Math.sqrt(plain.variance() * plain.n());
        Estimate interval =
                plain.withResolution(ownUncertainty(property, specimens)).interval(LEVEL);
        double half = (interval.high() - interval.low()) / 2;
        rows.add(List.of(
                Cells.header(property),
                group,
                count,
                Written.rounded(plain.mean(), half),
                sd == 0 ? "below what was read" : Written.uncertainty(sd),
                Written.rounded(interval.low(), half)
                        + " to "
                        + Written.rounded(interval.high(), half)));
    }

    /** What a reading cannot tell apart is no lack of scatter. */
    private static double ownUncertainty(Property property, List<JudgedSpecimen> specimens) {
        return specimens.stream()
                .filter(it -> it.result().budgets().containsKey(property))
                .mapToDouble(it -> it.result().budgets().get(property).u(Source.Reach.OWN))
                .average()
                .orElse(0);
    }

    /** Words such as the type of break are counted, group by group. */
    private static List<String> words(MethodUsed used, Map<String, List<JudgedSpecimen>> groups) {
        List<String> sentences = new ArrayList<>();
        for (Words words : used.description().words()) {
            groups.forEach((name, specimens) -> {
                Map<String, Integer> counts = new TreeMap<>();
                for (JudgedSpecimen specimen : specimens) {
                    for (Reading reading : specimen.readings()) {
                        if (reading.column().equals(words.name())
                                && !reading.counting().isBlank()) {
                            counts.merge(reading.counting().strip(), 1, Integer::sum);
                        }
                    }
                }
                if (!counts.isEmpty()) {
                    List<String> said = new ArrayList<>();
                    counts.forEach((word, times) -> said.add(word + " " + times));
                    sentences.add(
                            "%s, %s: %s.".formatted(words.label(), name, String.join(", ", said)));
                }
            });
        }
        return sentences;
    }
}
