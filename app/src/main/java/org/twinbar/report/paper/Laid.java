package org.twinbar.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A form laid out: columns as wide as a pen needs, and as many tables as that takes.
 *
 * @param form what is laid out
 * @param tables that fit on the paper
 */
public record Laid(Form form, List<Table> tables) {

    private static final double NUMBER = 12.5;
    private static final double WORDS = 22;
    private static final double FACT = 17;
    private static final double CODE = 31;

    /** The side of a code of squares, its margin included (mm). */
    private static final double SQUARES = 12;

    /** Columns grow no wider than this times what a pen needs. */
    private static final double WIDEST = 1.6;

    public Laid {
        tables = List.copyOf(tables);
    }

    /** @param room width between the margins (mm) */
    static Laid of(Form form, double room) {
        List<Table> tables = new ArrayList<>();
        for (Form.Part part : form.parts()) {
            double left = room - fixed(part);
            List<Field> taken = new ArrayList<>();
            double width = 0;
            boolean first = true;
            for (Field field : part.fields()) {
                if (width + needed(field) > left && !taken.isEmpty()) {
                    tables.add(new Table(part, taken, first, room));
                    first = false;
                    taken = new ArrayList<>();
                    width = 0;
                }
                taken.add(field);
                width += needed(field);
            }
            tables.add(new Table(part, taken, first, room));
        }
        return new Laid(form, tables);
    }

    /** Returns how wide a part would be in one table (mm). */
    static double width(Form.Part part) {
        return fixed(part) + part.fields().stream().mapToDouble(Laid::needed).sum();
    }

    private static double fixed(Form.Part part) {
        return CODE + FACT * part.facts().size();
    }

    private static double needed(Field field) {
        if (!field.choices().isEmpty()) {
            int longest =
                    field.choices().stream().mapToInt(String::length).max().orElse(0);
            return Math.max(NUMBER + 4, 4 + 1.7 * longest);
        }
        boolean isWords = field.unit().isEmpty() && field.how().isEmpty();
        return Math.max(longestWord(field.label()), field.times() * (isWords ? WORDS : NUMBER));
    }

    /** Returns how wide a header must be for the longest word in it (mm). */
    private static double longestWord(String label) {
        int longest =
                Stream.of(label.split("[ -]")).mapToInt(String::length).max().orElse(0);
        return 3 + 1.65 * longest;
    }

    /**
     * A table with some of a part's fields.
     *
     * @param isFirst whether what stands above the part goes here
     * @param room how wide it may be (mm)
     */
    public record Table(Form.Part part, List<Field> fields, boolean isFirst, double room) {

        public Table {
            fields = List.copyOf(fields);
        }

        /** Returns whether a second row of headers numbers the places. */
        public boolean hasPlaces() {
            return fields.stream().anyMatch(it -> it.times() > 1);
        }

        /** Returns the width of one of a field's columns (mm). */
        public double width(Field field) {
            double taken = fields.stream().mapToDouble(Laid::needed).sum();
            double wider = Math.min(WIDEST, (room - fixed(part)) / taken);
            return needed(field) * Math.max(1, wider) / field.times();
        }

        public double codeWidth() {
            return CODE;
        }

        public double factWidth() {
            return FACT;
        }

        /** Returns a specimen's code as squares, an SVG picture. */
        public String squares(Form.Line line) {
            return Squares.svg(line.code(), SQUARES);
        }
    }
}
