package org.twinbar.specimen;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Capital letters and figures that a nozzle can draw: straight strokes two units wide, gaps no
 * narrower, ten units high. They are our own; 0 is narrow and O is wide, 5 has a sharp corner where
 * S has none, so that no two are taken for each other.
 */
final class Glyphs {

    static final double HEIGHT = 10;
    static final double STROKE = 2;
    static final double GAP = 2;

    /**
     * A sign in units, standing at the origin.
     *
     * @param width of it
     * @param outer its outline, run leftwards
     * @param counters the islands within it, run leftwards
     */
    record Glyph(double width, List<Point> outer, List<List<Point>> counters) {}

    /** Corners as {@code x,y}; outlines of a sign parted by a bar, the outer one first. */
    private static final String[] DRAWN = {
        "0 1,0 5,0 6,1 6,9 5,10 1,10 0,9 0,1 | 2,2 4,2 4,8 2,8",
        "1 0,0 5,0 5,2 3.5,2 3.5,10 1.8,10 0,8.4 0,6 1.5,7.3 1.5,2 0,2",
        "2 0,0 6,0 6,2 2.9,2 6,5.8 6,9 5,10 1,10 0,9 0,7 2,7 2,8 4,8 4,6.4 0,1.6",
        "3 1,0 5,0 6,1 6,4.3 5.3,5 6,5.7 6,9 5,10 1,10 0,9 0,7.5 2,7.5 2,8 4,8 4,6 2,6 2,4"
                + " 4,4 4,2 2,2 2,2.5 0,2.5 0,1",
        "4 4,0 6,0 6,10 4,10 4,5 2,5 2,10 0,10 0,4 1,3 4,3",
        "5 1,0 5,0 6,1 6,5 5,6 2,6 2,8 6,8 6,10 0,10 0,4 4,4 4,2 2,2 2,2.5 0,2.5 0,1",
        "6 1,0 5,0 6,1 6,5 5,6 2,6 2,8 5.5,8 5.5,10 1,10 0,9 0,1 | 2,2 4,2 4,4 2,4",
        "7 1.2,0 3.4,0 6,8 6,10 0,10 0,8 3.8,8",
        "8 1,0 5,0 6,1 6,4.3 5.3,5 6,5.7 6,9 5,10 1,10 0,9 0,5.7 0.7,5 0,4.3 0,1"
                + " | 2,2 4,2 4,4 2,4 | 2,6 4,6 4,8 2,8",
        "9 5,10 1,10 0,9 0,5 1,4 4,4 4,2 0.5,2 0.5,0 5,0 6,1 6,9 | 2,6 4,6 4,8 2,8",
        "A 0,0 2,0 2,3 4,3 4,0 6,0 6,8 4,10 2,10 0,8 | 2,5 4,5 4,7.2 3.2,8 2.8,8 2,7.2",
        "B 0,0 5,0 6,1 6,4.3 5.3,5 6,5.7 6,9 5,10 0,10 | 2,2 4,2 4,4 2,4 | 2,6 4,6 4,8 2,8",
        "C 1,0 5,0 6,1 6,3 4,3 4,2 2,2 2,8 4,8 4,7 6,7 6,9 5,10 1,10 0,9 0,1",
        "D 0,0 4,0 6,2 6,8 4,10 0,10 | 2,2 3.2,2 4,2.8 4,7.2 3.2,8 2,8",
        "E 0,0 6,0 6,2 2,2 2,4 5,4 5,6 2,6 2,8 6,8 6,10 0,10",
        "F 0,0 2,0 2,4 5,4 5,6 2,6 2,8 6,8 6,10 0,10",
        "G 1,0 6,0 6,5.5 3.5,5.5 3.5,3.5 4,3.5 4,2 2,2 2,8 6,8 6,10 1,10 0,9 0,1",
        "H 0,0 2,0 2,4 4,4 4,0 6,0 6,10 4,10 4,6 2,6 2,10 0,10",
        "I 0,0 5,0 5,2 3.5,2 3.5,8 5,8 5,10 0,10 0,8 1.5,8 1.5,2 0,2",
        "J 1,0 5,0 6,1 6,10 4,10 4,2 2,2 2,3.5 0,3.5 0,1",
        "K 0,0 2,0 2,3.6 4,0 6.4,0 3.4,5 6.4,10 4,10 2,6.4 2,10 0,10",
        "L 0,0 6,0 6,2 2,2 2,10 0,10",
        "M 0,0 2,0 2,6 4.5,2.4 7,6 7,0 9,0 9,10 7,10 4.5,6 2,10 0,10",
        "N 0,0 2,0 2,6 6,0 8,0 8,10 6,10 6,4 2,10 0,10",
        "O 2,0 6,0 8,2 8,8 6,10 2,10 0,8 0,2 | 2.8,2 5.2,2 6,2.8 6,7.2 5.2,8 2.8,8 2,7.2 2,2.8",
        "P 0,0 2,0 2,4 5,4 6,5 6,9 5,10 0,10 | 2,6 4,6 4,8 2,8",
        "Q 2,0 8,0 8,8 6,10 2,10 0,8 0,2 | 2.8,2 4,2 4,4 6,4 6,7.2 5.2,8 2.8,8 2,7.2 2,2.8",
        "R 0,0 2,0 2,4 3.9,0 6,0 4.1,4 5,4 6,5 6,9 5,10 0,10 | 2,6 4,6 4,8 2,8",
        "S 1,0 5,0 6,1 6,5 5,6 2,6 2,8 4,8 4,7.5 6,7.5 6,9 5,10 1,10 0,9 0,5 1,4 4,4 4,2 2,2"
                + " 2,2.5 0,2.5 0,1",
        "T 2,0 4,0 4,8 6,8 6,10 0,10 0,8 2,8",
        "U 1,0 5,0 6,1 6,10 4,10 4,2 2,2 2,10 0,10 0,1",
        "V 2.5,0 4.5,0 7,10 4.9,10 3.5,4 2.1,10 0,10",
        "W 9,10 7,10 7,4 4.5,7.6 2,4 2,10 0,10 0,0 2,0 4.5,4 7,0 9,0",
        "X 0,0 2.3,0 3.5,2.9 4.7,0 7,0 4.7,5 7,10 4.7,10 3.5,7.1 2.3,10 0,10 2.3,5",
        "Y 2.5,0 4.5,0 4.5,4 7,10 4.8,10 3.5,6.6 2.2,10 0,10 2.5,4",
        "Z 0,0 6,0 6,2 2.6,2 6,8 6,10 0,10 0,8 3.4,8 0,2",
        "- 0,4 4,4 4,6 0,6",
        ". 0,0 2,0 2,2 0,2",
    };

    private static final Map<Character, Glyph> ALL = read();

    private Glyphs() {}

    static Map<Character, Glyph> all() {
        return ALL;
    }

    private static Map<Character, Glyph> read() {
        Map<Character, Glyph> all = new HashMap<>();
        for (String drawn : DRAWN) {
            List<List<Point>> lines = new ArrayList<>();
            for (String line : drawn.substring(2).split("\\|")) {
                lines.add(corners(line.strip()));
            }
            double width = lines.get(0).stream().mapToDouble(Point::x).max().orElseThrow();
            all.put(
                    drawn.charAt(0),
                    new Glyph(width, lines.get(0), List.copyOf(lines.subList(1, lines.size()))));
        }
        return Map.copyOf(all);
    }

    private static List<Point> corners(String line) {
        List<Point> corners = new ArrayList<>();
        for (String corner : line.split(" ")) {
            int comma = corner.indexOf(',');
            corners.add(new Point(
                    Double.parseDouble(corner.substring(0, comma)),
                    Double.parseDouble(corner.substring(comma + 1))));
        }
        return List.copyOf(corners);
    }
}
