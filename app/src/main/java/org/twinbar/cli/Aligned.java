package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of cells, lined up for a terminal: words to the left, numbers by their decimal mark.
 *
 * <p>A cell of more than {@value #WIDEST} characters does not widen its column.
 */
final class Aligned {

    private static final int WIDEST = 44;

    private final List<String[]> rows = new ArrayList<>();

    Aligned row(String... cells) {
        rows.add(cells);
        return this;
    }

    @Override
    public String toString() {
        int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        int[] before = new int[columns];
        int[] width = new int[columns];
        for (int column = 0; column < columns; column++) {
            for (String[] row : rows) {
                if (column < row.length && isNumber(row[column])) {
                    before[column] = Math.max(before[column], upToMark(row[column]));
                }
            }
            for (String[] row : rows) {
                if (column < row.length) {
                    int length = length(placed(row[column], before[column]));
                    if (length <= WIDEST) {
                        width[column] = Math.max(width[column], length);
                    }
                }
            }
        }
        StringBuilder text = new StringBuilder();
        for (String[] row : rows) {
            StringBuilder line = new StringBuilder();
            for (int column = 0; column < row.length; column++) {
                String cell = placed(row[column], before[column]);
                line.append(cell);
                if (column < row.length - 1) {
                    line.append(" ".repeat(Math.max(0, width[column] - length(cell)) + 2));
                }
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }

    private static String placed(String cell, int before) {
        return isNumber(cell) ? " ".repeat(before - upToMark(cell)) + cell : cell;
    }

    private static boolean isNumber(String cell) {
        return cell.matches("[-−]?\\d.*") && !cell.matches(".*[A-Za-z]{5,}.*");
    }

    /** Returns how many characters stand before the decimal mark, or before the first blank. */
    private static int upToMark(String cell) {
        for (int at = 0; at < cell.length(); at++) {
            char c = cell.charAt(at);
            if (c != '-' && c != '−' && !Character.isDigit(c)) {
                return at;
            }
        }
        return cell.length();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
