package org.twinbar.exchange;

import java.util.List;
import java.util.Optional;

/** Finds from rows of cells which decimal mark a file has. */
final class Marks {

    private final Place file;
    private int points;
    private int commas;
    private int grouped;
    private Optional<Place> maybePoint = Optional.empty();
    private Optional<Place> maybeComma = Optional.empty();

    Marks(Place file) {
        this.file = file;
    }

    void see(Row row) {
        List<String> cells = row.cells();
        for (int i = 0; i < cells.size(); i++) {
            String cell = cells.get(i);
            switch (Numeral.of(cell)) {
                case POINT -> points++;
                case COMMA -> commas++;
                case POINT_GROUPED -> {
                    points++;
                    grouped++;
                }
                case COMMA_GROUPED -> {
                    commas++;
                    grouped++;
                }
                case MAYBE_POINT ->
                    maybePoint = maybePoint.or(
                            () -> Optional.of(file.line(row.line()).value(cell)));
                case MAYBE_COMMA ->
                    maybeComma = maybeComma.or(
                            () -> Optional.of(file.line(row.line()).value(cell)));
                default -> {}
            }
        }
    }

    /** Returns whether anything told the decimal mark; until then more rows may. */
    boolean areSeen() {
        return points + commas > 0;
    }

    /**
     * Returns the decimal mark.
     *
     * @throws InputException where the rows leave open which it is, or whether a mark stands for
     *     thousands
     */
    DecimalMark decimal() {
        if (points > 0 && commas > 0) {
            throw file.refuse("has decimal points and decimal commas; say which one it is by"
                    + " --decimal point or --decimal comma");
        }
        if (!areSeen()) {
            maybeComma.ifPresent(Marks::refuseAsOpen);
            return DecimalMark.POINT;
        }
        if (grouped == 0) {
            (commas > 0 ? maybePoint : maybeComma).ifPresent(Marks::refuseAsOpen);
        }
        return commas > 0 ? DecimalMark.COMMA : DecimalMark.POINT;
    }

    private static void refuseAsOpen(Place place) {
        throw place.refuseValue(
                "may be a thousand or one and a bit; say --decimal point or --decimal comma");
    }

    Thousands thousands() {
        return grouped > 0 ? Thousands.GROUPED : Thousands.PLAIN;
    }
}
