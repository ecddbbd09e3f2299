package org.twinbar.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Draws shares of a whole as bars under their names; the many small ones become one. */
final class PartsFigure {

    private static final int MOST = 7;
    private static final int ROW = 38;
    private static final double SHOWN_FROM = 0.005;

    private final Parts parts;
    private final List<Parts.Part> shown = new ArrayList<>();

    private PartsFigure(Parts parts) {
        this.parts = parts;
        List<Parts.Part> sorted = parts.parts().stream()
                .sorted(Comparator.comparingDouble(Parts.Part::share).reversed())
                .toList();
        List<Parts.Part> small = new ArrayList<>();
        for (Parts.Part part : sorted) {
            boolean room = shown.size() < MOST && part.share() >= SHOWN_FROM;
            (room ? shown : small).add(part);
        }
        double rest = small.stream().mapToDouble(Parts.Part::share).sum();
        if (small.size() == 1) {
            shown.add(small.get(0));
        } else if (!small.isEmpty()) {
            shown.add(new Parts.Part(small.size() + " others", rest));
        }
    }

    static String of(Parts parts) {
        return new PartsFigure(parts).draw();
    }

    private String draw() {
        int inside = Math.max(1, shown.size()) * ROW;
        return Chart.rows(Axes.unseen(0, 1), inside).paint(this::rows).svg(inside + 12, words());
    }

    private void rows(Chart.Brush brush) {
        double top = brush.top();
        for (Parts.Part part : shown) {
            String share = percent(part);
            double wide = Chart.widthOf(share, Fonts.Weight.REGULAR);
            brush.text(part.name(), brush.left(), top + 16, Theme.INK, Fonts.Weight.REGULAR);
            brush.text(share, brush.right() - wide, top + 16, Theme.SOFT, Fonts.Weight.REGULAR);
            brush.bar(brush.left(), top + 23, brush.right() - brush.left(), 6, Theme.LINE);
            double length = Math.max(2, part.share() * (brush.right() - brush.left()));
            brush.bar(brush.left(), top + 23, length, 6, Theme.INK);
            top += ROW;
        }
    }

    private static String percent(Parts.Part part) {
        return part.share() < 0.0095
                ? "below 1" + Written.THIN + "%"
                : Written.fixed(100 * part.share(), 0) + Written.THIN + "%";
    }

    private String words() {
        List<String> each =
                shown.stream().map(part -> part.name() + " " + percent(part)).toList();
        return parts.of() + ": " + String.join(", ", each) + ".";
    }
}
