package org.twinbar.study;

import java.util.Map;
import java.util.Optional;

/** What cells of a table were corrected to; the table itself stays as it came. */
record Corrections(Map<Cell, Reading.Corrected> cells) {

    static final Corrections NONE = new Corrections(Map.of());

    /** A cell by its line in the file and its header. */
    record Cell(int line, String header) {}

    Corrections {
        cells = Map.copyOf(cells);
    }

    Optional<Reading.Corrected> of(int line, String header) {
        return cells.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(cells.get(new Cell(line, header)));
    }
}
