package org.twinbar.study;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Table;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.planning.PlannedGroup;
import org.twinbar.quantity.Unit;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Ordered;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.OnPicture;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.SpecimenRow;

/**
 * A test as it is typed: what is asked of each specimen, and what stands there by now.
 *
 * @param sameForAll what is known already, being the same for all specimens
 * @param fields in the order of the table's columns
 * @param specimens in the order of the table
 */
public record TypedTest(
        Description description,
        Set<Named> sameForAll,
        List<Field> fields,
        List<Specimen> specimens) {

    public TypedTest {
        sameForAll = Set.copyOf(sameForAll);
        fields = List.copyOf(fields);
        specimens = List.copyOf(specimens);
    }

    /**
     * A column whose cells are typed.
     *
     * @param named an {@link Input} or {@link org.twinbar.method.Words}
     * @param unit of what is typed without one
     * @param repeat which of several readings of one thing it is
     */
    public record Field(Named named, String header, Unit unit, OptionalInt repeat) {

        /** Returns what people read, such as {@code Width, reading 2}. */
        public String label() {
            return repeat.isPresent()
                    ? "%s, reading %s".formatted(named.label(), repeat.getAsInt())
                    : named.label();
        }
    }

    /**
     * What stands in a cell.
     *
     * @param text what counts now; empty where nothing was read
     * @param entry the last entry on it, which a form sends back to say what it saw
     * @param when that was made, and {@code who} made it; nothing where the table came so
     * @param picture how it was had, where that was from a picture
     */
    public record Cell(
            String text,
            Optional<UUID> entry,
            Optional<ZonedDateTime> when,
            Optional<String> who,
            Optional<OnPicture> picture) {

        public boolean isBlank() {
            return text.isBlank();
        }
    }

    /**
     * A specimen.
     *
     * @param group empty where the table names none, or the plan keeps it from whoever reads
     * @param number its place in the order, from 1
     * @param line of the table
     * @param cells by the header of their field
     * @param answered whether all is known without which the method yields nothing; of a method
     *     that can do without each, whether anything is
     */
    public record Specimen(
            String code,
            int number,
            int line,
            String group,
            Map<String, String> factors,
            Map<String, Cell> cells,
            boolean answered,
            Optional<LeftOut> leftOut,
            List<Photo> photos) {

        /** Returns the cell of a field; every field of the test has one. */
        public Cell cell(Field field) {
            Cell cell = cells.get(field.header());
            if (cell == null) {
                throw new IllegalStateException(
                        "%s has no cell '%s'".formatted(code, field.header()));
            }
            return cell;
        }

        public Specimen {
            factors = Ordered.copy(factors);
            cells = Ordered.copy(cells);
            photos = List.copyOf(photos);
        }

        /** Whether nothing must be typed any more. */
        public boolean isDone() {
            return leftOut.isPresent() || answered;
        }

        public boolean isBegun() {
            return cells.values().stream().anyMatch(cell -> !cell.isBlank());
        }
    }

    static TypedTest of(State state, State.KeptTest test, Description description, Table table) {
        Presets presets = Presets.of(description, test.sheet().set());
        Columns columns = Columns.of(table, description, presets);
        List<Field> fields = fields(table, columns);
        Corrections corrections = state.corrections(test.id());
        Making making = state.making().making(MakingState.For.WHOEVER_READS, Set.of());
        List<Specimen> specimens = new ArrayList<>();
        for (Row row : table.rows()) {
            SpecimenRow specimen = new SpecimenRow(table, columns, row, corrections);
            String code = specimen.code();
            Map<String, Cell> cells = new HashMap<>();
            for (Field field : fields) {
                cells.put(field.header(), cell(state, test, specimen, field.header()));
            }
            String group = columns.group()
                    .map(it -> specimen.group())
                    .or(() -> making.specimen(code)
                            .filter(it -> it.series().method().equals(description.name()))
                            .flatMap(Registered::group)
                            .map(PlannedGroup::name))
                    .orElse("");
            specimens.add(new Specimen(
                    code,
                    specimens.size() + 1,
                    specimen.line(),
                    group,
                    specimen.factors(),
                    cells,
                    isAnswered(description, presets, fields, cells, specimen.curve()),
                    state.leftOut(test.id(), code),
                    state.photos(new State.OfSpecimen(test.id(), code))));
        }
        return new TypedTest(description, presets.names(), fields, specimens);
    }

    private static boolean isAnswered(
            Description description,
            Presets presets,
            List<Field> fields,
            Map<String, Cell> cells,
            Optional<String> curve) {
        Predicate<Ask> known = ask -> ask.ways().stream()
                .anyMatch(way -> way.stream()
                        .allMatch(named -> named instanceof Channel
                                ? curve.isPresent()
                                : presets.has(named) || isRead(named, fields, cells)));
        List<Ask> needed = description.asks().stream()
                .filter(ask -> ask.need() == Ask.Need.REQUIRED)
                .toList();
        return needed.isEmpty()
                ? description.asks().stream().anyMatch(known)
                : needed.stream().allMatch(known);
    }

    private static boolean isRead(Named named, List<Field> fields, Map<String, Cell> cells) {
        List<Field> readings =
                fields.stream().filter(field -> field.named().equals(named)).toList();
        return !readings.isEmpty()
                && readings.stream().noneMatch(field -> {
                    Cell cell = cells.get(field.header());
                    return cell == null || cell.isBlank();
                });
    }

    private static List<Field> fields(Table table, Columns columns) {
        Map<Column, Named> named = new HashMap<>();
        columns.readings()
                .forEach((name, group) -> group.forEach(column -> named.put(column, name)));
        List<Field> fields = new ArrayList<>();
        for (Column column : table.columns()) {
            Named name = named.get(column);
            if (name != null) {
                Unit unit =
                        column.unit().orElse(name instanceof Input input ? input.unit() : Unit.ONE);
                fields.add(new Field(name, column.header(), unit, column.repeat()));
            }
        }
        return fields;
    }

    private static Cell cell(
            State state, State.KeptTest test, SpecimenRow specimen, String header) {
        Optional<State.Spoken> last = state.lastSpoken(
                new State.CellOf(test.id(), new Corrections.Cell(specimen.line(), header)));
        return new Cell(
                specimen.text(header),
                last.map(State.Spoken::entry),
                last.map(State.Spoken::when),
                last.map(State.Spoken::who),
                last.flatMap(State.Spoken::picture));
    }

    /** Returns what may be typed into a field without being asked about, where that is known. */
    public Optional<Limits> usual(Field field) {
        return new TypedCheck(this, field, "").usual();
    }

    public Optional<Field> field(String header) {
        return fields.stream().filter(it -> it.header().equals(header)).findFirst();
    }

    public Optional<Specimen> specimen(String code) {
        return specimens.stream().filter(it -> it.code().equals(code)).findFirst();
    }

    /** Returns how far typing is, such as {@code 4 of 12 done, 8 to go}. */
    public String progress() {
        long done = specimens.stream().filter(Specimen::isDone).count();
        long left = specimens.size() - done;
        return left == 0
                ? "all %s done".formatted(specimens.size())
                : "%s of %s done, %s to go".formatted(done, specimens.size(), left);
    }
}
