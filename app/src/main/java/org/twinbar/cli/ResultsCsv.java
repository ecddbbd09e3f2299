package org.twinbar.cli;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Calculated;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/**
 * Results of specimens as a table, in the form that {@code compare} reads again: a row for each
 * specimen; behind each value its own uncertainty and how far each shared source moves it.
 */
final class ResultsCsv {

    private ResultsCsv() {}

    static void write(Calculated calculated, PrintWriter out) {
        List<Property> properties = calculated.used().description().properties();
        Set<String> headers = new LinkedHashSet<>(List.of("specimen", "group"));
        calculated.specimens().forEach(it -> headers.addAll(it.factors().keySet()));
        List<Map<String, String>> rows = new ArrayList<>();
        Map<Property, Set<String>> columns = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : calculated.specimens()) {
            Map<String, String> row = new HashMap<>();
            row.put("specimen", specimen.code());
            row.put("group", specimen.group());
            row.putAll(specimen.factors());
            for (Property property : properties) {
                Map<String, String> cells = cells(specimen.result(), property);
                columns.computeIfAbsent(property, it -> new LinkedHashSet<>())
                        .addAll(cells.keySet());
                row.putAll(cells);
            }
            rows.add(row);
        }
        columns.values().forEach(headers::addAll);
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

    private static Map<String, String> cells(Result result, Property property) {
        Map<String, String> row = new LinkedHashMap<>();
        String column = property.column();
        Yield yield = result.yields().get(property);
        Budget budget = result.budgets().get(property);
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
        return row;
    }
}
