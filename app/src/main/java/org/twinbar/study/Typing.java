package org.twinbar.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.store.Digest;
import org.twinbar.store.Entry;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.calculation.Calculation;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/**
 * Readings that are typed by hand, each cell by itself, at the desk or on a phone at the rig.
 *
 * <p>A form says which entry of the cell it saw, so that two windows don't overwrite each other,
 * and each act has an identity made by whoever types, so that one that waited on a phone and is
 * sent twice is written once.
 */
public final class Typing {

    static final String UNDO = "undo";

    private static final String TYPED_AGAIN = "typed again after it was taken away";

    /** A phone's clock may run ahead of ours; beyond this it is wrong, and ours is taken. */
    private static final Duration CLOCKS_APART = Duration.ofMinutes(5);

    private final Store store;
    private final Methods methods;
    private final Clock clock;
    private final Shelf shelf;
    private final Judgements judgements;
    private final Remembered<List<Object>, Stamp, At> tests =
            new Remembered<>(Remembered.shareOfMemory(16), At::weight);

    Typing(Store store, Methods methods, Clock clock, Shelf shelf, Judgements judgements) {
        this.store = store;
        this.methods = methods;
        this.clock = clock;
        this.shelf = shelf;
        this.judgements = judgements;
    }

    /** Returns the entry that an act on a cell makes, for a form that has not seen it yet. */
    public static UUID entryOf(UUID act) {
        return new Act(act, "anybody").entry(0);
    }

    /**
     * Returns a test as it is typed.
     *
     * @throws InputException where the study has no such test
     */
    public TypedTest test(StudyName study, String method) {
        return at(study, method).typed();
    }

    /**
     * Returns the methods of a study's tests, in the order in which the tests were added; not of
     * those that hold results, of which nothing is read.
     */
    public List<String> tests(StudyName study) {
        return judgements.state(study.id()).tests().stream()
                .filter(test -> !test.sheet().isOfResults())
                .map(test -> test.sheet().method())
                .toList();
    }

    /** What a use case needs to know of a test. */
    private record At(State state, State.KeptTest test, TypedTest typed, Table table) {

        long weight() {
            return 500L * typed.specimens().size() * (1 + typed.fields().size());
        }
    }

    private At at(StudyName study, String method) {
        return tests.get(
                List.of(study.id(), method),
                judgements.stamp(study.id()),
                () -> at(judgements.state(study.id()), method));
    }

    private At at(State state, String method) {
        State.KeptTest test = state.test(method)
                .orElseThrow(
                        () -> new InputException("the study has no %s test".formatted(method)));
        byte[] bytes = store.files().read(new Digest(test.table().sha256()));
        Description description = OwnMethods.named(methods, method).description();
        Table table = TableFile.read(Upload.of(test.table().name(), bytes));
        return new At(state, test, TypedTest.of(state, test, description, table), table);
    }

    /**
     * Keeps a reading that was typed, unless there is something to ask first.
     *
     * @throws InputException where it can't be calculated with, or there is no such field
     */
    public synchronized Typed enter(Act act, StudyName study, TypedReading reading) {
        List<Entry> before = store.about(study.id().toString());
        if (isDone(act, before)) {
            return new Typed.Saved(Optional.of(act.entry(0)));
        }
        At at = at(State.of(before, shelf), reading.method());
        TypedTest test = at.typed();
        TypedTest.Specimen specimen = specimen(test, reading.specimen());
        TypedTest.Field field = field(test, reading.column());
        TypedTest.Cell cell = specimen.cell(field);
        if (reading.text().equals(cell.text()) && reading.picture().isEmpty()) {
            return new Typed.Saved(cell.entry());
        }
        if (cell.entry().isPresent() && !cell.entry().equals(reading.seen())) {
            return new Typed.Conflict(cell.text(), cell.who().orElse("the table"), cell.entry());
        }
        TypedCheck check = new TypedCheck(test, field, specimen.code());
        check.require(reading.text());
        if (reading.doubt() == TypedReading.Doubt.ASK) {
            Optional<String> doubt = check.doubt(reading.text());
            if (doubt.isPresent()) {
                return new Typed.Doubted(doubt.get());
            }
        }
        if (!cell.isBlank() && reading.why().isEmpty()) {
            return new Typed.WhyAsked(cell.text());
        }
        ObjectNode value = State.correction(
                cell(at, specimen, field.header()), specimen.code(), cell.text(), reading.text());
        if (reading.doubt() == TypedReading.Doubt.CONFIRMED) {
            value.put("confirmed", true);
        }
        noted(reading.noted()).ifPresent(time -> value.put("noted", time.toString()));
        reading.picture().ifPresent(picture -> picture.into(value));
        boolean replaces = cell.entry().isPresent() || !cell.isBlank();
        Optional<String> reason =
                replaces ? reading.why().or(() -> Optional.of(TYPED_AGAIN)) : Optional.empty();
        append(act, study, Aspect.READING, value, reason, cell.entry());
        return new Typed.Saved(Optional.of(act.entry(0)));
    }

