package org.twinbar.exchange;

import java.util.OptionalInt;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;

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

    Dialect with(DecimalMark mark, Thousands groups) {
        return new Dialect(encoding, delimiter, mark, groups, headerLine, unitLine);
    }

    /**
     * Reads the number that a cell of the file holds.
     *
     * @throws QuantityException where it holds none, or one with the other decimal mark
     */
    public double number(String cell) {
        Numeral numeral = Numeral.of(cell);
        boolean marked = decimalMark == DecimalMark.POINT
                ? numeral == Numeral.MAYBE_COMMA
                : numeral == Numeral.MAYBE_POINT;
        if (marked && thousands == Thousands.PLAIN) {
            throw new QuantityException(
                    "'%s' is not a number with a decimal %s".formatted(cell, decimalMark.word()));
        }
        return Numbers.parse(cell, decimalMark.sign());
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
