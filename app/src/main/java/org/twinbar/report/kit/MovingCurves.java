package org.twinbar.report.kit;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.stream.DoubleStream;
import org.twinbar.report.Curves;
import org.twinbar.report.Figures;
import org.twinbar.report.Fonts;
import org.twinbar.report.Sheet;
import org.twinbar.report.Theme;

/** Curves of control and treated that draw themselves side by side, as they were recorded. */
final class MovingCurves {

    private static final int STEPS = 36;
    private static final int STEP_MS = 80;
    private static final int LAST_MS = 4000;

    /** Half of 4K each way: what moves is shown smaller, and a file must stay small. */
    private static final int WIDTH = Frame.WIDE.width() / 2;

    private static final int HEIGHT = Frame.WIDE.height() / 2;

    private final Curves curves;
    private final Sheet.Answer answer;
    private final Sheet sheet;

    MovingCurves(Curves curves, Sheet.Answer answer, Sheet sheet) {
        this.curves = curves;
        this.answer = answer;
        this.sheet = sheet;
    }

    String words() {
        return "Curves that draw themselves. "
                + poster(Double.POSITIVE_INFINITY).words();
    }

    byte[] gif(Palette palette) {
        double[] across = curves.groups().stream()
                .flatMap(group -> group.curves().stream())
                .flatMapToDouble(curve -> DoubleStream.of(curve.across()))
                .filter(Double::isFinite)
                .toArray();
        double from = DoubleStream.of(across).min().orElse(0);
        double to = DoubleStream.of(across).max().orElse(1);
        ByteArrayOutputStream file = new ByteArrayOutputStream(2_000_000);
        try (Film film = new Film(file, palette)) {
            for (int step = 0; step <= STEPS; step++) {
                BufferedImage image = Bitmap.drawn(
                        palette.resolved(
                                poster(from + (to - from) * step / STEPS).svg()),
                        WIDTH,
                        HEIGHT);
                film.add(image, step == STEPS ? LAST_MS : STEP_MS);
            }
        }
        return file.toByteArray();
    }

    private Poster poster(double until) {
        Poster poster = new Poster(Frame.WIDE);
        double width = Frame.WIDE.width() - 2.0 * Frame.MARGIN;
        double top = poster.say(
                answer.heading(),
                Frame.MARGIN,
                Frame.MARGIN - 30,
                width,
                96,
                Fonts.Weight.BOLD,
                Theme.INK);
        Outlined drawn = Outlined.of(Figures.curves(curves.drawnUntil(until)));
        double scale = Math.min(width / drawn.width(), (poster.bottom() - top) / drawn.height());
        poster.put(drawn, (Frame.WIDE.width() - scale * drawn.width()) / 2, top, scale);
        poster.tell(drawn.words());
        poster.foot(sheet);
        return poster;
    }
}
