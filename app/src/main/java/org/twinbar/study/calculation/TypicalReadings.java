package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.resolving.Typical;
import org.twinbar.statistics.Summary;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.CurveFile;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.uncertainty.Budget;

/**
 * Readings that stand for those that will come: a table of specimens, of which the one in the
 * middle of the untreated group is taken.
 */
final class TypicalReadings {

    /** What an untreated group is usually called; the last group of the table stands in for it. */
    private static final Set<String> UNTREATED =
            Set.of("plain", "control", "untreated", "uncoated", "raw", "none", "as printed");

    /** Fewest specimens that tell what is the same for all from what happens to be. */
    private static final int FEWEST_TO_TELL = 3;

    private final TestMethod method;
    private final Presets presets;
    private final List<Readings> all = new ArrayList<>();
    private final Map<Readings, Result> results = new LinkedHashMap<>();

    private TypicalReadings(TestMethod method, Presets presets) {
        this.method = method;
        this.presets = presets;
    }

    /**
     * Reads a table of specimens; what is set for all takes the place of what stands there.
     *
     * @throws InputException where it can't be read as the method needs it
     */
    static TypicalReadings of(TestMethod method, TestSheet sheet, Table table, Handed curves) {
        Description description = method.description();
        Presets presets = Presets.of(description, sheet.set());
        Columns columns = Columns.of(table, description, presets);
        TypicalReadings found = new TypicalReadings(method, presets);
        for (Row each : table.rows()) {
            SpecimenRow row = new SpecimenRow(table, columns, each, Corrections.NONE);
            Readings.Builder builder = Readings.of(row.code(), row.group(), Bench.usual());
            row.into(builder);
            if (!description.channels().isEmpty()) {
                row.curve().ifPresent(name -> {
                    Place from = row.curvePlace();
                    CurveFile.read(curves.find(name, from), ReadAs.found(), description.channels())
                            .channels()
                            .forEach(builder::channel);
                });
            }
            presets.into(builder);
            found.add(builder.build());
        }
        return found;
    }

    private void add(Readings readings) {
        all.add(readings);
        results.put(readings, Result.of(method, readings));
    }

    /**
     * Returns the property that is asked for, else the first that is a number which can be compared
     * by ratio or difference.
     *
     * @throws InputException where there is none
     */
    Property property(Optional<String> name) {
        Description description = method.description();
        if (name.isPresent()) {
            List<String> names =
                    description.properties().stream().map(Property::name).toList();
            Property asked = description
                    .property(name.get())
                    .orElseThrow(() -> new InputException("%s yields no '%s' among %s%s"
                            .formatted(
                                    description.name(),
                                    name.get(),
                                    String.join(", ", names),
                                    Spelling.hint(name.get(), names))));
            if (!isNumber(asked)) {
                throw new InputException("%s is no number of the typical readings"
                        .formatted(asked.name().replace('_', ' ')));
            }
            return asked;
        }
        return description.properties().stream()
                .filter(this::isNumber)
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "the typical readings of %s give no number that could be compared"
                                .formatted(description.name())));
    }

    private boolean isNumber(Property property) {
        boolean compared = property.scale() == Property.Scale.RATIO
                || property.scale() == Property.Scale.INTERVAL;
        return compared
                && results.values().stream()
                        .anyMatch(result -> result.budgets().containsKey(property));
    }

    /** Returns the untreated specimen in the middle, with what is the same for all. */
    Typical typical(Property property) {
        List<String> groups = all.stream().map(Readings::group).distinct().toList();
        String control = groups.stream()
                .filter(group -> UNTREATED.contains(group.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElse(groups.get(groups.size() - 1));
        String treated = groups.stream()
                .filter(group -> !group.equals(control))
                .findFirst()
                .orElse(control + ", treated");
        List<Readings> middle = all.stream()
                .filter(readings -> readings.group().equals(control))
                .filter(readings -> value(readings, property).isPresent())
                .sorted(Comparator.comparingDouble(
                        readings -> value(readings, property).orElseThrow()))
                .toList();
        if (middle.isEmpty()) {
            throw new InputException("no specimen of '%s' has a number of %s"
                    .formatted(control, property.name().replace('_', ' ')));
        }
        Map<Named, Double> spread = spread();
        Set<Named> same = new LinkedHashSet<>(presets.numbers().keySet());
        if (all.size() >= FEWEST_TO_TELL) {
            spread.forEach((named, share) -> {
                if (share == 0) {
                    same.add(named);
                }
            });
        }
        return new Typical(method, middle.get(middle.size() / 2), control, treated, same, spread);
    }

    private OptionalDouble value(Readings readings, Property property) {
        Result result = results.get(readings);
        Budget budget = result == null ? null : result.budgets().get(property);
        return budget == null ? OptionalDouble.empty() : OptionalDouble.of(budget.value());
    }

    /** Standard deviation over all specimens as a share of their mean, for each number. */
    private Map<Named, Double> spread() {
        Map<Named, Double> spread = new LinkedHashMap<>();
        for (Input input : method.description().inputs()) {
            double[] means = all.stream()
                    .filter(readings -> readings.has(input))
                    .mapToDouble(readings -> mean(readings.each(input)))
                    .toArray();
            if (means.length > 1) {
                Summary summary = Summary.of(means);
                spread.put(
                        input, summary.mean() == 0 ? 0 : Math.abs(summary.sd() / summary.mean()));
            }
        }
        return spread;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /**
     * Returns how one result scatters within its group, pooled over the groups: in the property's
     * unit, or as a share of each group's mean where it is compared by ratio.
     */
    OptionalDouble scatter(Property property) {
        Map<String, List<Double>> groups = new LinkedHashMap<>();
        for (Readings readings : all) {
            value(readings, property)
                    .ifPresent(value -> groups.computeIfAbsent(
                                    readings.group(), it -> new ArrayList<>())
                            .add(value));
        }
        double squares = 0;
        int df = 0;
        for (List<Double> values : groups.values()) {
            if (values.size() > 1) {
                Summary summary = Summary.of(
                        values.stream().mapToDouble(Double::doubleValue).toArray());
                double unit = property.scale() == Property.Scale.RATIO ? summary.mean() : 1;
                squares += (values.size() - 1) * summary.variance() / (unit * unit);
                df += values.size() - 1;
            }
        }
        return df == 0 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(squares / df));
    }

    /** Returns what the typical specimen has readings of. */
    List<Named> read() {
        return method.description().asked().stream()
                .filter(named -> all.stream().anyMatch(readings -> readings.has(named)))
                .toList();
    }
}
