package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A code as outlines on a panel, as large as fits.
 *
 * <p>It runs along the specimen or across it, whichever lets it be larger. Small letters become
 * capitals.
 */
public final class Lettering {

    /** The narrowest stroke that a nozzle of 0.4 mm draws (mm). */
    public static final double LEAST_STROKE = 0.4;

    /** Wider strokes read no better from an arm's length (mm); our own choice. */
    private static final double MOST_STROKE = 1.2;

    /** A sign on the panel: outline and islands, both run leftwards. */
    record Sign(List<Point> outer, List<List<Point>> islands) {}

    private final String code;
    private final double stroke;
    private final List<Sign> signs;

    private Lettering(String code, double stroke, List<Sign> signs) {
        this.code = code;
        this.stroke = stroke;
        this.signs = List.copyOf(signs);
    }

    /**
     * Sets a code.
     *
     * @throws ShapeException where a sign can't be drawn, or the panel is too small for strokes of
     *     {@value #LEAST_STROKE} mm
     */
    public static Lettering of(String text, Panel panel) {
        String code = text.strip().toUpperCase(Locale.ROOT);
        List<Glyphs.Glyph> glyphs = glyphs(code);
        double wide = glyphs.stream().mapToDouble(Glyphs.Glyph::width).sum()
                + (glyphs.size() - 1) * Glyphs.GAP;
        double along = Math.min(panel.length() / wide, panel.width() / Glyphs.HEIGHT);
        double across = Math.min(panel.width() / wide, panel.length() / Glyphs.HEIGHT);
        double unit = Math.min(Math.max(along, across), MOST_STROKE / Glyphs.STROKE);
        if (unit * Glyphs.STROKE < LEAST_STROKE) {
            throw tooLong(code, wide, panel);
        }
        List<Sign> signs = new ArrayList<>();
        double x = -wide / 2;
        for (Glyphs.Glyph glyph : glyphs) {
            Setting setting = new Setting(panel.centre(), unit, x, across > along);
            signs.add(new Sign(
                    setting.placed(glyph.outer()),
                    glyph.counters().stream().map(setting::placed).toList()));
            x += glyph.width() + Glyphs.GAP;
        }
        return new Lettering(code, unit * Glyphs.STROKE, signs);
    }

    /** Returns the code as it is drawn. */
    public String code() {
        return code;
    }

    /** Returns the width of its strokes (mm). */
    public double stroke() {
        return stroke;
    }

    /** Returns the area that the signs cover, islands not counted (mm²). */
    public double area() {
        double sum = 0;
        for (Sign sign : signs) {
            sum += Polygons.area(sign.outer());
            for (List<Point> island : sign.islands()) {
                sum -= Polygons.area(island);
            }
        }
        return sum;
    }

    /** Returns the length of all outlines (mm). */
    public double length() {
        double sum = 0;
        for (Sign sign : signs) {
            sum += Polygons.length(sign.outer());
            for (List<Point> island : sign.islands()) {
                sum += Polygons.length(island);
            }
        }
        return sum;
    }

    List<Sign> signs() {
        return signs;
    }

    private static List<Glyphs.Glyph> glyphs(String code) {
        if (code.isEmpty()) {
            throw new ShapeException("A code needs at least one letter or figure.");
        }
        List<Glyphs.Glyph> glyphs = new ArrayList<>();
        for (char sign : code.toCharArray()) {
            Glyphs.Glyph glyph = Glyphs.all().get(sign);
            if (glyph == null) {
                throw new ShapeException(
                        "The code '%s' has '%s', and only A to Z, 0 to 9, - and . can be drawn."
                                .formatted(code, sign));
            }
            glyphs.add(glyph);
        }
        return glyphs;
    }

    private static ShapeException tooLong(String code, double wide, Panel panel) {
        double least = LEAST_STROKE / Glyphs.STROKE;
        double room = Math.max(panel.length(), panel.width());
        return new ShapeException(
                "The code '%s' is %s mm long at strokes of %s mm, and there are %s mm %s."
                        .formatted(
                                code,
                                Sizes.text(wide * least),
                                Sizes.text(LEAST_STROKE),
                                Sizes.text(room),
                                panel.where()));
    }

    /** Where a sign stands: scaled about the middle of the text, turned leftwards across. */
    private record Setting(Point centre, double unit, double x, boolean isAcross) {

        List<Point> placed(List<Point> line) {
            return line.stream().map(this::placed).toList();
        }

        private Point placed(Point corner) {
            double along = unit * (x + corner.x());
            double up = unit * (corner.y() - Glyphs.HEIGHT / 2);
            return isAcross
                    ? new Point(centre.x() - up, centre.y() + along)
                    : new Point(centre.x() + along, centre.y() + up);
        }
    }
}
