package org.twinbar.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Ends;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.report.Written;
import org.twinbar.study.calculation.Calculated;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.uncertainty.Budget;

/** Results of specimens for a person: lined up, with uncertainty and unit; then what was seen. */
final class ResultsText {

    private ResultsText() {}

    static String of(Calculated calculated) {
        StringBuilder text = new StringBuilder();
        text.append(calculated.used().description().title()).append(". ");
        text.append(calculated.used().description().standard()).append("\n\n");
        Factors factors = Factors.of(calculated.specimens());
        text.append(table(calculated, factors.differing()));
        text.append(factors.sentence()).append('\n');
        text.append(missing(calculated));
        text.append(findings(calculated));
        text.append(standsOn(calculated));
        text.append("± is the standard uncertainty. Twinbar tells what was measured on this"
                + " bench; it certifies nothing.\n");
        return text.toString();
    }

    /**
     * What tells specimens apart beside their group.
     *
     * @param differing factors that need a column
     * @param alike factors that stand at one level for all, which are said once
     */
    private record Factors(List<String> differing, Map<String, String> alike) {

        static Factors of(List<JudgedSpecimen> specimens) {
            Map<String, Set<String>> levels = new LinkedHashMap<>();
            for (JudgedSpecimen one : specimens) {
                one.factors().keySet().forEach(it -> levels.put(it, new LinkedHashSet<>()));
            }
            levels.forEach((factor, its) ->
                    specimens.forEach(one -> its.add(one.factors().getOrDefault(factor, ""))));
            List<String> differing = new ArrayList<>();
            Map<String, String> alike = new LinkedHashMap<>();
            levels.forEach((factor, its) -> {
                if (its.size() > 1) {
                    differing.add(factor);
                } else {
                    alike.put(factor, its.iterator().next());
                }
            });
            return new Factors(differing, alike);
        }

        /** Says what is alike, in a line; what nobody noted is not said. */
        String sentence() {
            String said = alike.entrySet().stream()
                    .filter(it -> !it.getValue().isBlank())
                    .map(it -> it.getKey().replace('_', ' ') + " " + it.getValue())
                    .collect(Collectors.joining(", "));
            return said.isEmpty() ? "" : ComparisonsText.wrapped("All of them: " + said + ".", "");
        }
    }

    private static String table(Calculated calculated, List<String> factors) {
        List<Property> shown = calculated.used().description().properties().stream()
                .filter(it -> calculated.specimens().stream().anyMatch(one -> has(one, it)))
                .toList();
        List<String> header = new ArrayList<>(List.of("specimen", "group"));
        header.addAll(factors);
        shown.forEach(property -> header.add(heading(property)));
        Aligned rows = new Aligned().row(header.toArray(String[]::new));
        for (JudgedSpecimen specimen : calculated.specimens()) {
            List<String> row = new ArrayList<>(List.of(specimen.code(), specimen.group()));
            factors.forEach(it -> row.add(specimen.factors().getOrDefault(it, "")));
            for (Property property : shown) {
                row.add(cell(specimen.result(), property));
            }
            rows.row(row.toArray(String[]::new));
        }
        return rows.toString();
    }

    private static String heading(Property property) {
        String name = property.name().replace('_', ' ');
        String unit = property.unit().symbol();
        return unit.isEmpty() ? name : name + ", " + unit;
    }

    private static boolean has(JudgedSpecimen specimen, Property property) {
        return !(specimen.result().yields().get(property) instanceof Yield.Missing);
    }

    private static String cell(Result result, Property property) {
        Yield yield = result.yields().get(property);
        Budget budget = result.budgets().get(property);
        Ends ends = Ends.of(result, property);
        if (budget != null) {
            return Written.value(budget.value(), budget.u(), "");
        } else if (yield instanceof Yield.AtLeast bound) {
            return "≥ " + Written.bound(bound.bound(), ends.lowerU(), bound.bound());
        } else if (yield instanceof Yield.Below bound) {
            return "< " + Written.bound(bound.bound(), ends.upperU(), bound.bound());
        } else if (yield instanceof Yield.Between between) {
            return "%s to %s"
                    .formatted(
                            Written.bound(between.from(), ends.lowerU(), between.to()),
                            Written.bound(between.to(), ends.upperU(), between.to()));
        } else if (yield instanceof Yield.Word word) {
            return word.word();
        }
        return "none";
    }

    /** What has no value, with the reason, once for all specimens that share it. */
    private static String missing(Calculated calculated) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : calculated.specimens()) {
            specimen.result().yields().forEach((property, yield) -> {
                if (yield instanceof Yield.Missing none) {
                    byReason.computeIfAbsent(
                                    heading(property) + ": " + none.reason(),
                                    it -> new ArrayList<>())
                            .add(specimen.code());
                }
            });
        }
        return listed("No value", byReason, calculated.specimens().size());
    }

    /** Findings by their kind: the first one's sentence, and on which specimens it was seen. */
    private static String findings(Calculated calculated) {
        Map<String, List<String>> seenOn = new LinkedHashMap<>();
        Map<String, String> sentence = new LinkedHashMap<>();
        for (Finding finding : calculated.findings()) {
            seenOn.put(finding.level().word() + ": " + finding.text(), List.of());
        }
        for (JudgedSpecimen specimen : calculated.specimens()) {
            for (Finding finding : specimen.result().findings()) {
                String first = sentence.computeIfAbsent(
                        finding.code(), it -> finding.level().word() + ": " + finding.text());
                seenOn.computeIfAbsent(first, it -> new ArrayList<>()).add(specimen.code());
            }
        }
        return listed("Findings", seenOn, calculated.specimens().size());
    }

    /** Which calibrations the values stand on. */
    private static String standsOn(Calculated calculated) {
        StringBuilder text = new StringBuilder();
        for (Instrument instrument : calculated.used().instruments()) {
            instrument
                    .correction()
                    .ifPresent(it -> text.append(ComparisonsText.wrapped(
                            "%s: %s".formatted(instrument.name(), it.standsOn()), "  ")));
        }
        return text.isEmpty() ? "" : "Readings were corrected by\n" + text + "\n";
    }

    private static String listed(String title, Map<String, List<String>> items, int all) {
        if (items.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder(title).append('\n');
        items.forEach((words, codes) -> {
            String where = codes.isEmpty()
                    ? ""
                    : codes.size() == all
                            ? " (all)"
                            : codes.size() == 1
                                    ? " (%s)".formatted(codes.get(0))
                                    : " (%s; so too, in their measure: %s)"
                                            .formatted(
                                                    codes.get(0),
                                                    String.join(
                                                            ", ", codes.subList(1, codes.size())));
            text.append(ComparisonsText.wrapped(words + where, "  "));
        });
        return text.append('\n').toString();
    }
}
