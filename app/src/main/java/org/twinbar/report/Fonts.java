package org.twinbar.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The typefaces of pages and PDF, from the jars that bring them. */
public final class Fonts {

    /** A weight of the one family; the second file holds the same weight for PDF. */
    public enum Weight {
        REGULAR("Inter-Regular.otf", "LiberationSans-Regular.ttf"),
        BOLD("Inter-SemiBold.otf", "LiberationSans-Bold.ttf");

        private final String screen;
        private final String print;

        Weight(String screen, String print) {
            this.screen = screen;
            this.print = print;
        }
    }

    private static final class Measured {
        static final Font REGULAR = load(Weight.REGULAR);
        static final Font BOLD = load(Weight.BOLD);
    }

    private Fonts() {}

    /** Returns the font file for screens, OpenType. */
    public static byte[] screen(Weight weight) {
        return read("/com/formdev/flatlaf/fonts/inter/" + weight.screen);
    }

    /** Returns the font file for PDF, TrueType. */
    static byte[] print(Weight weight) {
        return read("/liberation/" + weight.print);
    }

    /** Returns the font that charts are laid out with. */
    public static Font of(Weight weight, float size) {
        return (weight == Weight.BOLD ? Measured.BOLD : Measured.REGULAR).deriveFont(size);
    }

    private static Font load(Weight weight) {
        try (InputStream file = open("/com/formdev/flatlaf/fonts/inter/" + weight.screen)) {
            return Font.createFont(Font.TRUETYPE_FONT, file);
        } catch (FontFormatException e) {
            throw new IllegalStateException(weight.screen + " is not a font", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] read(String path) {
        try (InputStream file = open(path)) {
            return file.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String path) {
        InputStream file = Fonts.class.getResourceAsStream(path);
        if (file == null) {
            throw new IllegalStateException("the program's jar lacks the font " + path);
        }
        return file;
    }
}
