package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.decision.Observed;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.method.Description;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Unit;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.Presets;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * A test whose results were calculated elsewhere: each stands in the table, and is taken as it is.
 *
 * <p>A column with a unit is a result; one without is a result where a question asks for it; all
 * other columns tell specimens apart.
 */
public final class GivenResults {

    private static final String GROUP = "group";
    private static final String SAYS = "as the table says";

    private final Table table;
    private final KeptFile file;
    private final Corrections corrections;
    private final String groups;
    private final ResultTable results;
    private final Map<Column, Property> properties = new LinkedHashMap<>();

    private GivenResults(Table table, KeptFile file, TestSheet sheet, Corrections corrections) {
        this.table = table;
        this.file = file;
        this.corrections = corrections;
        this.groups = groups(table, sheet);
        this.results = ResultTable.of(table, corrections);
    }

    /**
     * Takes the results of a table.
     *
     * @param sheet may set {@code group} to the column that holds the groups, and nothing else
     * @param asked names of the properties that questions ask for
     * @throws InputException where a column or a value can't be read, or a specimen stands there
     *     twice
     */
    public static Calculated of(
            Table table,
            KeptFile file,
            TestSheet sheet,
            Corrections corrections,
            Set<String> asked) {
        requireNothingElse(sheet);
        GivenResults given = new GivenResults(table, file, sheet, corrections);
        given.findProperties(asked);
        List<JudgedSpecimen> specimens = new ArrayList<>();
        Map<String, ResultRow> codes = new HashMap<>();
        for (int i = 0; i < table.rows().size(); i++) {
            ResultRow row = given.results.rows().get(i);
            ResultRow before = codes.put(row.specimen(), row);
            if (before != null) {
                throw row.place()
                        .refuse("specimen '%s' stands in line %s already"
                                .formatted(row.specimen(), before.place().line().orElse(0)));
            }
            specimens.add(given.specimen(row, table.rows().get(i)));
        }
        return new Calculated(
                new MethodUsed(given.description(), sheet.set(), List.of()), specimens, List.of());
    }

    /** Returns the codes of a table's specimens. */
    public static List<String> codes(Table table) {
        return ResultTable.of(table, Corrections.NONE).rows().stream()
                .map(ResultRow::specimen)
                .toList();
    }

    private static void requireNothingElse(TestSheet sheet) {
        Set<String> set = new LinkedHashSet<>(sheet.set().keySet());
        set.remove(GROUP);
        set.addAll(sheet.resolution().keySet());
        set.addAll(sheet.calibration().keySet());
        set.addAll(sheet.zero().keySet());
        if (!set.isEmpty()) {
            throw new InputException(
                    "'%s' plays no part in results that were calculated elsewhere; they are taken"
                                    .formatted(set.iterator().next())
                            + " as they stand in the table");
        }
    }

    private static String groups(Table table, TestSheet sheet) {
        String wanted = sheet.set().getOrDefault(GROUP, GROUP);
        return table.column(wanted)
                .map(Column::header)
                .orElseThrow(() -> Place.of(table.name())
                        .refuse("there is no column '%s', which tells the groups apart"
                                .formatted(wanted)));
    }

    private void findProperties(Set<String> asked) {
        Map<String, Column> named = new HashMap<>();
        for (Column column : table.columns()) {
            String name = column.label().replace(' ', '_');
            if (isBeside(column) || column.unit().isEmpty() && !asked.contains(name)) {
                continue;
            }
            Column other = named.put(name, column);
            if (other != null) {
                throw Place.of(table.name())
                        .refuse("the columns '%s' and '%s' are the same thing; keep one"
                                .formatted(other.header(), column.header()));
            }
            Unit unit = column.unit().orElse(Unit.ONE);
            properties.put(
                    column,
                    new Property(
                            name,
                            column.label().replace('_', ' '),
                            unit,
                            scale(column, unit),
                            Property.Basis.NONE,
                            name));
        }
        if (properties.isEmpty()) {
            throw Place.of(table.name())
                    .refuse("has no column of results: write its unit into the header of each, such"
                            + " as strength_MPa");
        }
    }

