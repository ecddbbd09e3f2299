package org.twinbar.study.table;

import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Table;

/** Reads a table of specimens from what was handed in. */
public final class TableFile {

    private TableFile() {}

    public static Table read(Upload upload) {
        return Table.read(upload.source(), ReadAs.found());
    }
}
