package org.twinbar.report.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.planning.Placed;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;

/**
 * The specimens that go on paper.
 *
 * @param study whose they are, as it is read
 * @param about what must be known of them, such as when their plan was sealed
 * @param all in the order of testing, as far as one is known
 */
public record Pieces(String study, List<String> about, List<Piece> all) {

    private static final List<String> ORDER = List.of("testorder", "order");
    private static final List<String> RUN = List.of("printrun", "run");
    private static final List<String> POSITION = List.of("position", "place");
    private static final List<String> LOAD = List.of("ovenload", "load");

    public Pieces {
        about = List.copyOf(about);
        all = List.copyOf(all);
    }

    /**
     * Reads a table with a column {@code specimen}, and where it matters {@code test_order},
     * {@code print_run}, {@code position}, {@code mix}, {@code oven_load}, {@code kind},
     * {@code shape}, {@code orientation}, {@code group}.
     *
     * @throws InputException where there is no such column, a code is blank or stands there twice,
     *     or an order is no number
     */
    public static Pieces of(Table table, String study) {
        Listed listed = new Listed(table);
        Column specimen = listed.column(List.of("specimen")).orElseThrow(() -> noSpecimens(table));
        if (table.rows().isEmpty()) {
            throw Place.of(table.name()).refuse("there is no row below the header");
        }
        Map<Piece, Integer> orders = new LinkedHashMap<>();
        Set<String> seen = new HashSet<>();
        for (Row row : table.rows()) {
            String code = row.cell(specimen.index());
            Place at = Place.of(table.name()).line(row.line()).column(specimen.header());
            if (code.isBlank()) {
                throw at.refuse("the specimen has no code");
            }
            if (!seen.add(code)) {
                throw at.value(code).refuseValue("stands there twice");
            }
            orders.put(listed.piece(code, row), listed.order(row).orElse(orders.size() + 1));
        }
        List<Piece> all = new ArrayList<>(orders.keySet());
        all.sort(Comparator.comparing(orders::get));
        return new Pieces(study, List.of(), all);
    }

    /**
     * Returns the specimens of a plan.
     *
     * @param making as whoever will read the sheet may see it: with groups for whoever treats
     */
    public static Pieces of(Making making, String study) {
        List<String> about = new ArrayList<>();
        making.seal()
                .ifPresent(seal -> about.add("The plan was sealed on %s; its SHA-256 begins %s."
                        .formatted(seal.when().toLocalDate(), seal.sha256().substring(0, 16))));
        return new Pieces(
                study, about, making.made().stream().map(Pieces::piece).toList());
    }

    /**
     * Returns those that a method tests; where nobody says which test a specimen is for, it is for
     * this one.
     *
     * @throws InputException where there are none
     */
    public Pieces testedBy(String method) {
        List<Piece> those = all.stream()
                .filter(it -> it.test().isEmpty() || it.test().equalsIgnoreCase(method))
                .toList();
        if (those.isEmpty()) {
            throw new InputException("no specimen is for the %s test, but for %s"
                    .formatted(
                            method,
                            all.stream()
                                    .map(Piece::test)
                                    .distinct()
                                    .collect(Collectors.joining(", "))));
        }
        return new Pieces(study, about, those);
    }

    /** Returns those that may be treated: pilots never are. */
    Pieces withoutPilots() {
        return new Pieces(study, about, all.stream().filter(it -> !it.isPilot()).toList());
    }

    /** Returns them apart by what they have in common, in the order in which that first comes. */
    Map<String, List<Piece>> by(Function<Piece, String> common) {
        return all.stream()
                .collect(Collectors.groupingBy(common, LinkedHashMap::new, Collectors.toList()));
    }

    private static Piece piece(Registered one) {
        Placed placed = one.placed();
        return new Piece(
                one.code(),
                one.series().name() + (placed.isPilot() ? ", pilots (never compared)" : ""),
                one.series().method(),
                one.series().shape(),
                one.series().orientation().word(),
                Integer.toString(placed.run()),
                Integer.toString(placed.position()),
                text(placed.mix()),
                text(placed.load()),
                one.group().map(it -> it.name()),
                one.group().map(it -> it.treatment()).orElse(""));
    }

    private static String text(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static RuntimeException noSpecimens(Table table) {
        List<String> headers = table.columns().stream().map(Column::header).toList();
        return Place.of(table.name())
                .refuse("there is no column 'specimen' among %s%s"
                        .formatted(String.join(", ", headers), Spelling.hint("specimen", headers)));
    }

    /** The columns of a table that say where a specimen belongs. */
    private record Listed(Table table) {

        Optional<Column> column(List<String> keys) {
            return table.columns().stream()
                    .filter(it -> keys.contains(Asked.key(it.header())))
                    .findFirst();
        }

        Piece piece(String code, Row row) {
            String group = cell(row, List.of("group"));
            return new Piece(
                    code,
                    cell(row, List.of("kind")),
                    cell(row, List.of("method", "test")),
                    cell(row, List.of("shape")),
                    cell(row, List.of("orientation")),
                    cell(row, RUN),
                    cell(row, POSITION),
                    cell(row, List.of("mix")),
                    cell(row, LOAD),
                    group.isEmpty() ? Optional.empty() : Optional.of(group),
                    cell(row, List.of("treatment")));
        }

        OptionalInt order(Row row) {
            Optional<Column> column = column(ORDER);
            if (column.isEmpty() || row.cell(column.get().index()).isBlank()) {
                return OptionalInt.empty();
            }
            String text = row.cell(column.get().index()).strip();
            if (!text.matches("[1-9]\\d{0,5}")) {
                throw Place.of(table.name())
                        .line(row.line())
                        .column(column.get().header())
                        .value(text)
                        .refuseValue("is no place in an order, such as 7");
            }
            return OptionalInt.of(Integer.parseInt(text));
        }

        private String cell(Row row, List<String> keys) {
            return column(keys).map(it -> row.cell(it.index()).strip()).orElse("");
        }
    }
}
