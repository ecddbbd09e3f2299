package org.twinbar.exchange;

import java.util.OptionalInt;

/**
 * How a file is written.
 *
 * @param encoding how bytes become letters; UTF-8 for a spreadsheet
 * @param delimiter what stands between columns
 * @param decimalMark what stands in front of the decimals
 * @param thousands whether groups of three digits are marked off
 * @param headerLine the line that names the columns, counted from 1
 * @param unitLine the line below it that holds the units, where there is one
 */
public record Dialect(
        Encoding encoding,
        Delimiter delimiter,
        DecimalMark decimalMark,
        Thousands thousands,
        int headerLine,
        OptionalInt unitLine) {

    /** Returns the last line before the rows. */
    int lastHeaderLine() {
        return unitLine.orElse(headerLine);
    }

    /** Returns delimiter, decimal mark and encoding in words. */
    String explanation() {
        return "%s between columns, %s in decimals%s, %s"
                .formatted(
                        delimiter.word(),
                        decimalMark.word(),
                        thousands == Thousands.GROUPED ? ", thousands grouped" : "",
                        encoding.word());
    }
}
