package org.twinbar.study;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Methods;
import org.twinbar.store.Digest;
import org.twinbar.store.Entry;
import org.twinbar.store.RawFiles;
import org.twinbar.store.Store;
import org.twinbar.store.StoreException;
import org.twinbar.study.calculation.GivenResults;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/**
 * Entries that an act is about to make; they are tried on the whole study before they are written.
 */
final class Draft {

    private final Store store;
    private final Methods methods;
    private final Clock clock;
    private final Act act;
    private final UUID study;
    private final List<Entry> before;
    private final List<Entry> fresh = new ArrayList<>();
    private final List<Claim> claims = new ArrayList<>();
    private final Map<String, Upload> uploads = new HashMap<>();

    Draft(Store store, Methods methods, Clock clock, Act act, UUID study, List<Entry> before) {
        this.store = store;
        this.methods = methods;
        this.clock = clock;
        this.act = act;
        this.study = study;
        this.before = List.copyOf(before);
    }

    Methods methods() {
        return methods;
    }

    ZonedDateTime now() {
        return clock.instant().atZone(clock.getZone());
    }

    /** Returns the specimens that a test has some result of. */
    Set<String> codesWithReadings() {
        return Judging.withReadings(judge(state(), "").specimens());
    }

    void say(Aspect aspect, ObjectNode value) {
        say(aspect, value, Optional.empty(), Optional.empty());
    }

    void say(Aspect aspect, ObjectNode value, Optional<String> reason, Optional<UUID> supersedes) {
        try {
            fresh.add(new Entry(
                    act.entry(fresh.size()),
                    study.toString(),
                    aspect.word(),
                    value.toString(),
                    clock.instant(),
                    clock.getZone(),
                    act.who(),
                    reason,
                    supersedes));
        } catch (StoreException e) {
            throw new InputException(e.getMessage());
        }
    }

    void test(StudyFile.Test test, Handed handed) {
        String method = test.sheet().method();
        if (!test.sheet().isOfResults()) {
            OwnMethods.named(methods, method);
        }
        if (state().test(method).isPresent()) {
            throw new InputException(
                    "the study has a %s test already; put its specimens into one table"
                            .formatted(method));
        }
        Place here = Place.of(test.specimens());
        Upload upload = handed.find(test.specimens(), here);
        Table table = TableFile.read(upload);
        Map<String, KeptFile> curves = new LinkedHashMap<>();
        table.columns().stream()
                .filter(Columns::isCurve)
                .findFirst()
                .ifPresent(column -> curves.putAll(curves(test, table, column, handed)));
        say(Aspect.TEST, State.json(test.sheet(), take(upload), curves));
    }

    private Map<String, KeptFile> curves(
            StudyFile.Test test, Table table, Column column, Handed handed) {
        Map<String, KeptFile> curves = new LinkedHashMap<>();
        String folder = test.curves().map(it -> it + "/").orElse(parent(test.specimens()));
        table.rows().forEach(row -> {
            String name = column.index() < row.cells().size()
                    ? row.cells().get(column.index()).strip()
                    : "";
            if (!SpecimenRow.isNothing(name)) {
                Place place = Place.of(table.name()).line(row.line()).column(column.header());
                curves.put(name, take(handed.find(folder + name, place)));
            }
        });
        return curves;
    }

    private static String parent(String name) {
        return name.substring(0, name.lastIndexOf('/') + 1);
    }

    /** Hands in a curve that a test's table came without. */
    void curve(UUID test, String name, Upload curve) {
        ObjectNode value = JsonNodeFactory.instance.objectNode();
        value.put("test", test.toString());
        value.put("name", name);
        value.set("file", State.json(take(curve)));
        say(Aspect.CURVE, value);
    }

    KeptFile take(Upload upload) {
        KeptFile file = upload.described();
        uploads.put(file.sha256(), upload);
        return file;
    }

    void claim(Claim claim) {
        claims.add(claim);
        say(Aspect.CLAIM, claim.json());
    }

