package org.twinbar.study.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.instrument.Calibration;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.instrument.Reference;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.study.table.Upload;

/**
 * A table of what an instrument showed at known values: columns {@code reference} and
 * {@code reading}, in the order in which they were read.
 */
public final class CalibrationTable {

    private static final String REFERENCE = "reference";
    private static final String READING = "reading";

    private final Table table;
    private final Column reference;
    private final Column reading;

    private CalibrationTable(Table table) {
        this.table = table;
        this.reference = column(REFERENCE);
        this.reading = column(READING);
    }

    /** @throws InputException where there is no such table, or a column is missing */
    public static CalibrationTable of(Table table) {
        return new CalibrationTable(table);
    }

    /**
     * Makes a table of pairs that were typed, a line each, reference first; a decimal comma is one,
     * so that a blank, a tab or a semicolon parts the two.
     *
     * @throws InputException where a line is not two numbers
     */
    public static Upload typed(String pairs, Unit unit) {
        String in = unit.symbol().isEmpty() ? "" : " (" + unit.symbol() + ")";
        StringBuilder table = new StringBuilder("reference%s;reading%s\n".formatted(in, in));
        int line = 0;
        for (String pair : pairs.strip().split("\\R")) {
            line++;
            String[] numbers = pair.strip().split("[;\\s]+");
            if (numbers.length != 2) {
                throw new InputException(
                        "line %s, '%s': must be two numbers, the reference and the reading"
                                .formatted(line, pair.strip()));
            }
            table.append(number(numbers[0], line)).append(';');
            table.append(number(numbers[1], line)).append('\n');
        }
        return Upload.of("typed by hand", table.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static double number(String text, int line) {
        try {
            return Numbers.parse(text);
        } catch (QuantityException e) {
            throw new InputException("line %s: %s".formatted(line, e.getMessage()));
        }
    }

    private Column column(String name) {
        List<String> headers = table.columns().stream().map(Column::header).toList();
        return table.column(name)
                .orElseThrow(() -> Place.of(table.name())
                        .refuse("there is no column '%s' among %s%s"
                                .formatted(
                                        name,
                                        String.join(", ", headers),
                                        Spelling.hint(name, headers))));
    }

    /** Returns the unit that its headers name, a plain number where they name none. */
    public Unit unit() {
        return reference.unit().or(reading::unit).orElse(Unit.ONE);
    }

    /**
     * Fits the line of readings on references, both in one unit.
     *
     * @param step of the display, in that unit
     * @throws InputException where a cell is no number, a column measures something else, or the
     *     points make no line
     */
    public Calibration calibration(Unit unit, double step, Reference against) {
        try {
            return Calibration.of(points(unit), step, against);
        } catch (IllegalArgumentException e) {
            throw Place.of(table.name()).refuse(String.valueOf(e.getMessage()));
        }
    }

    private List<Point> points(Unit unit) {
        List<Point> points = new ArrayList<>();
        for (Row row : table.rows()) {
            Optional<Double> known = number(row, reference, unit);
            Optional<Double> shown = number(row, reading, unit);
            if (known.isPresent() != shown.isPresent()) {
                throw place(row, known.isPresent() ? reading : reference)
                        .refuse("is empty, but its neighbour is not");
            }
            if (known.isPresent() && shown.isPresent()) {
                points.add(new Point(known.get(), shown.get()));
            }
        }
        return points;
    }

    private Optional<Double> number(Row row, Column column, Unit unit) {
        String text = column.index() < row.cells().size()
                ? row.cells().get(column.index()).strip()
                : "";
        if (SpecimenRow.isNothing(text)) {
            return Optional.empty();
        }
        try {
            double value = table.dialect().number(text);
            return Optional.of(column.unit().orElse(unit).to(unit).apply(value));
        } catch (QuantityException e) {
            throw place(row, column).refuse(e.getMessage());
        }
    }

    private Place place(Row row, Column column) {
        return Place.of(table.name()).line(row.line()).column(column.header());
    }
}
