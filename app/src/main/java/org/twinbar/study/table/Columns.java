package org.twinbar.study.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Finding;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Words;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;

/** Which column of a table of specimens is what to a method. */
public final class Columns {

    static final Finding.Kind UNIT_ASSUMED = Finding.Kind.note(
            "unit-assumed",
            "The column '%s' names no unit and was read in %s; write the unit into the header.");
    static final Finding.Kind NEARLY_A_READING = Finding.Kind.warning(
            "nearly-a-reading",
            "The column '%s' was taken as a factor, not as a reading; if it was meant to be '%s',"
                    + " mend its header.");

    private static final String SPECIMEN = "specimen";
    private static final String GROUP = "group";
    private static final String CURVE = "curvefile";

    /** The header under which a table names a specimen's curve. */
    static final String CURVE_HEADER = "curve_file";

    private final Table table;
    private final Description description;
    private final Map<Named, List<Column>> readings = new LinkedHashMap<>();
    private final Map<Named, Column> own = new LinkedHashMap<>();
    private final List<Column> factors = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private @Nullable Column specimen;
    private @Nullable Column group;
    private @Nullable Column curve;

    private Columns(Table table, Description description) {
        this.table = table;
        this.description = description;
    }

    /**
     * Finds what each column is.
     *
     * @param presets what needs no column
     * @throws InputException where a column that is needed is missing, one stands there twice, or
     *     its unit measures something else
     */
    public static Columns of(Table table, Description description, Presets presets) {
        Columns columns = new Columns(table, description);
        table.columns().forEach(columns::place);
        columns.requireSpecimens();
        columns.readings.forEach(columns::requireUnits);
        columns.requireAnswers(presets);
        columns.lookForMisspelt();
        return columns;
    }

    public static boolean isCurve(Column column) {
        return Presets.key(column.header()).equals(CURVE);
    }

    /** Returns the codes of a table's specimens. */
    public static List<String> codes(Table table) {
        return table.columns().stream()
                .filter(column -> Presets.key(column.header()).equals(SPECIMEN))
                .flatMap(column -> table.rows().stream()
                        .filter(row -> column.index() < row.cells().size())
                        .map(row -> row.cells().get(column.index()).strip()))
                .toList();
    }

    private void place(Column column) {
        switch (Presets.key(column.header())) {
            case SPECIMEN -> specimen = once(specimen, column);
            case GROUP -> group = once(group, column);
            case CURVE -> curve = once(curve, column);
            default -> {
                Optional<Named> named = named(column.label()).or(() -> named(column.name()));
                Optional<Named> ownOf = column.label().endsWith("_u")
                        ? named(column.label().substring(0, column.label().length() - 2))
                        : Optional.empty();
                if (named.isPresent()) {
                    readings.computeIfAbsent(named.get(), it -> new ArrayList<>())
                            .add(column);
                } else if (ownOf.isPresent()) {
                    own.put(ownOf.get(), once(own.get(ownOf.get()), column));
                } else {
                    factors.add(column);
                }
            }
        }
    }

    private Optional<Named> named(String name) {
        return description.asked().stream()
                .filter(named -> named instanceof Input || named instanceof Words)
                .filter(named -> Presets.key(named.name()).equals(Presets.key(name)))
                .findFirst();
    }

    private Column once(@Nullable Column before, Column column) {
        if (before != null) {
            throw repeated(before, column);
        }
        return column;
    }

    private InputException repeated(Column before, Column column) {
        return Place.of(table.name())
                .refuse("the columns '%s' and '%s' are the same thing; keep one"
                        .formatted(before.header(), column.header()));
    }

    private void requireSpecimens() {
        if (specimen == null) {
            List<String> headers = table.columns().stream().map(Column::header).toList();
            throw Place.of(table.name())
                    .refuse("there is no column 'specimen' among %s%s"
                            .formatted(
                                    String.join(", ", headers), Spelling.hint(SPECIMEN, headers)));
        }
        if (table.rows().isEmpty()) {
            throw Place.of(table.name()).refuse("there is no row below the header");
        }
        for (int i = 0; i < factors.size(); i++) {
            for (Column other : factors.subList(0, i)) {
                if (Presets.key(other.header())
                        .equals(Presets.key(factors.get(i).header()))) {
                    throw repeated(other, factors.get(i));
                }
            }
        }
    }