    /**
     * Puts back what stood in a cell before its last entry.
     *
     * @param seen the last entry, as the form saw it
     * @return saved, or the conflict with what was entered since
     * @throws InputException where nothing was entered there
     */
    public synchronized Typed undo(
            Act act, StudyName study, String method, String code, String column, UUID seen) {
        List<Entry> before = store.about(study.id().toString());
        if (isDone(act, before)) {
            return new Typed.Saved(Optional.of(act.entry(0)));
        }
        At at = at(State.of(before, shelf), method);
        TypedTest test = at.typed();
        TypedTest.Specimen specimen = specimen(test, code);
        State.CellOf cell = cell(at, specimen, header(at, test, column));
        State.Spoken last = at.state()
                .lastSpoken(cell)
                .orElseThrow(() -> new InputException(
                        "there is nothing to undo at %s of %s".formatted(column, code)));
        if (!last.entry().equals(seen)) {
            return new Typed.Conflict(last.to(), last.who(), Optional.of(last.entry()));
        }
        ObjectNode value = State.correction(cell, code, last.to(), last.from());
        last.pictureBefore().ifPresent(picture -> picture.into(value));
        append(act, study, Aspect.READING, value, Optional.of(UNDO), Optional.of(seen));
        return new Typed.Saved(Optional.of(act.entry(0)));
    }

    /** Keeps a photo of a specimen, of which there is nothing to say. */
    public void photo(
            Act act,
            StudyName study,
            String method,
            String code,
            Upload photo,
            Optional<Instant> noted) {
        photo(act, study, method, code, photo, noted, "");
    }

    /**
     * Keeps a photo of a specimen.
     *
     * @param noted when it was taken, where that is not now
     * @param words what it is, such as the frame of a film; may be empty
     * @throws InputException where there is no such specimen, or the file is no photo
     */
    public synchronized void photo(
            Act act,
            StudyName study,
            String method,
            String code,
            Upload photo,
            Optional<Instant> noted,
            String words) {
        if (isDone(act, store.about(study.id().toString()))) {
            return;
        }
        PhotoKind.of(photo);
        At at = at(study, method);
        specimen(at.typed(), code);
        store.files().keep(photo.bytes());
        ZonedDateTime when = noted(noted).orElseGet(clock::instant).atZone(clock.getZone());
        append(
                act,
                study,
                Aspect.SPECIMEN_PHOTO,
                State.photo(
                        new State.OfSpecimen(at.test().id(), code), photo.described(), when, words),
                Optional.empty(),
                Optional.empty());
    }

    /** Returns what a specimen gives as far as it was read, its curve included. */
    public JudgedSpecimen result(StudyName study, String method, String code) {
        At at = at(study, method);
        int line = specimen(at.typed(), code).line();
        Table table = at.table();
        List<Row> row = table.rows().stream().filter(it -> it.line() == line).toList();
        return Calculation.of(methods, at.test().sheet())
                .with(shelf)
                .with((Handed) (name, from) -> curve(at.test(), name))
                .with(at.state().corrections(at.test().id()))
                .with(Calculation.Drawing.RESULTS_ALONE)
                .run(
                        new Table(table.name(), table.columns(), row, table.dialect()),
                        at.test().table())
                .specimens()
                .get(0);
    }

    private Upload curve(State.KeptTest test, String name) {
        KeptFile file = Optional.ofNullable(test.curves().get(name))
                .orElseThrow(() ->
                        new InputException("the curve '%s' was not handed in yet".formatted(name)));
        return Upload.of(name, store.files().read(new Digest(file.sha256())));
    }

    private Optional<Instant> noted(Optional<Instant> noted) {
        return noted.filter(time -> time.isBefore(clock.instant().plus(CLOCKS_APART)));
    }

    private static boolean isDone(Act act, List<Entry> before) {
        return before.stream().anyMatch(entry -> act.wrote(entry.id()));
    }

    private void append(
            Act act,
            StudyName study,
            Aspect aspect,
            ObjectNode value,
            Optional<String> reason,
            Optional<UUID> supersedes) {
        try {
            store.append(List.of(new Entry(
                    act.entry(0),
                    study.id().toString(),
                    aspect.word(),
                    value.toString(),
                    clock.instant(),
                    clock.getZone(),
                    act.who(),
                    reason,
                    supersedes)));
        } catch (StoreException e) {
            throw new InputException(e.getMessage());
        }
    }

    private static State.CellOf cell(At at, TypedTest.Specimen specimen, String header) {
        return new State.CellOf(at.test().id(), new Corrections.Cell(specimen.line(), header));
    }

    /** The name of a curve is no field that is typed, but it can be undone like one. */
    private static String header(At at, TypedTest test, String column) {
        return Picturing.column(at.table())
                .map(Column::header)
                .filter(column::equals)
                .orElseGet(() -> field(test, column).header());
    }

    private static TypedTest.Specimen specimen(TypedTest test, String code) {
        return test.specimen(code)
                .orElseThrow(() -> new InputException("the %s test has no specimen '%s'%s"
                        .formatted(
                                test.description().name(),
                                code,
                                Spelling.hint(
                                        code,
                                        test.specimens().stream()
                                                .map(TypedTest.Specimen::code)
                                                .toList()))));
    }

    private static TypedTest.Field field(TypedTest test, String column) {
        List<String> headers =
                test.fields().stream().map(TypedTest.Field::header).toList();
        return test.field(column)
                .orElseThrow(() -> new InputException("the %s test has no reading '%s' among %s%s"
                        .formatted(
                                test.description().name(),
                                column,
                                String.join(", ", headers),
                                Spelling.hint(column, headers))));
    }
}