    /** Whether a column names the specimen or its group, or belongs to another column. */
    private boolean isBeside(Column column) {
        return column.header().equals(groups)
                || Presets.key(column.header()).equals("specimen")
                || results.belongsToAnother(column.header());
    }

    private Scale scale(Column column, Unit unit) {
        List<Observed> values =
                results.rows().stream().map(row -> observed(row, column)).toList();
        Scale scale = results.scale(column.header(), unit, values);
        boolean ended = values.stream().anyMatch(Observed.AtLeast.class::isInstance);
        return ended && unit.measuresSameAs(Unit.of("s")) ? Scale.TIME_TO_EVENT : scale;
    }

    private Description description() {
        return new Description(
                TestSheet.OF_RESULTS,
                1,
                "Results calculated elsewhere",
                "The results stand in the table as they were given; how they were had from readings"
                        + " is not known here, and can't be checked.",
                List.of(),
                List.of(),
                List.of(),
                List.copyOf(properties.values()),
                List.of());
    }

    private JudgedSpecimen specimen(ResultRow row, Row asItCame) {
        Map<Property, Yield> yields = new LinkedHashMap<>();
        Map<Property, Budget> budgets = new LinkedHashMap<>();
        List<Reading> readings = new ArrayList<>();
        Map<String, String> factors = new LinkedHashMap<>();
        for (Column column : table.columns()) {
            Property property = properties.get(column);
            if (property != null) {
                Observed observed = observed(row, column);
                yields.put(property, gave(observed));
                if (observed instanceof Observed.Number number) {
                    budget(row, column.header(), number.value())
                            .ifPresent(it -> budgets.put(property, it));
                }
                corrections
                        .reading(
                                column.header(),
                                asItCame.cell(column.index()).strip(),
                                file,
                                asItCame.line())
                        .ifPresent(readings::add);
            } else if (!isBeside(column)) {
                factors.put(column.header(), row.text(column.header()));
            }
        }
        String code = row.specimen();
        String group = row.text(groups);
        if (group.isEmpty()) {
            throw row.place().column(groups).refuse("is empty: every specimen belongs to a group");
        }
        return new JudgedSpecimen(
                code,
                TestSheet.OF_RESULTS,
                group,
                factors,
                readings,
                new Result(code, group, yields, budgets, Map.of(), List.of(), Map.of()),
                Optional.empty(),
                Optional.empty());
    }

    private static Observed observed(ResultRow row, Column column) {
        return row.observed(column.header(), Optional.empty());
    }

    private static Yield gave(Observed observed) {
        if (observed instanceof Observed.Number number) {
            return new Yield.Value(number.value());
        } else if (observed instanceof Observed.AtLeast bound) {
            return new Yield.AtLeast(bound.bound(), SAYS);
        } else if (observed instanceof Observed.Below bound) {
            return new Yield.Below(bound.bound(), SAYS);
        } else if (observed instanceof Observed.Between between) {
            return new Yield.Between(between.from(), between.to(), SAYS);
        } else if (observed instanceof Observed.YesNo word) {
            return new Yield.Word(word.yes() ? "yes" : "no");
        } else if (observed instanceof Observed.Unknown unknown) {
            return new Yield.Missing(unknown.reason());
        }
        throw new IllegalStateException(observed + " is no result");
    }

    /** What is known of a value's errors: its own, and how far each shared one moves it. */
    private Optional<Budget> budget(ResultRow row, String header, double value) {
        Map<Source, Double> shifts = new LinkedHashMap<>();
        results.own(row, header)
                .ifPresent(u -> shifts.put(
                        Source.own(row.specimen() + " " + header + " own", Shape.NORMAL, u), u));
        results.moves(row, header)
                .forEach((name, move) -> shifts.put(
                        Source.shared(name.replace('_', ' '), Shape.NORMAL, Math.abs(move)), move));
        return shifts.isEmpty() ? Optional.empty() : Optional.of(new Budget(value, shifts));
    }
}
