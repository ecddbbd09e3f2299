package org.twinbar.exchange;

import java.util.List;

/**
 * The cells of one row.
 *
 * @param line the line in the file that the row begins on, counted from 1
 * @param cells the texts, without blanks around them; a row may have fewer than the header names
 */
public record Row(int line, List<String> cells) {

    public Row {
        cells = List.copyOf(cells);
    }

    /** Returns a cell, empty where the row ends before it. */
    public String cell(int index) {
        return index < cells.size() ? cells.get(index) : "";
    }

    boolean isBlank() {
        return filledWidth() == 0;
    }

    /** Returns the number of cells up to the last one that holds something. */
    int filledWidth() {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).isEmpty()) {
            width--;
        }
        return width;
    }
}
