package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.DecimalMark;
import org.twinbar.exchange.Delimiter;
import org.twinbar.exchange.Encoding;
import org.twinbar.exchange.ReadAs;
import picocli.CommandLine.Option;

/** Options that say how tables are to be read where it can't be found from the file. */
final class ReadingOptions {

    @Option(
            names = "--column",
            paramLabel = "NAME=HEADER[:UNIT]",
            description = "Names a column, and its unit, where the header doesn't.")
    List<String> columns = new ArrayList<>();

    @Option(
            names = "--delimiter",
            paramLabel = "comma|semicolon|tab|blanks",
            description = "What stands between columns.")
    @Nullable
    String delimiter;

    @Option(names = "--decimal", paramLabel = "point|comma", description = "The decimal mark.")
    @Nullable
    String decimal;

    @Option(
            names = "--encoding",
            paramLabel = "NAME",
            description = "utf-8, utf-16 or windows-1252.")
    @Nullable
    String encoding;

    @Option(
            names = "--sheet",
            paramLabel = "NAME|NUMBER",
            description = "The sheet of a spreadsheet; the first one unless said.")
    @Nullable
    String sheet;

    @Option(names = "--explain", description = "Says how the table was read.")
    boolean explain;

    ReadAs readAs() {
        return readAs(name -> true);
    }

    /** Returns how to read, with the columns of these names alone. */
    ReadAs readAs(Predicate<String> named) {
        ReadAs as = ReadAs.found();
        if (delimiter != null) {
            as = as.withDelimiter(Delimiter.parse(delimiter));
        }
        if (decimal != null) {
            as = as.withDecimalMark(DecimalMark.parse(decimal));
        }
        if (encoding != null) {
            as = as.withEncoding(Encoding.parse(encoding));
        }
        if (sheet != null) {
            as = as.withSheet(sheet);
        }
        for (String column : columns) {
            ReadAs.NamedColumn parsed = ReadAs.NamedColumn.parse(column);
            if (named.test(parsed.name())) {
                as = as.withColumn(parsed);
            }
        }
        return as;
    }

    /** Returns how to read curves: columns of these names, and what was said of numbers. */
    ReadAs curvesReadAs(java.util.Set<String> channels) {
        ReadAs as = ReadAs.found();
        for (String column : columns) {
            ReadAs.NamedColumn parsed = ReadAs.NamedColumn.parse(column);
            if (channels.contains(parsed.name())) {
                as = as.withColumn(parsed);
            }
        }
        return as;
    }
}
