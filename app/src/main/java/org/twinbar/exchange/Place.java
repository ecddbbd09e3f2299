package org.twinbar.exchange;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in somebody's input something stands.
 *
 * @param file the file's name as it was given
 * @param line the line in the file, counted from 1, text before the header included
 * @param column the column's header
 * @param value the text that stands there
 */
public record Place(
        String file, OptionalInt line, Optional<String> column, Optional<String> value) {

    private static final int LONGEST_QUOTE = 60;

    public static Place of(String file) {
        return new Place(file, OptionalInt.empty(), Optional.empty(), Optional.empty());
    }

    public Place line(int number) {
        return new Place(file, OptionalInt.of(number), column, value);
    }

    public Place column(String header) {
        return new Place(file, line, Optional.of(header), value);
    }

    public Place value(String text) {
        return new Place(file, line, column, Optional.of(text));
    }

    /** Returns {@code specimens.csv, line 3, column width_mm}. */
    public String describe() {
        StringBuilder words = new StringBuilder(file);
        line.ifPresent(number -> words.append(", line ").append(number));
        column.ifPresent(header -> words.append(", column ").append(header));
        return words.toString();
    }

    /** Returns the exception that refuses what stands here; the sentence goes on after a colon. */
    public InputException refuse(String sentence) {
        return new InputException(this, describe() + ": " + sentence);
    }

    /** Returns the exception that refuses the value that stands here: {@code 'abc' is not …}. */
    public InputException refuseValue(String sentence) {
        return refuse(quote(value.orElse("")) + " " + sentence);
    }

    /** A text as it may stand in a one-line message: quoted, shortened, without line ends. */
    static String quote(String text) {
        String plain = text.strip().replaceAll("\\p{Cntrl}+", " ");
        return "'"
                + (plain.length() > LONGEST_QUOTE ? plain.substring(0, LONGEST_QUOTE) + "…" : plain)
                + "'";
    }
}
