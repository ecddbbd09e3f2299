package org.twinbar.study.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.gauge.GaugeStudy;
import org.twinbar.study.table.SpecimenRow;

/**
 * A crossed study of a gauge, as a table: a row for each reading, with the part and the operator.
 *
 * @param unit of the readings
 * @param parts their names, in the table's order
 * @param operators their names, in the table's order
 * @param trials readings of each part by each operator
 * @param study what came out
 */
public record GaugeTable(
        String value,
        Optional<Unit> unit,
        List<String> parts,
        List<String> operators,
        int trials,
        GaugeStudy study) {

    private record Cell(String operator, String part) {}

    /**
     * Reads a table and analyses it.
     *
     * @throws InputException where a column is missing, a cell is no number, or not every operator
     *     read every part the same number of times
     */
    public static GaugeTable of(Table table, String value, String part, String operator) {
        Column values = column(table, value);
        Column ofParts = column(table, part);
        Column ofOperators = column(table, operator);
        Map<Cell, List<Double>> cells = new LinkedHashMap<>();
        for (Row row : table.rows()) {
            if (SpecimenRow.isNothing(text(row, values))) {
                continue;
            }
            Cell cell = new Cell(name(table, row, ofOperators), name(table, row, ofParts));
            cells.computeIfAbsent(cell, it -> new ArrayList<>()).add(number(table, row, values));
        }
        List<String> parts = cells.keySet().stream().map(Cell::part).distinct().toList();
        List<String> operators =
                cells.keySet().stream().map(Cell::operator).distinct().toList();
        requireMoreThanOne(table, parts, "part");
        requireMoreThanOne(table, operators, "operator");
        int trials = cells.values().iterator().next().size();
        double[][][] readings = new double[operators.size()][parts.size()][];
        for (int o = 0; o < operators.size(); o++) {
            for (int p = 0; p < parts.size(); p++) {
                Cell cell = new Cell(operators.get(o), parts.get(p));
                List<Double> found = cells.getOrDefault(cell, List.of());
                if (found.size() != trials) {
                    throw Place.of(table.name())
                            .refuse(
                                    "'%s' read '%s' %s, and the first part %s: everybody must read every part equally often"
                                            .formatted(
                                                    cell.operator(),
                                                    cell.part(),
                                                    times(found.size()),
                                                    times(trials)));
                }
                readings[o][p] = found.stream().mapToDouble(Double::doubleValue).toArray();
            }
        }
        if (trials < 2) {
            throw Place.of(table.name())
                    .refuse("each part was read once by each operator; how readings repeat needs"
                            + " two at least");
        }
        return new GaugeTable(
                values.label(),
                values.unit(),
                parts,
                operators,
                trials,
                GaugeStudy.crossed(readings));
    }

    private static void requireMoreThanOne(Table table, List<String> names, String what) {
        if (names.size() < 2) {
            throw Place.of(table.name())
                    .refuse("has %s %s, a crossed study needs two at least"
                            .formatted(names.size(), what));
        }
    }

    private static String times(int times) {
        return times == 1 ? "once" : times + " times";
    }

    private static Column column(Table table, String name) {
        List<String> headers = table.columns().stream().map(Column::header).toList();
        return table.column(name)
                .orElseThrow(() -> Place.of(table.name())
                        .refuse("there is no column '%s' among %s%s"
                                .formatted(
                                        name,
                                        String.join(", ", headers),
                                        Spelling.hint(name, headers))));
    }

    private static String name(Table table, Row row, Column column) {
        String text = text(row, column);
        if (text.isEmpty()) {
            throw Place.of(table.name())
                    .line(row.line())
                    .column(column.header())
                    .refuse("is empty, but there is a reading beside it");
        }
        return text;
    }

    private static String text(Row row, Column column) {
        return column.index() < row.cells().size()
                ? row.cells().get(column.index()).strip()
                : "";
    }

    private static double number(Table table, Row row, Column column) {
        try {
            return table.dialect().number(text(row, column));
        } catch (QuantityException e) {
            throw Place.of(table.name())
                    .line(row.line())
                    .column(column.header())
                    .refuse(e.getMessage());
        }
    }
}
