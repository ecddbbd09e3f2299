package org.twinbar.report.kit;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.report.Theme;

/**
 * The colours of one light, by what they stand for.
 *
 * @param word {@code light} or {@code dark}
 * @param colours such as {@code #0b5d66}
 */
public record Palette(String word, Map<Theme, String> colours) {

    private static final double TEXT_CONTRAST = 4.5;
    private static final double MARK_CONTRAST = 3;
    private static final List<Theme> TEXTS =
            List.of(Theme.INK, Theme.SOFT, Theme.TREATED, Theme.WARN);

    public static final Palette LIGHT = new Palette("light", all(true));
    public static final Palette DARK = new Palette("dark", all(false));

    /** Every colour, and those that text has can be read on paper. */
    public Palette {
        colours = Map.copyOf(colours);
    }

    private static Map<Theme, String> all(boolean light) {
        return Stream.of(Theme.values())
                .collect(Collectors.toMap(it -> it, it -> light ? it.light() : it.dark()));
    }

    /**
     * Returns this palette with some colours changed.
     *
     * @param changed colours such as {@code #0b5d66} by name, such as {@code treated}
     * @throws IllegalArgumentException where a name or a colour is none, or what is drawn in it
     *     could no longer be told from paper: below 4.5 : 1 for text, 3 : 1 for marks
     */
    public Palette with(Map<String, String> changed) {
        Map<Theme, String> colours = new EnumMap<>(this.colours);
        changed.forEach((name, colour) -> {
            Theme token = Stream.of(Theme.values())
                    .filter(it -> it.name().equalsIgnoreCase(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException(
                            "'%s' is none of the colours %s".formatted(name, names())));
            if (!colour.matches("#[0-9a-fA-F]{6}")) {
                throw new IllegalArgumentException(
                        "%s is '%s', must be a colour such as #0b5d66".formatted(name, colour));
            }
            colours.put(token, colour);
        });
        Palette palette = new Palette(word, colours);
        palette.requireContrast();
        return palette;
    }

    private void requireContrast() {
        for (Theme ground : List.of(Theme.PAPER, Theme.SHEET)) {
            for (Theme token : Theme.values()) {
                boolean text = TEXTS.contains(token);
                double least = text ? TEXT_CONTRAST : token == Theme.CONTROL ? MARK_CONTRAST : 0;
                double contrast = contrast(of(token), of(ground));
                if (contrast < least) {
                    throw new IllegalArgumentException(String.format(
                            Locale.ROOT,
                            "%s on %s has a contrast of %.1f : 1 in the %s pictures, must be %s : 1"
                                    + " or more",
                            token.name().toLowerCase(Locale.ROOT),
                            ground.name().toLowerCase(Locale.ROOT),
                            contrast,
                            word,
                            least));
                }
            }
        }
    }

    private static String names() {
        return Stream.of(Theme.values())
                .map(it -> it.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
    }

    String of(Theme token) {
        return colours.getOrDefault(token, token.light());
    }

    /** Returns a picture of the report as a file that needs no typeface and no style sheet. */
    public String drawn(String svg) {
        Outlined picture = Outlined.of(svg);
        String said =
                picture.words().replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
        return resolved(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %1$.0f %2$.0f\""
                        + " role=\"img\" aria-label=\"%3$s\"><rect width=\"%1$.0f\""
                        + " height=\"%2$.0f\" fill=\"var(--paper)\"/>%4$s</svg>",
                picture.width(),
                picture.height(),
                said,
                picture.inside()));
    }

    /** Returns a picture with the colours in the place of their names. */
    String resolved(String svg) {
        String resolved = svg;
        for (Theme token : Theme.values()) {
            resolved = resolved.replace("var(" + token.variable() + ")", of(token));
        }
        return resolved;
    }

    /**
     * Returns how well two colours can be told apart, from 1 to 21.
     *
     * <pre>(L₁ + 0.05) / (L₂ + 0.05),  L = 0.2126 R + 0.7152 G + 0.0722 B</pre>
     *
     * <p>Source: W3C, Web Content Accessibility Guidelines 2.2, contrast ratio.
     */
    static double contrast(String one, String other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        return 0.2126 * linear(rgb >> 16 & 0xFF)
                + 0.7152 * linear(rgb >> 8 & 0xFF)
                + 0.0722 * linear(rgb & 0xFF);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4);
    }
}
