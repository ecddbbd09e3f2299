package org.twinbar.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.MeshBuilder;

/** STL as text, read word by word, so that a line without an end costs no memory. */
final class StlText {

    private static final int LONGEST_WORD = 4096;

    private final String file;
    private final Reader reader;
    private final MeshBuilder builder = new MeshBuilder();
    private int line = 1;
    private int last = '\n';

    private StlText(String file, Reader reader) {
        this.file = file;
        this.reader = reader;
    }

    static Mesh read(String file, InputStream in) throws IOException {
        Reader reader =
                new BufferedReader(new InputStreamReader(in, StandardCharsets.ISO_8859_1), 1 << 16);
        return new StlText(file, reader).mesh();
    }

    private Mesh mesh() throws IOException {
        List<Mesh.Place> facet = new ArrayList<>();
        boolean ended = false;
        for (String word = word(); !word.isEmpty(); word = word()) {
            String plain = word.toLowerCase(Locale.ROOT);
            if (plain.equals("solid")) {
                skipName();
            } else if (plain.equals("vertex")) {
                facet.add(new Mesh.Place(number(), number(), number()));
            } else if (plain.equals("endfacet")) {
                add(facet);
                facet.clear();
            } else if (plain.equals("endsolid")) {
                ended = true;
                skipName();
            }
        }
        if (!ended || !facet.isEmpty()) {
            throw Place.of(file).line(line).refuse("ends without endsolid: the file is cut off");
        }
        if (builder.count() == 0) {
            throw Place.of(file).refuse("has no triangles");
        }
        return builder.build();
    }

    private void add(List<Mesh.Place> facet) {
        if (facet.size() != 3) {
            throw Place.of(file)
                    .line(line)
                    .refuse("a facet has 3 corners, not %s".formatted(facet.size()));
        }
        if (builder.count() == MeshFile.MOST_TRIANGLES) {
            throw MeshFile.tooMany(file, Long.MAX_VALUE);
        }
        builder.add(facet.get(0), facet.get(1), facet.get(2));
    }

    private double number() throws IOException {
        int at = line;
        String word = word();
        try {
            return Numbers.parse(word, '.');
        } catch (QuantityException e) {
            throw Place.of(file).line(at).value(word).refuseValue("is not a coordinate");
        }
    }

    /** Passes over the rest of the line: a body's name, whatever words are in it. */
    private void skipName() throws IOException {
        while (last >= 0 && last != '\n' && last != '\r') {
            next();
        }
    }

    private int next() throws IOException {
        last = reader.read();
        line += last == '\n' ? 1 : 0;
        return last;
    }

    /** Returns the next word; an empty one at the end. */
    private String word() throws IOException {
        StringBuilder word = new StringBuilder();
        for (int c = next(); c >= 0; c = next()) {
            boolean blank = Character.isWhitespace(c);
            if (blank && !word.isEmpty()) {
                return word.toString();
            }
            if (!blank) {
                word.append((char) c);
            }
            if (word.length() > LONGEST_WORD) {
                throw Place.of(file).line(line).refuse("holds a word too long for a mesh");
            }
        }
        return word.toString();
    }
}
