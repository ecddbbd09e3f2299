package org.twinbar.study.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
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

    /** Fewer values tell nothing of how much they scatter: common practice, no source. */
    public static final int FEWEST = 4;

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
        return of(
                Place.of(table.name()).column(column.header()),
                column.header(),
                column.unit(),
                lines,
                read.stream().mapToDouble(Double::doubleValue).toArray(),
                first.orElse(read.size()));
    }

    /**
     * Charts values in their order.
     *
     * @param place where they stand, for refusals
     * @param baseline how many of the first set the limits
     * @throws InputException as above
     */
    public static Drift of(
            Place place,
            String header,
            Optional<Unit> unit,
            List<Integer> lines,
            double[] values,
            int baseline) {
        if (values.length < FEWEST || baseline < FEWEST || baseline > values.length) {
            throw place.refuse("holds %s values, of which %s should set the limits; %s or more must"
                    .formatted(values.length, baseline, FEWEST));
        }
        ControlChart before = ControlChart.individuals(Arrays.copyOf(values, baseline));
        double sd = (before.high() - before.centre()) / 3;
        if (!(sd > 0)) {
            throw place.refuse("holds equal values where the limits are set; read them finer");
        }
        return new Drift(
                header,
                unit,
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

    /** Returns what the charts say, in words, by the place at which they say it. */
    public SortedMap<Integer, List<String>> said() {
        SortedMap<Integer, List<String>> said = new TreeMap<>();
        for (Signal signal : single.signals()) {
            said.computeIfAbsent(signal.index(), it -> new ArrayList<>()).add(words(signal.rule()));
        }
        for (Signal signal : weighted.signals()) {
            said.computeIfAbsent(signal.index(), it -> new ArrayList<>())
                    .add("weighted mean beyond its limits");
        }
        return said;
    }

    private static String words(ControlChart.Rule rule) {
        return switch (rule) {
            case BEYOND_LIMITS -> "beyond the limits";
            case TWO_OF_THREE -> "two of three far out on one side";
            case FOUR_OF_FIVE -> "four of five away from the centre on one side";
            case EIGHT_ON_ONE_SIDE -> "eight in a row on one side";
            case SIX_IN_ONE_DIRECTION -> "six in a row in one direction";
        };
    }

    /** Returns the first place at which a chart says that something changed. */
    public OptionalInt firstSignal() {
        return said().keySet().stream().mapToInt(Integer::intValue).min();
    }
}