    void leaveOut(StudyFile.LeaveOut out) {
        State state = state();
        State.OfSpecimen specimen = specimen(state, out.method(), out.specimen());
        ObjectNode value = State.leaveOut(specimen, out.leftOut().sight());
        value.put("who", out.leftOut().who());
        value.put("when", out.leftOut().when().toString());
        say(Aspect.LEFT_OUT, value, Optional.of(out.leftOut().why()), state.lastWord(specimen));
    }

    void leaveOut(String method, String code, LeftOut.Sight sight, String why) {
        State state = state();
        State.OfSpecimen specimen = specimen(state, method, code);
        if (state.leftOut(specimen.test(), code).isPresent()) {
            throw new InputException("specimen '%s' is left out already".formatted(code));
        }
        say(
                Aspect.LEFT_OUT,
                State.leaveOut(specimen, sight),
                Optional.of(why),
                state.lastWord(specimen));
    }

    void takeBack(String method, String code, String why) {
        State state = state();
        State.OfSpecimen specimen = specimen(state, method, code);
        if (state.leftOut(specimen.test(), code).isEmpty()) {
            throw new InputException("specimen '%s' counts already".formatted(code));
        }
        say(Aspect.LEFT_OUT, State.takeBack(specimen), Optional.of(why), state.lastWord(specimen));
    }

    void correct(String method, String code, String column, String text, String why) {
        State state = state();
        State.OfSpecimen specimen = specimen(state, method, code);
        JudgedSpecimen judged = specimen(method, code);
        List<String> columns = judged.readings().stream().map(Reading::column).toList();
        Reading reading = judged.readings().stream()
                .filter(it -> it.column().equals(column))
                .findFirst()
                .orElseThrow(() -> new InputException("specimen '%s' has no reading '%s' among %s%s"
                        .formatted(
                                code,
                                column,
                                String.join(", ", columns),
                                Spelling.hint(column, columns))));
        State.CellOf cell = new State.CellOf(
                specimen.test(), new Corrections.Cell(reading.line(), reading.column()));
        say(
                Aspect.READING,
                State.correction(cell, code, reading.counting(), text),
                Optional.of(why),
                state.lastSpoken(cell).map(State.Spoken::entry));
    }

    /** Returns a specimen as it is judged now. */
    JudgedSpecimen specimen(String method, String code) {
        return judge(state(), "").specimensOf(method).stream()
                .filter(it -> it.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    State.OfSpecimen specimen(State state, String method, String code) {
        State.KeptTest test = state.test(method)
                .orElseThrow(
                        () -> new InputException("the study has no %s test".formatted(method)));
        Table table = TableFile.read(Upload.of(test.table().name(), bytes(test.table())));
        List<String> codes =
                test.sheet().isOfResults() ? GivenResults.codes(table) : Columns.codes(table);
        if (!codes.contains(code)) {
            throw new InputException("the %s test has no specimen '%s'%s"
                    .formatted(method, code, Spelling.hint(code, codes)));
        }
        return new State.OfSpecimen(test.id(), code);
    }

    State state() {
        List<Entry> all = new ArrayList<>(before);
        all.addAll(fresh);
        return State.of(all, new Instruments(store, clock));
    }

    byte[] bytes(KeptFile file) {
        Upload upload = uploads.get(file.sha256());
        return upload == null ? store.files().read(new Digest(file.sha256())) : upload.bytes();
    }

    private JudgedStudy judge(State state, String program) {
        return Judging.judge(state, methods, this::bytes, program, Progress.SILENT);
    }

    /**
     * Judges what was drafted, and writes nothing.
     *
     * @throws InputException as {@link #write}
     */
    JudgedStudy judge(String program) {
        Judging.requireAskable(state(), methods, this::bytes, claims);
        return judge(state(), program);
    }

    /**
     * Writes what was drafted, files first, so that no entry names a file that isn't there.
     *
     * @throws InputException where the study can't be calculated with it, or a question that it
     *     adds can't be asked; nothing was written then
     */
    void write() {
        Judging.requireAskable(state(), methods, this::bytes, claims);
        List<RawFiles.Kept> kept =
                store.files().keepAll(uploads.values().stream().map(Upload::bytes));
        for (RawFiles.Kept file : kept) {
            if (!uploads.containsKey(file.digest().hex())) {
                throw new InputException("a file changed while it was read; try again");
            }
        }
        store.append(fresh);
    }
}
