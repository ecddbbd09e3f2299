package org.twinbar.report;

import java.awt.Color;
import java.util.Locale;
import java.util.Optional;

/**
 * The colours of pages, pictures and PDF, by what they stand for; the only place that holds them.
 *
 * <p>Text colours keep 4.5 : 1 against paper and sheet, marks 3 : 1, in both lights; a test
 * calculates it.
 */
public enum Theme {
    /** What everything lies on. */
    PAPER("#fbfaf7", "#14181a"),
    /** The inside of what is hollow, and of fields. */
    SHEET("#ffffff", "#1b2023"),
    /** Text, axes, the line of no change. */
    INK("#1d2327", "#e9e6df"),
    /** Text that stands back. */
    SOFT("#5c666d", "#a3adb2"),
    /** Rules and grids. */
    LINE("#dcd8cf", "#343b3f"),
    /** What is treated, and what can be pressed. */
    TREATED("#0b5d66", "#6fc3c9"),
    /** What is not treated. */
    CONTROL("#1d2327", "#e9e6df"),
    /** What needs attention, and what is worth having. */
    WARN("#a4480b", "#eb9a5f"),
    /** A ground a shade away from paper. */
    WASH("#eef3f2", "#20292b");

    private final String light;
    private final String dark;

    Theme(String light, String dark) {
        this.light = light;
        this.dark = dark;
    }

    /** Returns the name of the style sheet's variable. */
    public String variable() {
        return "--" + name().toLowerCase(Locale.ROOT);
    }

    public String light() {
        return light;
    }

    public String dark() {
        return dark;
    }

    /** Returns the colour that this token is drawn with; {@link #of} finds the token again. */
    Color ink() {
        // Two tokens may share a colour, so that what is drawn must not be the colour itself.
        return new Color(ordinal() + 1, 0, 1);
    }

    /** Returns the colour for lines so many that each must let others shine through. */
    Color thinInk() {
        return new Color(ordinal() + 1, 0, 1, 130);
    }

    static Optional<Theme> of(Color drawn) {
        boolean token = drawn.getGreen() == 0 && drawn.getBlue() == 1 && drawn.getRed() > 0;
        return token && drawn.getRed() <= values().length
                ? Optional.of(values()[drawn.getRed() - 1])
                : Optional.empty();
    }

    /** Returns the style sheet that declares every token, in the light that the reader prefers. */
    public static String css() {
        return ":root{color-scheme:light dark;%s}@media (prefers-color-scheme:dark){:root{%s}}@media print{:root{%s}}"
                .formatted(declare(false), declare(true), declare(false));
    }

    private static String declare(boolean inDark) {
        StringBuilder css = new StringBuilder();
        for (Theme token : values()) {
            css.append(token.variable()).append(':');
            css.append(inDark ? token.dark : token.light).append(';');
        }
        return css.toString();
    }

    /** Returns a picture or style sheet with every token replaced by its colour in print. */
    public static String onPaper(String text) {
        String resolved = text.replace("var(" + PAPER.variable() + ")", "#ffffff");
        for (Theme token : values()) {
            resolved = resolved.replace("var(" + token.variable() + ")", token.light);
        }
        return resolved;
    }
}
