package org.twinbar.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.Deflater;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.OTFParser;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Makes a web font of the few characters that a page uses, small enough to stand inside the page.
 *
 * <p>Glyphs keep their numbers: the outlines that are not used become empty and pack to almost
 * nothing, so that no table has to be renumbered. Digits are mapped to their tabular forms, kerning
 * and other features are dropped. Formats: OpenType 1.9 (cmap format 12), Compact Font Format
 * (Adobe technical note 5176), WOFF 1.0 (W3C recommendation of 2012).
 */
final class WebFont {

    private static final int WOFF = 0x774F4646;
    private static final int OTTO = 0x4F54544F;
    private static final Set<String> DROPPED = Set.of("GPOS", "GSUB", "GDEF", "cmap", "DSIG");

    private WebFont() {}

    /** Returns the font file for a style sheet: those of the characters that the font has. */
    static byte[] of(byte[] openType, Set<Integer> codePoints) {
        try (OpenTypeFont font = new OTFParser().parse(new RandomAccessReadBuffer(openType))) {
            font.enableGsubFeature("tnum");
            SortedMap<Integer, Integer> glyphs = glyphs(font, codePoints);
            SortedMap<String, byte[]> tables = new TreeMap<>();
            for (var table : font.getTables()) {
                if (!DROPPED.contains(table.getTag())) {
                    tables.put(table.getTag(), font.getTableBytes(table));
                }
            }
            Set<Integer> used = new HashSet<>(glyphs.values());
            used.add(0);
            tables.computeIfPresent("CFF ", (tag, cff) -> CompactFont.emptied(cff, used));
            tables.put("cmap", characterMap(glyphs));
            return woff(tables);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SortedMap<Integer, Integer> glyphs(OpenTypeFont font, Set<Integer> codePoints)
            throws IOException {
        CmapLookup lookup = font.getUnicodeCmapLookup();
        SortedMap<Integer, Integer> glyphs = new TreeMap<>();
        for (int codePoint : codePoints) {
            int glyph = lookup.getGlyphId(codePoint);
            if (glyph > 0) {
                glyphs.put(codePoint, glyph);
            }
        }
        return glyphs;
    }

    /** One segmented map of Unicode, a group for each character. */
    private static byte[] characterMap(SortedMap<Integer, Integer> glyphs) {
        ByteBuffer map = ByteBuffer.allocate(12 + 16 + 12 * glyphs.size());
        map.putShort((short) 0).putShort((short) 1);
        map.putShort((short) 3).putShort((short) 10).putInt(12);
        map.putShort((short) 12).putShort((short) 0);
        map.putInt(16 + 12 * glyphs.size()).putInt(0).putInt(glyphs.size());
        glyphs.forEach(
                (codePoint, glyph) -> map.putInt(codePoint).putInt(codePoint).putInt(glyph));
        return map.array();
    }

    private static byte[] woff(SortedMap<String, byte[]> tables) {
        int head = 44 + 20 * tables.size();
        ByteBuffer directory = ByteBuffer.allocate(20 * tables.size());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        int unpacked = 12 + 16 * tables.size();
        for (Map.Entry<String, byte[]> table : tables.entrySet()) {
            byte[] plain = table.getValue();
            byte[] packed = packed(plain);
            byte[] stored = packed.length < plain.length ? packed : plain;
            directory.put(table.getKey().getBytes(StandardCharsets.US_ASCII));
            directory.putInt(head + data.size()).putInt(stored.length);
            directory.putInt(plain.length).putInt(checksum(plain));
            data.writeBytes(stored);
            data.writeBytes(new byte[padding(stored.length)]);
            unpacked += plain.length + padding(plain.length);
        }
        ByteBuffer file = ByteBuffer.allocate(head + data.size());
        file.putInt(WOFF).putInt(OTTO).putInt(file.capacity());
        file.putShort((short) tables.size()).putShort((short) 0).putInt(unpacked);
        file.putShort((short) 1).putShort((short) 0);
        file.position(44);
        return file.put(directory.array()).put(data.toByteArray()).array();
    }

    private static byte[] packed(byte[] plain) {
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        deflater.setInput(plain);
        deflater.finish();
        byte[] buffer = new byte[plain.length + 64];
        int length = deflater.deflate(buffer);
        deflater.end();
        return java.util.Arrays.copyOf(buffer, length);
    }

    /** The sum of the table's 32-bit words, as OpenType defines it. */
    private static int checksum(byte[] table) {
        ByteBuffer words =
                ByteBuffer.allocate(table.length + padding(table.length)).put(table);
        words.rewind();
        int sum = 0;
        while (words.hasRemaining()) {
            sum += words.getInt();
        }
        return sum;
    }

    private static int padding(int length) {
        return (4 - length % 4) % 4;
    }
}
