package org.twinbar.study;

import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Table;

/** Reads a table of specimens from what was handed in. */
final class TableFile {

    private TableFile() {}

    static Table read(Upload upload) {
        return Table.read(upload.source(), ReadAs.found());
    }
}
