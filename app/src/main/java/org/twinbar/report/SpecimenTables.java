package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.twinbar.method.Property;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.uncertainty.Source;

/** Tables with a row for each specimen, left out or not. */
final class SpecimenTables {

    /** No table of a sort has more columns: nobody finds their way through a wider one. */
    private static final int VALUES = 5;

    private static final int UNCERTAINTIES = 4;
    private static final int READINGS = 7;

    private SpecimenTables() {}

    /** Returns what each test gave, and which part of its uncertainty is a specimen's own. */
    static List<Block> results(JudgedStudy study) {
        List<Block> blocks = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            List<JudgedSpecimen> specimens = study.specimensOf(used.name());
            List<Property> known = used.description().properties().stream()
                    .filter(p -> specimens.stream().anyMatch(s -> !missing(s, p)))
                    .toList();
            if (specimens.isEmpty()) {
                continue;
            }
            blocks.add(new Block.Heading(used.description().title()));
            if (!known.isEmpty()) {
                PageWidth beside = PageWidth.of(heads(specimens));
                specimens.forEach(it -> beside.row(head(it, specimens)));
                beside.chunks(
                                known,
                                VALUES,
                                property -> PageWidth.number(
                                        Cells.header(property),
                                        specimens.stream()
                                                .map(it -> Cells.of(it.result(), property))))
                        .forEach(some -> blocks.add(values(specimens, some)));
                List<Property> numbers = known.stream()
                        .filter(p -> specimens.stream().anyMatch(s -> hasBudget(s, p)))
                        .toList();
                PageWidth.of(List.of(Column.name("Specimen")))
                        .chunks(
                                numbers,
                                UNCERTAINTIES,
                                property -> uncertainties(specimens, property))
                        .forEach(some -> blocks.add(uncertainties(specimens, some)));
            }
            List<String> without = whyUnknown(used, specimens, known);
            if (!without.isEmpty()) {
                blocks.add(new Block.Sentences(without, Sheet.Weight.PLAIN));
            }
        }
        return blocks;
    }

    private static boolean missing(JudgedSpecimen specimen, Property property) {
        return Cells.missing(specimen.result(), property);
    }

    private static boolean hasBudget(JudgedSpecimen specimen, Property property) {
        return Cells.u(specimen.result(), property) > 0;
    }

    private static Block values(List<JudgedSpecimen> specimens, List<Property> properties) {
        List<Column> columns = new ArrayList<>(heads(specimens));
        properties.forEach(property -> columns.add(Column.number(Cells.header(property))));
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : specimens) {
            List<String> row = new ArrayList<>(head(specimen, specimens));
            properties.forEach(property -> row.add(Cells.of(specimen.result(), property)));
            rows.add(row);
        }
        return new Block.Table("Values with their standard uncertainty", columns, rows);
    }

    private static Block uncertainties(List<JudgedSpecimen> specimens, List<Property> properties) {
        List<Column> columns = new ArrayList<>(List.of(Column.name("Specimen")));
        for (Property property : properties) {
            columns.add(Column.number(Cells.header(property) + ", own"));
            columns.add(Column.number("shared"));
        }
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : specimens) {
            List<String> row = new ArrayList<>(List.of(specimen.code()));
            for (Property property : properties) {
                row.add(Cells.u(specimen.result(), property, Source.Reach.OWN));
                row.add(Cells.u(specimen.result(), property, Source.Reach.SHARED));
            }
            rows.add(row);
        }
        return new Block.Table(
                "Standard uncertainty from a specimen's own readings, and from what specimens share",
                columns,
                rows);
    }

    /** Returns how wide the two columns of a property are (mm). */
    private static double uncertainties(List<JudgedSpecimen> specimens, Property property) {
        return PageWidth.number(
                        Cells.header(property) + ", own",
                        specimens.stream()
                                .map(it -> Cells.u(it.result(), property, Source.Reach.OWN)))
                + PageWidth.number(
                        "shared",
                        specimens.stream()
                                .map(it -> Cells.u(it.result(), property, Source.Reach.SHARED)));
    }

    /** Properties that no specimen has, each with the reasons, so that no column is all reasons. */
    private static List<String> whyUnknown(
            MethodUsed used, List<JudgedSpecimen> specimens, List<Property> known) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        for (Property property : used.description().properties()) {
            if (!known.contains(property)) {
                Set<String> reasons = new LinkedHashSet<>();
                specimens.forEach(s -> reasons.add(Cells.of(s.result(), property)));
                byReason.computeIfAbsent(String.join("; ", reasons), r -> new ArrayList<>())
                        .add(property.label());
            }
        }
        List<String> sentences = new ArrayList<>();
        byReason.forEach((reason, labels) ->
                sentences.add("Not known: " + String.join(", ", labels) + ": " + reason + "."));
        return sentences;
    }

    /** Returns what was read on each specimen, corrections beside what they correct. */
    static List<Block> readings(JudgedStudy study) {
        List<Block> blocks = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            List<JudgedSpecimen> specimens = study.specimensOf(used.name());
            Set<String> names = new LinkedHashSet<>();
            specimens.forEach(s -> s.readings().forEach(reading -> names.add(reading.column())));
            if (names.isEmpty()) {
                continue;
            }
            blocks.add(new Block.Heading(used.description().title()));
            PageWidth.of(List.of(Column.name("Specimen")))
                    .chunks(
                            List.copyOf(names),
                            READINGS,
                            name -> PageWidth.text(
                                    name,
                                    specimens.stream()
                                            .flatMap(it -> it.readings().stream())
                                            .filter(it -> it.column().equals(name))
                                            .map(SpecimenTables::cell)))
                    .forEach(some -> blocks.add(readings(specimens, some)));
        }
        return blocks;
    }

    private static Block readings(List<JudgedSpecimen> specimens, List<String> names) {
        List<Column> columns = new ArrayList<>(List.of(Column.name("Specimen")));
        names.forEach(name -> columns.add(Column.text(name)));
        List<List<String>> rows = new ArrayList<>();
        for (JudgedSpecimen specimen : specimens) {
            Map<String, String> cells = new LinkedHashMap<>();
            specimen.readings().forEach(reading -> cells.put(reading.column(), cell(reading)));
            List<String> row = new ArrayList<>(List.of(specimen.code()));
            names.forEach(name -> row.add(cells.getOrDefault(name, "not read")));
            rows.add(row);
        }
        return new Block.Table("What was read, as it was written", columns, rows);
    }

    private static String cell(Reading reading) {
        return reading.corrected()
                .map(corrected -> reading.text() + " → " + corrected.text())
                .orElse(reading.text());
    }

    private static List<Column> heads(List<JudgedSpecimen> specimens) {
        List<Column> columns =
                new ArrayList<>(List.of(Column.name("Specimen"), Column.text("Group")));
        factors(specimens).forEach(factor -> columns.add(Column.text(label(factor))));
        return columns;
    }

    private static List<String> head(JudgedSpecimen specimen, List<JudgedSpecimen> all) {
        List<String> row = new ArrayList<>();
        row.add(specimen.code());
        row.add(specimen.group() + (specimen.counts() ? "" : ", left out"));
        factors(all).forEach(factor -> row.add(factor(specimen, factor)));
        return row;
    }

    /** A plain specimen has no mix, and an empty cell would leave open whether that is known. */
    private static String factor(JudgedSpecimen specimen, String factor) {
        String value = specimen.factors().getOrDefault(factor, "");
        return value.isBlank() ? "none" : value;
    }

    private static Set<String> factors(List<JudgedSpecimen> specimens) {
        Set<String> factors = new LinkedHashSet<>();
        specimens.forEach(specimen -> factors.addAll(specimen.factors().keySet()));
        return factors;
    }

    private static String label(String factor) {
        String words = factor.replace('_', ' ');
        return words.isEmpty()
                ? words
                : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }
}
