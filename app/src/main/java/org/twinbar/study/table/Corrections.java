package org.twinbar.study.table;

import java.util.Map;
import java.util.Optional;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Reading;

/**
 * What was said of cells of a table after it came: readings that were typed where it had none, and
 * corrections. The table itself stays as it came.
 */
public record Corrections(Map<Cell, Said> cells) {

    public static final Corrections NONE = new Corrections(Map.of());

    /** A cell by its line in the file and its header. */
    public record Cell(int line, String header) {}

    /**
     * What was said of one cell.
     *
     * @param typed the first reading, where the table had none
     * @param corrected what that, or what stood in the table, was corrected to last
     * @param picture how what counts was had, where that was from a picture
     */
    public record Said(
            Optional<Reading.Typed> typed,
            Optional<Reading.Corrected> corrected,
            Optional<OnPicture> picture) {

        public Said {
            if (typed.isEmpty() && corrected.isEmpty()) {
                throw new IllegalArgumentException("nothing was said of the cell");
            }
        }

        public static Said first(Reading.Typed typed, Optional<OnPicture> picture) {
            return new Said(Optional.of(typed), Optional.empty(), picture);
        }

        /** Returns what counts now. */
        public String counting() {
            return corrected
                    .map(Reading.Corrected::text)
                    .or(() -> typed.map(Reading.Typed::text))
                    .orElseThrow();
        }
    }

    public Corrections {
        cells = Map.copyOf(cells);
    }

    /**
     * Returns what was read in a cell, with what was said of it since; empty where nothing was.
     *
     * @param inFile what stands in the file
     */
    public Optional<Reading> reading(String header, String inFile, KeptFile file, int line) {
        Optional<Said> said = of(line, header);
        if (said.isEmpty() && inFile.isEmpty()) {
            return Optional.empty();
        }
        Optional<Reading.Typed> typed = said.flatMap(Said::typed);
        return Optional.of(new Reading(
                header,
                typed.map(Reading.Typed::text).orElse(inFile),
                file,
                line,
                typed,
                said.flatMap(Said::corrected),
                said.flatMap(Said::picture).map(OnPicture::file)));
    }

    public Optional<Said> of(int line, String header) {
        return cells.isEmpty()
                ? Optional.empty()
                : Optional.ofNullable(cells.get(new Cell(line, header)));
    }
}
