package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Words;
import org.twinbar.quantity.Labelled;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.HowMade;
import org.twinbar.study.table.Presets;

/**
 * A table with a row per specimen and a column per result, whoever wrote it: a spreadsheet's, or
 * what {@code calculate} gave.
 *
 * @param name of the file
 * @param headers in their order
 */
record ResultTable(String name, List<String> headers, List<ResultRow> rows) {

    private static final String OWN = "_own_u";
    private static final String MOVE = "_move_";

    ResultTable {
        headers = List.copyOf(headers);
        rows = List.copyOf(rows);
    }

    static ResultTable of(Table table) {
        return of(table, Corrections.NONE);
    }

    static ResultTable of(Table table, Corrections corrections) {
        List<ResultRow> rows = new ArrayList<>();
        table.rows().forEach(row -> {
            Map<String, String> cells = new LinkedHashMap<>();
            table.columns().forEach(column -> {
                boolean there = column.index() < row.cells().size();
                String came = there ? row.cells().get(column.index()).strip() : "";
                cells.put(
                        column.header(),
                        corrections
                                .of(row.line(), column.header())
                                .map(Corrections.Said::counting)
                                .orElse(came));
            });
            rows.add(new ResultRow(
                    Place.of(table.name()).line(row.line()),
                    table.dialect().decimalMark().sign(),
                    cells,
                    Map.of()));
        });
        return new ResultTable(
                table.name(), table.columns().stream().map(it -> it.header()).toList(), rows);
    }

    static ResultTable ofJson(String name, String json) {
        return ResultJson.read(name, json);
    }

    /** The values of one column, parted. */
    record Values(String header, String label, Unit unit, Scale scale, List<Part> parts) {}

    Values values(Asked asked, String groups) {
        String value = header(asked.property(), "value");
        String group = header(groups, "group");
        List<String> parting =
                asked.by().stream().map(column -> header(column, "by")).toList();
        Optional<String> event = asked.said(Term.EVENT).map(it -> header(it, "event"));
        Optional<String> amount = asked.said(Term.TREND).map(it -> header(it, "trend"));
        HowMade made = HowMade.of(asked, headers, this::header);
        Map<String, String> where = new LinkedHashMap<>();
        asked.where().forEach((column, level) -> where.put(header(column, "where"), level));
        Map<Map<String, String>, List<ResultRow>> parted = new LinkedHashMap<>();
        for (ResultRow row : rows) {
            if (where.entrySet().stream()
                    .allMatch(it -> row.text(it.getKey()).equals(it.getValue()))) {
                Map<String, String> part = new LinkedHashMap<>();
                parting.forEach(column -> part.put(column, row.text(column)));
                parted.computeIfAbsent(part, it -> new ArrayList<>()).add(row);
            }
        }
        if (parted.isEmpty()) {
            throw Place.of(name).refuse("there is no row to be compared");
        }
        List<Part> parts = new ArrayList<>();
        parted.forEach((by, its) -> {
            List<Observation> observations = its.stream()
                    .map(row -> new Observation(
                            row.specimen(),
                            row.text(group),
                            row.observed(value, event),
                            made.of(row::text),
                            own(row, value),
                            moves(row, value),
                            Optional.empty()))
                    .toList();
            parts.add(new Part(
                    by,
                    observations,
                    amount.map(column -> Amounts.of(
                            column,
                            observations,
                            its.stream().map(row -> row.amount(column)).toList()))));
        });
        Labelled labelled = Labelled.parse(value);
        Unit unit = labelled.unit().orElse(Unit.ONE);
        return new Values(
                value,
                labelled.name().replace('_', ' '),
                unit,
                scale(value, unit, event, parts),
                parts);
    }

    /** Returns what keeps the rows of a question out of one mean. */
    Apart apart(List<Words> candidates, String value, Asked asked) {
        List<Words> here =
                candidates.stream().filter(it -> headers.contains(it.name())).toList();
        Optional<String> event = asked.said(Term.EVENT).map(it -> header(it, "event"));
        Map<String, String> where = new LinkedHashMap<>();
        asked.where().forEach((column, level) -> where.put(header(column, "where"), level));
        List<Apart.Specimen> specimens = rows.stream()
                .filter(row -> where.entrySet().stream()
                        .allMatch(it -> row.text(it.getKey()).equals(it.getValue())))
                .map(row -> new Apart.Specimen(row.cells(), row.observed(value, event)))
                .toList();
        return Apart.among(here, specimens, asked);
    }

    private Scale scale(String value, Unit unit, Optional<String> event, List<Part> parts) {
        Scale scale = scale(
                value,
                unit,
                parts.stream()
                        .flatMap(part -> part.observations().stream())
                        .map(Observation::observed)
                        .toList());
        return scale != Scale.YES_NO && event.isPresent() ? Scale.TIME_TO_EVENT : scale;
    }

    /** Returns how two values of a column may be compared. */
    Scale scale(String value, Unit unit, List<Observed> values) {
        List<Observed> observed =
                values.stream().filter(it -> !(it instanceof Observed.Unknown)).toList();
        long words = observed.stream().filter(Observed.YesNo.class::isInstance).count();
        if (words > 0 && words < observed.size()) {
            throw Place.of(name).column(value).refuse("holds numbers and words; keep one kind");
        }
        return words > 0 ? Scale.YES_NO : unit.hasTrueZero() ? Scale.RATIO : Scale.INTERVAL;
    }

    /** Whether a column tells of another one's errors. */
    boolean belongsToAnother(String header) {
        return headers.stream()
                .anyMatch(it -> header.equals(it + OWN) || header.startsWith(it + MOVE));
    }

    /** Finds a column by its header, or by its header without the unit. */
    private String header(String wanted, String what) {
        List<String> whole = headers.stream()
                .filter(it -> Presets.key(it).equals(Presets.key(wanted)))
                .toList();
        List<String> found = whole.isEmpty()
                ? headers.stream()
                        .filter(it ->
                                Presets.key(Labelled.parse(it).name()).equals(Presets.key(wanted)))
                        .toList()
                : whole;
        if (found.isEmpty()) {
            throw Place.of(name)
                    .refuse("there is no column '%s' (%s) among %s%s"
                            .formatted(
                                    wanted,
                                    what,
                                    String.join(", ", headers),
                                    Spelling.hint(wanted, headers)));
        }
        if (found.size() > 1) {
            throw Place.of(name)
                    .refuse("'%s' may be any of the columns %s; write the whole header"
                            .formatted(wanted, String.join(", ", found)));
        }
        return found.get(0);
    }

    OptionalDouble own(ResultRow row, String value) {
        String column = value + OWN;
        return headers.contains(column) && !row.text(column).isEmpty()
                ? OptionalDouble.of(row.number(column))
                : OptionalDouble.empty();
    }

    Map<String, Double> moves(ResultRow row, String value) {
        Map<String, Double> moves = new LinkedHashMap<>();
        for (String header : headers) {
            if (header.startsWith(value + MOVE) && !row.text(header).isEmpty()) {
                moves.put(header.substring((value + MOVE).length()), row.number(header));
            }
        }
        return moves;
    }
}
