package org.twinbar.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Mark;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.CurveFile;
import org.twinbar.study.table.Recordings;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/** Curves looked at by themselves: every row of one, and files handed in for specimens. */
public final class CurveReview {

    private final Workspace workspace;

    CurveReview(Workspace workspace) {
        this.workspace = workspace;
    }

    /**
     * Returns every row of a specimen's curve, which {@link JudgedSpecimen#curve} thins.
     *
     * @return nothing where it has no curve
     */
    public Optional<Curve> whole(JudgedSpecimen specimen) {
        return specimen.curve().map(thin -> {
            List<Channel> wanted = List.of(thin.up(), thin.across());
            Recordings.Recording read = CurveFile.read(
                    Upload.of(thin.file().name(), workspace.bytes(thin.file())),
                    ReadAs.found(),
                    wanted);
            Map<Mark, Integer> marks = new LinkedHashMap<>();
            specimen.result()
                    .marks()
                    .forEach((mark, row) -> row.ifPresent(it -> marks.put(mark, it)));
            return new Curve(
                    thin.across(),
                    thin.up(),
                    values(read, thin.across()),
                    values(read, thin.up()),
                    marks,
                    thin.moved(),
                    thin.file(),
                    thin.rowsRead());
        });
    }

    private static double[] values(Recordings.Recording recording, Channel channel) {
        double[] values = recording.channels().get(channel);
        if (values == null) {
            throw new IllegalStateException(channel.name() + " was not recorded");
        }
        return values;
    }

    /**
     * Hands in curves of specimens whose table came without them. A file belongs to the specimen
     * whose code is its name, or a part of its name between other signs: {@code P1.csv},
     * {@code 2026-05-04 P1 pull.csv}.
     *
     * @return how many there were
     * @throws InputException where the test's table has no place for curves, a file belongs to no
     *     specimen or to several, a specimen has a curve already, or a file can't be read as the
     *     method needs it; nothing was written then
     */
    public int handIn(Act act, StudyName study, String method, List<Upload> files) {
        if (files.isEmpty()) {
            throw new InputException("choose the curves first");
        }
        workspace.change(act, study, draft -> handIn(draft, method, files));
        return files.size();
    }

    private static void handIn(Draft draft, String method, List<Upload> files) {
        State state = draft.state();
        State.KeptTest test = state.test(method)
                .orElseThrow(
                        () -> new InputException("the study has no %s test".formatted(method)));
        Table table = TableFile.read(Upload.of(test.table().name(), draft.bytes(test.table())));
        Description description = OwnMethods.named(draft.methods(), method).description();
        Column column = table.columns().stream()
                .filter(Columns::isCurve)
                .findFirst()
                .orElseThrow(() -> new InputException(
                        "the table of the %s test has no column curve_file for curves"
                                .formatted(description.title().toLowerCase(Locale.ROOT))));
        List<String> codes = Columns.codes(table);
        Map<String, String> given = new HashMap<>();
        for (Upload file : files) {
            String code = specimen(file.name(), codes);
            String other = given.put(code, file.name());
            if (other != null) {
                throw new InputException(
                        "%s and %s both belong to %s".formatted(other, file.name(), code));
            }
            Row row = table.rows().get(codes.indexOf(code));
            Corrections.Cell cell = new Corrections.Cell(row.line(), column.header());
            String before = state.corrections(test.id())
                    .of(cell.line(), cell.header())
                    .map(Corrections.Said::counting)
                    .orElseGet(() -> row.cell(column.index()))
                    .strip();
            if (!SpecimenRow.isNothing(before)) {
                throw new InputException("%s has the curve %s already".formatted(code, before));
            }
            String name = code + "/" + last(file.name());
            draft.curve(test.id(), name, file);
            draft.say(
                    Aspect.READING,
                    State.correction(new State.CellOf(test.id(), cell), code, "", name));
        }
    }

    private static String specimen(String file, List<String> codes) {
        String name = last(file);
        int dot = name.lastIndexOf('.');
        String stem = (dot > 0 ? name.substring(0, dot) : name).toLowerCase(Locale.ROOT);
        List<String> parts = Arrays.asList(stem.split("[^\\p{L}\\p{N}]+"));
        List<String> fitting = new ArrayList<>();
        for (String code : codes) {
            String plain = code.toLowerCase(Locale.ROOT);
            if (plain.equals(stem)) {
                return code;
            }
            if (parts.contains(plain)) {
                fitting.add(code);
            }
        }
        if (fitting.size() != 1) {
            throw new InputException(
                    fitting.isEmpty()
                            ? "%s belongs to no specimen%s Name it after one, such as %s.csv."
                                    .formatted(name, Spelling.hint(stem, codes), codes.get(0))
                            : "%s may belong to %s; name it after one of them"
                                    .formatted(name, String.join(" or to ", fitting)));
        }
        return fitting.get(0);
    }

    private static String last(String file) {
        return file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
    }
}
