package org.twinbar.study;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Table;
import org.twinbar.store.Digest;
import org.twinbar.store.RawFiles;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.picture.FilmSheet;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/**
 * Curves that were followed on a film; single readings from pictures are {@link Typing}'s, like any
 * other. A curve is kept as the file that its specimen's row names.
 */
public final class Picturing {

    private final Workspace workspace;
    private final RawFiles files;

    Picturing(Workspace workspace, RawFiles files) {
        this.workspace = workspace;
        this.files = files;
    }

    /**
     * What a person wants kept, and what they knew when they did.
     *
     * @param seen the last entry on the cell of the curve's name that the form had seen
     * @param why the reason, where it takes the place of another curve
     */
    public record Wanted(
            StudyName study,
            String method,
            String specimen,
            Optional<UUID> seen,
            Optional<String> why) {

        public Wanted {
            why = why.map(String::strip).filter(words -> !words.isEmpty());
        }
    }

    /**
     * Where the name of a specimen's curve stands.
     *
     * @param column its header
     * @param now what stands there
     */
    public record Room(String column, TypedTest.Cell now) {}

    /** Returns the room for a specimen's curve; empty where the test's table has none. */
    public Optional<Room> room(StudyName study, String method, String specimen) {
        State state = workspace.state(study);
        State.KeptTest test = test(state, method);
        return column(table(test))
                .map(column -> new Room(
                        column.header(), cell(state, test, column, specimen).now()));
    }

    /**
     * Keeps a curve.
     *
     * @throws InputException where the test has no such specimen, its table has no column for
     *     curves, or the study can't be calculated with it
     */
    public Typed keep(Act act, Wanted wanted, FilmSheet.Followed followed) {
        State state = workspace.state(wanted.study());
        State.KeptTest test = test(state, wanted.method());
        Column column = column(table(test))
                .orElseThrow(
                        () -> new InputException(
                                "the table of this test has no column curve_file, so that a curve has no place"));
        At at = cell(state, test, column, wanted.specimen());
        UUID entry = act.entry(0);
        boolean done = at.now().entry().equals(Optional.of(entry));
        if (done) {
            return new Typed.Saved(Optional.of(entry));
        }
        TypedTest.Cell now = at.now();
        if (now.entry().isPresent() && !now.entry().equals(wanted.seen())) {
            return new Typed.Conflict(now.text(), now.who().orElse("the table"), now.entry());
        }
        if (!now.isBlank() && wanted.why().isEmpty()) {
            return new Typed.WhyAsked(now.text());
        }
        if (followed.rows().size() < 2) {
            throw new InputException("the curve has %s rows with a temperature, must have 2 or more"
                    .formatted(followed.rows().size()));
        }
        String name = name(wanted.specimen(), act);
        ObjectNode value = State.correction(at.cell(), wanted.specimen(), now.text(), name);
        followed.how().into(value);
        workspace.change(act, wanted.study(), draft -> {
            draft.say(Aspect.READING, value, wanted.why(), now.entry());
            draft.curve(test.id(), name, Upload.of(name, followed.csv()));
        });
        return new Typed.Saved(Optional.of(entry));
    }

    /** The same in a retry, and another's for another act: a curve that was kept stays. */
    private static String name(String specimen, Act act) {
        return "%s-film-%s.csv"
                .formatted(
                        specimen.replaceAll("[^\\p{L}\\p{N}._-]", "_"),
                        act.id().toString().substring(0, 8));
    }

    private static State.KeptTest test(State state, String method) {
        return state.test(method)
                .orElseThrow(
                        () -> new InputException("the study has no %s test".formatted(method)));
    }

    private Table table(State.KeptTest test) {
        return TableFile.read(Upload.of(
                test.table().name(), files.read(new Digest(test.table().sha256()))));
    }

    static Optional<Column> column(Table table) {
        return table.columns().stream().filter(Columns::isCurve).findFirst();
    }

    /** A cell, and what stands there. */
    private record At(State.CellOf cell, TypedTest.Cell now) {}

    private At cell(State state, State.KeptTest test, Column column, String specimen) {
        Table table = table(test);
        List<String> codes = Columns.codes(table);
        int row = codes.indexOf(specimen);
        if (row < 0) {
            throw new InputException(
                    "the %s test has no specimen '%s'".formatted(test.sheet().method(), specimen));
        }
        int line = table.rows().get(row).line();
        State.CellOf cell =
                new State.CellOf(test.id(), new Corrections.Cell(line, column.header()));
        String text = state.corrections(test.id())
                .of(line, column.header())
                .map(Corrections.Said::counting)
                .orElseGet(() -> table.rows().get(row).cell(column.index()).strip());
        Optional<State.Spoken> last = state.lastSpoken(cell);
        return new At(
                cell,
                new TypedTest.Cell(
                        text,
                        last.map(State.Spoken::entry),
                        last.map(State.Spoken::when),
                        last.map(State.Spoken::who),
                        last.flatMap(State.Spoken::picture)));
    }
}
