package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;

/** Draws yes and no as points in two columns, a row for each group. */
final class SharesFigure {

    private static final int PITCH = 17;
    private static final int HEAD = 26;
    private static final int NAME = 28;
    private static final int UNDER = 14;
    private static final int GAP = 16;

    private final Shares shares;
    private final List<Column> columns = new ArrayList<>();

    private record Column(String words, double from, double to) {
        int perLine() {
            return Math.max(1, (int) ((to - from - 8) / PITCH));
        }
    }

    private SharesFigure(Shares shares) {
        this.shares = shares;
        boolean unknown = shares.groups().stream().anyMatch(g -> !g.unknown().isEmpty());
        double width = (Chart.WIDTH - 12) / (unknown ? 3.0 : 2.0);
        List<String> words = unknown
                ? List.of(shares.yes(), shares.no(), "not known")
                : List.of(shares.yes(), shares.no());
        for (int i = 0; i < words.size(); i++) {
            columns.add(new Column(words.get(i), i * width, (i + 1) * width - GAP));
        }
    }

    static String of(Shares shares) {
        return new SharesFigure(shares).draw();
    }

    private String draw() {
        int inside = HEAD + shares.groups().stream().mapToInt(this::height).sum();
        return Chart.rows(Axes.unseen(0, 1), inside).paint(this::rows).svg(inside + 12, words());
    }

    private int height(Shares.Group group) {
        int lines = 1;
        for (int i = 0; i < columns.size(); i++) {
            int each = columns.get(i).perLine();
            lines = Math.max(lines, (names(group, i).size() + each - 1) / each);
        }
        return NAME + lines * PITCH + UNDER;
    }

    private static List<String> names(Shares.Group group, int column) {
        return column == 0 ? group.saidYes() : column == 1 ? group.saidNo() : group.unknown();
    }

    private void rows(Chart.Brush brush) {
        for (Column column : columns) {
            double x = brush.left() + column.from();
            brush.text(column.words(), x, brush.top() + 15, Theme.SOFT, Fonts.Weight.REGULAR);
        }
        double top = brush.top() + HEAD;
        for (Shares.Group group : shares.groups()) {
            brush.line(brush.left(), top - 3, brush.right(), top - 3, Theme.LINE, 1);
            brush.text(group.name(), brush.left(), top + 16, Theme.INK, Fonts.Weight.BOLD);
            double named = Chart.widthOf(group.name(), Fonts.Weight.BOLD);
            brush.text(
                    count(group),
                    brush.left() + named + 8,
                    top + 16,
                    Theme.SOFT,
                    Fonts.Weight.REGULAR);
            for (int i = 0; i < columns.size(); i++) {
                points(brush, group, i, top + NAME);
            }
            top += height(group);
        }
    }

    private void points(Chart.Brush brush, Shares.Group group, int at, double top) {
        Column column = columns.get(at);
        List<String> names = names(group, at);
        for (int i = 0; i < names.size(); i++) {
            double x = brush.left() + column.from() + 8 + i % column.perLine() * PITCH;
            int line = i / column.perLine();
            double y = top + 8 + line * PITCH;
            String name = names.get(i) + ": " + column.words();
            brush.named(name, x, y, 6, () -> brush.sign(group.sign(), x, y, 6));
        }
    }

    private String count(Shares.Group group) {
        int known = group.saidYes().size() + group.saidNo().size();
        return group.saidYes().size() + " of " + known + " " + shares.yes();
    }

    private String words() {
        StringBuilder words = new StringBuilder("Each specimen's answer. ");
        for (Shares.Group group : shares.groups()) {
            words.append(group.name()).append(": ").append(count(group));
            if (!group.unknown().isEmpty()) {
                words.append(", ").append(group.unknown().size()).append(" not known");
            }
            words.append(". ");
        }
        return words.toString().strip();
    }
}