    private void requireUnits(Named named, List<Column> columns) {
        for (int i = 0; i < columns.size(); i++) {
            for (Column other : columns.subList(0, i)) {
                boolean sameReading = other.repeat().equals(columns.get(i).repeat());
                if (sameReading || named instanceof Words) {
                    throw repeated(other, columns.get(i));
                }
            }
        }
        if (named instanceof Input input) {
            columns.forEach(column -> conversion(input, column));
            Column ownColumn = own.get(named);
            if (ownColumn != null) {
                conversion(input, ownColumn);
            }
        }
    }

    private Unit.Conversion conversion(Input input, Column column) {
        Unit unit = column.unit().orElse(input.unit());
        if (column.unit().isEmpty() && !input.unit().symbol().isEmpty()) {
            findings.add(UNIT_ASSUMED.with(column.header(), input.unit().symbol()));
        }
        try {
            return unit.to(input.unit());
        } catch (QuantityException e) {
            throw Place.of(table.name()).column(column.header()).refuse(e.getMessage());
        }
    }

    private void requireAnswers(Presets presets) {
        for (Ask ask : description.asks()) {
            boolean answered = ask.ways().stream()
                    .anyMatch(way -> way.stream().allMatch(named -> isKnown(named, presets)));
            if (ask.need() == Ask.Need.REQUIRED && !answered) {
                throw Place.of(table.name())
                        .refuse("%s asks '%s' and needs %s%s"
                                .formatted(
                                        description.name(), ask.question(), ways(ask), guess(ask)));
            }
        }
    }

    private boolean isKnown(Named named, Presets presets) {
        return named instanceof Channel
                ? curve != null
                : readings.containsKey(named) || presets.has(named);
    }

    private static String ways(Ask ask) {
        return ask.ways().stream()
                .map(way -> way.stream()
                        .map(named -> named instanceof Channel
                                ? "curve_file with " + named.column()
                                : named.column())
                        .collect(Collectors.joining(" and ")))
                .collect(Collectors.joining(", or "));
    }

    private String guess(Ask ask) {
        List<String> wanted = ask.ways().stream()
                .flatMap(List::stream)
                .map(named -> named instanceof Channel ? "curve_file" : named.column())
                .toList();
        return factors.stream()
                .flatMap(column -> Spelling.nearest(column.header(), wanted).stream()
                        .map(name ->
                                "; is '%s' meant to be '%s'?".formatted(column.header(), name)))
                .findFirst()
                .orElse("");
    }

    private void lookForMisspelt() {
        List<String> names = description.asked().stream()
                .filter(named -> !(named instanceof Channel) && !readings.containsKey(named))
                .map(Named::column)
                .toList();
        for (Column column : factors) {
            Spelling.nearest(column.header(), names)
                    .ifPresent(name -> findings.add(NEARLY_A_READING.with(column.header(), name)));
        }
    }

    Column specimen() {
        if (specimen == null) {
            throw new IllegalStateException(
                    "columns are handed out only with a specimen among them");
        }
        return specimen;
    }

    public Optional<Column> group() {
        return Optional.ofNullable(group);
    }

    Optional<Column> curve() {
        return Optional.ofNullable(curve);
    }

    /** Returns the columns of each reading, repeats in their order in the table. */
    public Map<Named, List<Column>> readings() {
        return readings;
    }

    Optional<Column> ownUncertainty(Named named) {
        return Optional.ofNullable(own.get(named));
    }

    /** Returns every column that is nothing else. */
    List<Column> factors() {
        return factors;
    }

    public List<Finding> findings() {
        return findings.stream().distinct().toList();
    }

    Unit.Conversion conversionOf(Input input, Column column) {
        return column.unit().orElse(input.unit()).to(input.unit());
    }
}
