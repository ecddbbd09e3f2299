package org.twinbar.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.twinbar.quantity.Unit;

/**
 * What a person says about how a file is to be read; what they leave open is found from the file.
 *
 * @param delimiter what stands between columns
 * @param decimalMark point or comma
 * @param encoding how bytes become letters
 * @param sheet name or number (from 1) of a spreadsheet's sheet
 * @param columns columns named by hand
 */
public record ReadAs(
        Optional<Delimiter> delimiter,
        Optional<DecimalMark> decimalMark,
        Optional<Encoding> encoding,
        Optional<String> sheet,
        List<NamedColumn> columns) {

    public ReadAs {
        columns = List.copyOf(columns);
    }

    /** Leaves everything to be found from the file. */
    public static ReadAs found() {
        return new ReadAs(
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
    }

    public ReadAs withDelimiter(Delimiter forced) {
        return new ReadAs(Optional.of(forced), decimalMark, encoding, sheet, columns);
    }

    public ReadAs withDecimalMark(DecimalMark forced) {
        return new ReadAs(delimiter, Optional.of(forced), encoding, sheet, columns);
    }

    public ReadAs withEncoding(Encoding forced) {
        return new ReadAs(delimiter, decimalMark, Optional.of(forced), sheet, columns);
    }

    public ReadAs withSheet(String nameOrNumber) {
        return new ReadAs(delimiter, decimalMark, encoding, Optional.of(nameOrNumber), columns);
    }

    public ReadAs withColumn(NamedColumn column) {
        List<NamedColumn> all = new ArrayList<>(columns);
        all.add(column);
        return new ReadAs(delimiter, decimalMark, encoding, sheet, all);
    }

    /**
     * A column that a person named, because its header doesn't.
     *
     * @param name what the column is, such as {@code force}
     * @param header the header that stands in the file
     * @param unit its unit; empty to take the header's
     */
    public record NamedColumn(String name, String header, Optional<Unit> unit) {

        /**
         * Reads the value of {@code --column}: {@code force="Load cell 1":kgf}, the unit being
         * optional.
         *
         * @throws InputException where there is no name or no header
         */
        public static NamedColumn parse(String text) {
            int equals = text.indexOf('=');
            String name = equals < 0 ? "" : text.substring(0, equals).strip();
            String rest = text.substring(equals + 1).strip();
            int colon = rest.lastIndexOf(':');
            Optional<Unit> unit =
                    colon < 0 ? Optional.empty() : Unit.find(rest.substring(colon + 1));
            String header = unquoted(unit.isPresent() ? rest.substring(0, colon) : rest);
            if (name.isEmpty() || header.isEmpty()) {
                throw new InputException("--column %s: write name=header or name=header:unit"
                        .formatted(Place.quote(text)));
            }
            return new NamedColumn(name, header, unit);
        }

        private static String unquoted(String text) {
            String plain = text.strip();
            return plain.length() >= 2 && plain.startsWith("\"") && plain.endsWith("\"")
                    ? plain.substring(1, plain.length() - 1)
                    : plain;
        }
    }
}
