package org.twinbar.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What stands between the columns of a table. */
public enum Delimiter {
    TAB('\t'),
    SEMICOLON(';'),
    COMMA(','),
    /** One or more spaces or tabs. */
    BLANKS(' '),
    /** Nothing: there is one column. */
    NONE('\0'),
    /** The cells of a spreadsheet. */
    CELLS('\0');

    private final char sign;

    Delimiter(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }

    /** Returns the word for it, as {@code --delimiter} takes it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Reads the value of {@code --delimiter}.
     *
     * @throws InputException where the word is none of them
     */
    public static Delimiter parse(String text) {
        Optional<Delimiter> found = Arrays.stream(values())
                .filter(it -> it != CELLS)
                .filter(it -> it.word().equals(text) || text.equals("" + it.sign))
                .findFirst();
        return found.orElseThrow(() ->
                new InputException("--delimiter %s: write comma, semicolon, tab, blanks or none"
                        .formatted(Place.quote(text))));
    }

    /** Splits one line; a quoted cell may hold the delimiter, and two quotes stand for one. */
    List<String> split(String line) {
        return this == BLANKS ? splitAtBlanks(line) : splitAtSign(line);
    }

    private List<String> splitAtSign(String line) {
        if (this == NONE || this == CELLS) {
            return List.of(unquoted(line));
        }
        List<String> cells = new ArrayList<>();
        int start = 0;
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && (quoted || line.substring(start, i).isBlank())) {
                quoted = !quoted;
            } else if (c == '"' && i > 0 && line.charAt(i - 1) == '"') {
                quoted = true;
            } else if (c == sign && !quoted) {
                cells.add(unquoted(line.substring(start, i)));
                start = i + 1;
            }
        }
        cells.add(unquoted(line.substring(start)));
        return cells;
    }

    private static List<String> splitAtBlanks(String line) {
        List<String> cells = new ArrayList<>();
        int i = 0;
        while (i < line.length()) {
            if (isBlank(line.charAt(i))) {
                i++;
                continue;
            }
            int end = i;
            if (line.charAt(i) == '"' && line.indexOf('"', i + 1) > 0) {
                end = line.indexOf('"', i + 1) + 1;
            }
            while (end < line.length() && !isBlank(line.charAt(end))) {
                end++;
            }
            cells.add(unquoted(line.substring(i, end)));
            i = end;
        }
        return cells;
    }

    private static boolean isBlank(char c) {
        return c == ' ' || c == '\t';
    }

    private static String unquoted(String cell) {
        String text = cell.strip();
        return text.length() >= 2 && text.startsWith("\"") && text.endsWith("\"")
                ? text.substring(1, text.length() - 1).replace("\"\"", "\"").strip()
                : text;
    }
}
