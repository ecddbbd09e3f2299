package org.twinbar.cli;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.Calculated;
import org.twinbar.study.JudgedSpecimen;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/**
 * Results of specimens as a table, in the form that {@code compare} reads again: a row for each
 * specimen; behind each value its own uncertainty and how far each shared source moves it.
 */
final class ResultsCsv {

    private ResultsCsv() {}

    static void write(Calculated calculated, PrintWriter out) {
        List<Map<String, String>> rows = new ArrayList<>();
        Map<Property, Set<String>> columns = columns(calculated);
        Set<String> headers = new LinkedHashSet<>(List.of("specimen", "group"));
        calculated.specimens().forEach(it -> headers.addAll(it.factors().keySet()));
        columns.values().forEach(headers::addAll);
        for (JudgedSpecimen specimen : calculated.specimens()) {
            Map<String, String> row = new LinkedHashMap<>();
            row.put("specimen", specimen.code());
            row.put("group", specimen.group());
            row.putAll(specimen.factors());
            columns.keySet().forEach(property -> fill(row, specimen, property));
            rows.add(row);
        }
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(headers);
            for (Map<String, String> row : rows) {
                csv.writeRecord(
                        headers.stream().map(it -> row.getOrDefault(it, "")).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        out.print(text);
    }

    /** Columns of each property that a specimen has at least one value of. */
    private static Map<Property, Set<String>> columns(Calculated calculated) {
        Map<Property, Set<String>> columns = new LinkedHashMap<>();
        for (Property property : calculated.used().description().properties()) {
            Set<String> mine = new LinkedHashSet<>();
            for (JudgedSpecimen specimen : calculated.specimens()) {
                Map<String, String> cells = new LinkedHashMap<>();
                fill(cells, specimen, property);
                mine.addAll(cells.keySet());
            }
            if (!mine.isEmpty()) {
                columns.put(property, mine);
            }
        }
        return columns;
    }

    private static void fill(Map<String, String> row, JudgedSpecimen specimen, Property property) {
        String column = property.column();
        Yield yield = specimen.result().yields().get(property);
        Budget budget = specimen.result().budgets().get(property);
        if (budget != null) {
            row.put(column, Double.toString(budget.value()));
            row.put(column + "_own_u", Double.toString(budget.u(Source.Reach.OWN)));
            budget.shifts().forEach((source, shift) -> {
                if (source.reach() == Source.Reach.SHARED) {
                    String name = source.identity().replace(' ', '_');
                    row.put(column + "_move_" + name, Double.toString(shift));
                }
            });
        } else if (yield instanceof Yield.AtLeast bound) {
            row.put(column, "≥ " + bound.bound());
        } else if (yield instanceof Yield.Below bound) {
            row.put(column, "< " + bound.bound());
        } else if (yield instanceof Yield.Between between) {
            row.put(column, between.from() + " to " + between.to());
        } else if (yield instanceof Yield.Word word) {
            row.put(column, word.word());
        }
    }
}
