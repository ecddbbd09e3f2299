package org.twinbar.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.Table;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.TestMethod;
import org.twinbar.study.file.TestSheet;

/**
 * What a form offers for a table that was handed in.
 *
 * @param subjects what may be compared: columns of the table, and what methods make of readings
 * @param controls groups that may be the untreated one, by their column
 * @param parts columns that may part the table
 */
public record Choices(List<Several> subjects, List<Several> controls, List<String> parts) {

    /** Between value and column in the fields that name both; no header holds it. */
    static final String SEPARATOR = "\t";

    /** More levels than this are codes or numbers, not groups. */
    private static final int MOST_LEVELS = 12;

    private static final Set<String> UNTREATED =
            Set.of("plain", "control", "untreated", "uncoated", "none", "reference");

    /** Choices under one heading. */
    public record Several(String heading, List<Choice> choices) {
        public Several {
            choices = List.copyOf(choices);
        }
    }

    /** One of them: what is sent, and what people read. */
    public record Choice(String value, String words) {}

    public Choices {
        subjects = List.copyOf(subjects);
        controls = List.copyOf(controls);
        parts = List.copyOf(parts);
    }

    static Choices of(Table table, Methods methods) {
        List<Several> subjects = new ArrayList<>();
        methods.all().stream()
                .map(TestMethod::description)
                .filter(description -> fits(table, description))
                // What needs nothing more stands first, and of these what uses most of the table.
                .sorted(Comparator.comparing((Description it) -> !suffices(table, it))
                        .thenComparing(it -> -used(table, it)))
                .forEach(description -> subjects.add(new Several(
                        description.title() + ", calculated from the readings",
                        description.properties().stream()
                                .map(it -> choice(description, it))
                                .toList())));
        List<Choice> columns = new ArrayList<>();
        List<Several> controls = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (Column column : table.columns()) {
            Set<String> levels = levels(table, column);
            boolean numbers =
                    column.unit().isPresent() || levels.stream().allMatch(Choices::isNumber);
            if (!levels.isEmpty() && (numbers || yesNo(levels))) {
                columns.add(new Choice(
                        TestSheet.OF_RESULTS + SEPARATOR + column.label().replace(' ', '_'),
                        words(column)));
            } else if (levels.size() >= 2 && levels.size() <= MOST_LEVELS) {
                controls.add(new Several(
                        column.header(),
                        levels.stream()
                                .map(it -> new Choice(column.header() + SEPARATOR + it, it))
                                .toList()));
                parts.add(column.header());
            }
        }
        if (!columns.isEmpty()) {
            subjects.add(new Several("Results that stand in the table", columns));
        }
        return new Choices(subjects, controls, parts);
    }

    /** Whether the table holds anything that the method asks for. */
    private static boolean fits(Table table, Description description) {
        return table.column("specimen").isPresent()
                && description.asked().stream().anyMatch(named -> holds(table, named));
    }

    /** Whether the table holds all that the method can't do without. */
    private static boolean suffices(Table table, Description description) {
        return description.asks().stream()
                .filter(ask -> ask.need() == Ask.Need.REQUIRED)
                .allMatch(ask -> ask.ways().stream()
                        .anyMatch(way -> way.stream().allMatch(named -> holds(table, named))));
    }

    private static long used(Table table, Description description) {
        return description.asked().stream().filter(named -> holds(table, named)).count();
    }

    private static boolean holds(Table table, Named named) {
        return named instanceof Channel
                ? table.column("curve_file").isPresent()
                : table.column(named.name()).isPresent()
                        || table.columns().stream().anyMatch(it -> it.name().equals(named.name()));
    }

    private static Choice choice(Description description, Property property) {
        String unit = property.unit().symbol();
        return new Choice(
                description.name() + SEPARATOR + property.name(),
                property.label() + (unit.isEmpty() ? "" : " in " + unit));
    }

    /** Returns what stands in a column, once each, in the order of the rows. */
    static Set<String> levels(Table table, Column column) {
        Set<String> levels = new LinkedHashSet<>();
        table.rows().forEach(row -> {
            if (column.index() < row.cells().size()) {
                levels.add(row.cells().get(column.index()).strip());
            }
        });
        levels.remove("");
        return levels;
    }

    private static boolean isNumber(String text) {
        return text.matches("[-+]?[\\d.,]*\\d[\\d.,]*([eE][-+]?\\d+)?");
    }

    private static boolean yesNo(Set<String> levels) {
        return levels.stream()
                .map(it -> it.toLowerCase(Locale.ROOT))
                .allMatch(Set.of("yes", "no")::contains);
    }

    private static String words(Column column) {
        return column.unit()
                .map(it -> it.symbol().isEmpty()
                        ? column.label()
                        : column.label() + " in " + it.symbol())
                .orElse(column.label())
                .replace('_', ' ');
    }

    /** Returns a form with what is most likely meant. */
    Form likely() {
        Form form = Form.EMPTY.with("expect", "higher");
        if (!subjects.isEmpty()) {
            form = form.with("subject", subjects.get(0).choices().get(0).value());
        }
        for (Several group : controls) {
            for (Choice choice : group.choices()) {
                if (UNTREATED.contains(choice.words().toLowerCase(Locale.ROOT))) {
                    return form.with("control", choice.value());
                }
            }
        }
        return form;
    }

    /** Returns the words of what may be compared. */
    String words(String subject) {
        return subjects.stream()
                .flatMap(several -> several.choices().stream())
                .filter(choice -> choice.value().equals(subject))
                .map(choice -> choice.words().replaceAll(" in \\S+$", ""))
                .findFirst()
                .orElseThrow(() -> Refusal.badRequest("Choose what is to be compared."));
    }
}
