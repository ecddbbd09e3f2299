package org.twinbar.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.statistics.gauge.ControlChart;
import org.twinbar.statistics.gauge.ControlChart.Signal;

/**
 * A reference that was tested again and again: does the bench still read what it read?
 *
 * @param header of the column of values
 * @param lines of the table that the values stand in
 * @param baseline how many of the first values set the limits
 * @param single values against limits at three standard deviations, with the rules of runs
 * @param weighted their weighted mean, which sees slow drift sooner
 */
public record Drift(
        String header,
        Optional<Unit> unit,
        List<Integer> lines,
        int baseline,
        ControlChart single,
        ControlChart weighted) {

    private static final int FEWEST = 4;

    /** A usual weight of the newest value: NIST/SEMATECH e-Handbook, 6.3.2.4. */
    private static final double WEIGHT = 0.25;

    public Drift {
        lines = List.copyOf(lines);
    }

    /**
     * Reads the values of a table in the order of its rows.
     *
     * @param first how many of them set the limits; all where it isn't said
     * @throws InputException where there are fewer than four values, a cell holds none, all values
     *     that set the limits are equal, or more should set them than there are
     */
    public static Drift of(Table table, String value, OptionalInt first) {
        Column column = table.column(value)
                .orElseThrow(() ->
                        Place.of(table.name()).refuse("there is no column '%s'".formatted(value)));
        List<Integer> lines = new ArrayList<>();
        List<Double> read = new ArrayList<>();
        for (Row row : table.rows()) {
            String cell = row.cell(column.index()).strip();
            if (!cell.isEmpty()) {
                lines.add(row.line());
                read.add(number(table, row, column, cell));
            }
        }
        double[] values = read.stream().mapToDouble(Double::doubleValue).toArray();
        int baseline = first.orElse(values.length);
        if (values.length < FEWEST || baseline < FEWEST || baseline > values.length) {
            throw Place.of(table.name())
                    .column(column.header())
                    .refuse("holds %s values, of which %s should set the limits; %s or more must"
                            .formatted(values.length, baseline, FEWEST));
        }
        ControlChart before = ControlChart.individuals(Arrays.copyOf(values, baseline));
        double sd = (before.high() - before.centre()) / 3;
        if (!(sd > 0)) {
            throw Place.of(table.name())
                    .column(column.header())
                    .refuse("holds equal values where the limits are set; read them finer");
        }
        return new Drift(
                column.header(),
                column.unit(),
                lines,
                baseline,
                ControlChart.individuals(values, before.centre(), sd),
                ControlChart.weighted(values, before.centre(), sd, WEIGHT));
    }

    private static double number(Table table, Row row, Column column, String cell) {
        try {
            return table.dialect().number(cell);
        } catch (QuantityException e) {
            throw Place.of(table.name())
                    .line(row.line())
                    .column(column.header())
                    .value(cell)
                    .refuseValue("is not a number");
        }
    }

    public boolean isInControl() {
        return single.isInControl() && weighted.isInControl();
    }

    /** Returns the first place at which a chart says that something changed. */
    public OptionalInt firstSignal() {
        return java.util.stream.Stream.concat(
                        single.signals().stream(), weighted.signals().stream())
                .mapToInt(Signal::index)
                .min();
    }
}
