package org.twinbar.report.kit;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.report.Fonts;
import org.twinbar.report.Sheet;
import org.twinbar.report.Theme;

/** All verdicts as a table in one picture, or in several where there are many. */
final class TablePoster {

    static final int ROWS = 8;

    private static final double TITLE = 84;
    private static final double TEXT = 60;

    private TablePoster() {}

    /** A claim beside one of its answers. */
    record Row(Sheet.Claim claim, Sheet.Answer answer) {}

    static List<Row> rows(Sheet sheet) {
        List<Row> rows = new ArrayList<>();
        sheet.claims()
                .forEach(claim ->
                        claim.answers().forEach(answer -> rows.add(new Row(claim, answer))));
        return rows;
    }

    static Poster of(Sheet sheet, List<Row> rows) {
        Poster poster = new Poster(Frame.WIDE);
        double left = Frame.MARGIN;
        double width = Frame.WIDE.width() - 2.0 * Frame.MARGIN;
        double y = poster.say(
                sheet.title(), left, Frame.MARGIN - 40, width, TITLE, Fonts.Weight.BOLD, Theme.INK);
        y += 30;
        double row = (poster.bottom() - y) / Math.max(5, rows.size());
        for (Row each : rows) {
            poster.rule(left, y, width);
            row(poster, each, left, y + row / 2, row);
            y += row;
        }
        poster.foot(sheet);
        return poster;
    }

    private static void row(Poster poster, Row row, double left, double middle, double height) {
        double base = middle + TEXT / 3;
        double claimed = 1500;
        String quoted = "“" + row.claim().quoted() + "”";
        List<String> lines = Lettering.lines(quoted, claimed, TEXT, Fonts.Weight.BOLD).stream()
                .limit(2)
                .toList();
        double first = base - (lines.size() - 1) * TEXT * 0.62;
        for (String line : lines) {
            poster.letter(line, left, first, TEXT, Fonts.Weight.BOLD, Theme.INK);
            first += TEXT * 1.24;
        }
        double asked = left + claimed + 40;
        List<String> heading =
                Lettering.lines(row.answer().heading(), 760, TEXT - 10, Fonts.Weight.REGULAR)
                        .stream()
                        .limit(2)
                        .toList();
        first = base - (heading.size() - 1) * TEXT * 0.55;
        for (String line : heading) {
            poster.letter(line, asked, first, TEXT - 10, Fonts.Weight.REGULAR, Theme.SOFT);
            first += TEXT * 1.1;
        }
        double marked = asked + 800;
        row.answer().mark().ifPresent(mark -> {
            Outlined drawn = Outlined.of(mark);
            double scale = Math.min(3.6, 0.8 * height / drawn.height());
            poster.put(drawn, marked, middle - scale * drawn.height() / 2, scale);
        });
        poster.letter(
                row.answer().verdict(), marked + 520, base, TEXT, Fonts.Weight.BOLD, Theme.TREATED);
        poster.tell(quoted + ", " + row.answer().heading() + ": " + row.answer().verdict() + ".");
    }
}
