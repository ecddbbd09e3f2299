package org.twinbar.report.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.twinbar.report.Fonts;
import org.twinbar.report.Sheet;
import org.twinbar.report.Theme;

/** One picture in the making: words and pictures of the report, set for a film frame. */
final class Poster {

    private static final double LEADING = 1.32;
    private static final String INVENTED = "Invented data";

    private final Frame frame;
    private final StringBuilder inside = new StringBuilder(60_000);
    private final List<String> words = new ArrayList<>();

    Poster(Frame frame) {
        this.frame = frame;
        rectangle(0, 0, frame.width(), frame.height(), Theme.PAPER);
    }

    Frame frame() {
        return frame;
    }

    /** Returns the lowest place that is free above the foot. */
    double bottom() {
        return frame.height() - Frame.MARGIN - 2 * Frame.SMALLEST_TEXT;
    }

    /** Sets a text from its top, in lines no wider than this, and returns where it ends. */
    double say(
            String text,
            double x,
            double top,
            double width,
            double size,
            Fonts.Weight weight,
            Theme colour) {
        double y = top;
        for (String line : Lettering.lines(text, width, size, weight)) {
            letter(line, x, y + size, size, weight, colour);
            y += LEADING * size;
        }
        return y;
    }

    static double heightOf(String text, double width, double size, Fonts.Weight weight) {
        return LEADING * size * Lettering.lines(text, width, size, weight).size();
    }

    /** Sets one line about a base line. */
    void letter(
            String line, double x, double base, double size, Fonts.Weight weight, Theme colour) {
        if (size < Frame.SMALLEST_TEXT) {
            throw new IllegalArgumentException(
                    "'%s' would be %s high, must be %s or more on a film frame"
                            .formatted(line, size, Frame.SMALLEST_TEXT));
        }
        inside.append("<path fill=\"var(")
                .append(colour.variable())
                .append(")\" d=\"")
                .append(Lettering.path(line, x, base, size, weight))
                .append("\"/>");
    }

    /** Puts a picture of the report in, so many times as large. */
    void put(Outlined picture, double x, double y, double scale) {
        inside.append(String.format(
                        Locale.ROOT,
                        "<g transform=\"translate(%.1f %.1f) scale(%.4f)\">",
                        x,
                        y,
                        scale))
                .append(picture.inside())
                .append("</g>");
    }

    /** Adds to what is said of the picture to who can't see it. */
    void tell(String sentence) {
        if (!sentence.isBlank()) {
            words.add(sentence.strip());
        }
    }

    void rule(double x, double y, double width) {
        rectangle(x, y, width, 3, Theme.LINE);
    }

    private void rectangle(double x, double y, double width, double height, Theme colour) {
        inside.append(String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" fill=\"var(%s)\"/>",
                x,
                y,
                width,
                height,
                colour.variable()));
    }

    /** Sets what stands beneath every picture: whether the data are real, and what was asked. */
    void foot(Sheet sheet) {
        double size = Frame.SMALLEST_TEXT;
        double base = frame.height() - Frame.MARGIN / 2.0 - 10;
        double x = Frame.MARGIN;
        rule(x, base - 1.75 * size, frame.width() - 2.0 * Frame.MARGIN);
        if (sheet.invented()) {
            letter(INVENTED, x, base, size, Fonts.Weight.BOLD, Theme.WARN);
            x += Lettering.width(INVENTED + "   ", size, Fonts.Weight.BOLD);
            tell(INVENTED + ".");
        }
        double room = frame.width() - Frame.MARGIN - x - 2.2 * size;
        List<String> lines = Lettering.lines(sheet.title(), room, size, Fonts.Weight.REGULAR);
        String asked = lines.size() == 1 ? lines.get(0) : lines.get(0) + " …";
        letter(asked, x, base, size, Fonts.Weight.REGULAR, Theme.SOFT);
        sign(frame.width() - Frame.MARGIN - 52, base - 52);
    }

    /** The sign of the program: two upright bars, one hollow, one solid. */
    private void sign(double x, double y) {
        inside.append(String.format(
                Locale.ROOT,
                "<g transform=\"translate(%.1f %.1f) scale(2.3)\">"
                        + "<rect x=\"2\" y=\"3\" width=\"7\" height=\"20\" rx=\"1.5\" fill=\"none\""
                        + " stroke=\"var(%s)\" stroke-width=\"2\"/>"
                        + "<rect x=\"14\" y=\"2\" width=\"8\" height=\"22\" rx=\"1.5\""
                        + " fill=\"var(%s)\"/></g>",
                x,
                y,
                Theme.INK.variable(),
                Theme.TREATED.variable()));
    }

    /** Returns what the picture shows, in words. */
    String words() {
        return String.join(" ", words);
    }

    /** Returns the picture, its colours still by name. */
    String svg() {
        String said = words().replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %s %s\" width=\"%s\" height=\"%s\" role=\"img\" aria-label=\"%s\">%s</svg>"
                .formatted(
                        frame.width(), frame.height(), frame.width(), frame.height(), said, inside);
    }
}
