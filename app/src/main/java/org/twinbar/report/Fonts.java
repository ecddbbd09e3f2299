package org.twinbar.report;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;

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

    /** Places and tags in a font file (OpenType 1.9). */
    private static final int TABLES = 4;

    private static final int DIRECTORY = 12;
    private static final int DIRECTORY_ENTRY = 16;
    private static final int GLYPH_SUBSTITUTION = 0x47535542;
    private static final int NOBODY_ASKS_FOR = 0x78787878;

    private static final class Measured {
        static final Font REGULAR = load(Weight.REGULAR);
        static final Font BOLD = load(Weight.BOLD);
    }

    private Fonts() {}

    /** Returns the font file for screens, OpenType. */
    public static byte[] screen(Weight weight) {
        return read("/com/formdev/flatlaf/fonts/inter/" + weight.screen);
    }

    /**
     * Returns the font file for PDF, TrueType, without its table of ligatures: lines are measured
     * without them, and looking for them in each takes a sixth of the time that a report takes.
     */
    static byte[] print(Weight weight) {
        byte[] file = read("/liberation/" + weight.print);
        ByteBuffer font = ByteBuffer.wrap(file);
        int tables = font.getShort(TABLES);
        for (int table = 0; table < tables; table++) {
            int tag = DIRECTORY + DIRECTORY_ENTRY * table;
            if (font.getInt(tag) == GLYPH_SUBSTITUTION) {
                font.putInt(tag, NOBODY_ASKS_FOR);
            }
        }
        return file;
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
