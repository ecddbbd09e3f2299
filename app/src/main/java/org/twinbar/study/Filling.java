package org.twinbar.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.exchange.Column;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Row;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.study.table.Columns;
import org.twinbar.study.table.Corrections;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Presets;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

/** Readings of a file put into the blank cells of a test's table, matched by specimen codes. */
final class Filling {

    private final Draft draft;
    private final State.KeptTest test;
    private final Table kept;
    private final Corrections said;

    private Filling(Draft draft, State.KeptTest test, Table kept) {
        this.draft = draft;
        this.test = test;
        this.kept = kept;
        this.said = draft.state().corrections(test.id());
    }

    /**
     * Fills what is blank; what stands there already may be said again, and nothing else.
     *
     * @return how many cells were filled
     * @throws InputException where a code or a column is not in the test's table, or a cell has
     *     another value
     */
    static int fill(Draft draft, String method, Upload readings, Handed curves) {
        State.KeptTest test = draft.state()
                .test(method)
                .orElseThrow(() -> new InputException(
                        "the study has no %s test yet: start it from the plan".formatted(method)));
        Table kept = TableFile.read(Upload.of(test.table().name(), draft.bytes(test.table())));
        return new Filling(draft, test, kept).fill(TableFile.read(readings), curves);
    }

    private int fill(Table from, Handed curves) {
        List<String> codes = Columns.codes(kept);
        Map<String, Row> rows = new HashMap<>();
        for (int i = 0; i < codes.size(); i++) {
            rows.put(codes.get(i), kept.rows().get(i));
        }
        List<String> given = Columns.codes(from);
        Map<Column, Column> matched = matched(from);
        int filled = 0;
        for (int i = 0; i < given.size(); i++) {
            Row source = from.rows().get(i);
            Row target = rows.get(given.get(i));
            if (target == null) {
                throw Place.of(from.name())
                        .line(source.line())
                        .refuse("the %s test has no specimen '%s'%s"
                                .formatted(
                                        test.sheet().method(),
                                        given.get(i),
                                        Spelling.hint(given.get(i), codes)));
            }
            for (Map.Entry<Column, Column> pair : matched.entrySet()) {
                Cell cell = new Cell(from, source, pair.getKey(), target, pair.getValue());
                filled += fill(given.get(i), cell, curves) ? 1 : 0;
            }
        }
        if (filled == 0) {
            throw Place.of(from.name())
                    .refuse("there is no reading that the %s test has not got already"
                            .formatted(test.sheet().method()));
        }
        return filled;
    }

    /** A cell that is read from, and the one that it goes to. */
    private record Cell(Table from, Row source, Column read, Row target, Column fill) {

        Place place() {
            return Place.of(from.name()).line(source.line()).column(read.header());
        }

        /** Returns the text with its unit where the two headers differ in it. */
        String text() {
            String text = source.cell(read.index()).strip();
            boolean sameUnit = read.unit().isEmpty() || read.unit().equals(fill.unit());
            return text.isEmpty() || sameUnit
                    ? text
                    : text + " " + read.unit().get().code();
        }
    }

    private boolean fill(String code, Cell cell, Handed curves) {
        String text = cell.text();
        if (SpecimenRow.isNothing(text)) {
            return false;
        }
        Corrections.Cell at =
                new Corrections.Cell(cell.target().line(), cell.fill().header());
        String before = said.of(at.line(), at.header())
                .map(Corrections.Said::counting)
                .orElseGet(() -> cell.target().cell(cell.fill().index()))
                .strip();
        if (before.equals(text)) {
            return false;
        }
        if (!SpecimenRow.isNothing(before)) {
            throw cell.place()
                    .refuse("%s of '%s' is %s already, not %s: correct it with a reason"
                            .formatted(cell.fill().label(), code, before, text));
        }
        if (Columns.isCurve(cell.fill())) {
            draft.curve(test.id(), text, curves.find(text, cell.place()));
        }
        draft.say(
                Aspect.READING, State.correction(new State.CellOf(test.id(), at), code, "", text));
        return true;
    }

    /** Columns that say where a specimen belongs are the plan's, and are not read again. */
    private Map<Column, Column> matched(Table from) {
        Map<Column, Column> matched = new HashMap<>();
        List<String> unknown = new ArrayList<>();
        for (Column column : from.columns()) {
            Optional<Column> target = kept.columns().stream()
                    .filter(each -> Presets.key(each.label()).equals(Presets.key(column.label())))
                    .findFirst();
            if (target.isEmpty()) {
                unknown.add(column.header());
            } else if (isBlank(target.get())) {
                matched.put(column, target.get());
            }
        }
        if (matched.isEmpty()) {
            throw Place.of(from.name())
                    .refuse("none of the columns %s is a reading of the %s test"
                            .formatted(String.join(", ", unknown), test.sheet().method()));
        }
        return matched;
    }

    private boolean isBlank(Column column) {
        return kept.rows().stream().allMatch(row -> row.cell(column.index()).isBlank());
    }
}
