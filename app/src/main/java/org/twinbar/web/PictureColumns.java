package org.twinbar.web;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.twinbar.method.Input;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Picturing;
import org.twinbar.study.TypedTest;

/**
 * Where what was measured on a picture may be kept: the fields of one specimen that a picture or a
 * film can show.
 *
 * @param curve the cell of its curve's name, where the table has room for one
 * @param curveColumn that cell's header; empty where there is none
 */
public record PictureColumns(
        String specimen,
        List<Offered> offered,
        Optional<TypedTest.Cell> curve,
        String curveColumn) {

    private static final Map<String, Unit> SEEN = Map.of(
            "length", Unit.of("mm"),
            "angle", Unit.of("°"),
            "temperature", Unit.of("°C"),
            "time", Unit.of("s"));

    public PictureColumns {
        offered = List.copyOf(offered);
    }

    /**
     * A field.
     *
     * @param measures what it holds, as an offer of the page says it
     * @param text what stands there now
     * @param seen the last entry there; empty where there is none
     */
    public record Offered(TypedTest.Field field, String measures, String text, String seen) {

        public String label() {
            String unit = field.unit().symbol();
            return unit.isEmpty() ? field.label() : "%s (%s)".formatted(field.label(), unit);
        }
    }

    static PictureColumns of(
            TypedTest test, TypedTest.Specimen specimen, Optional<Picturing.Room> room) {
        return new PictureColumns(
                specimen.code(),
                test.fields().stream()
                        .filter(field -> field.named() instanceof Input)
                        .filter(field -> !measures(field.unit()).isEmpty())
                        .map(field -> {
                            TypedTest.Cell cell = specimen.cell(field);
                            return new Offered(
                                    field, measures(field.unit()), cell.text(), entry(cell));
                        })
                        .toList(),
                room.map(Picturing.Room::now),
                room.map(Picturing.Room::column).orElse(""));
    }

    /** Returns what a unit measures among what is seen on pictures; empty where nothing is. */
    static String measures(Unit unit) {
        return SEEN.entrySet().stream()
                .filter(it -> it.getValue().measuresSameAs(unit))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
    }

    public String curveSeen() {
        return curve.map(PictureColumns::entry).orElse("");
    }

    private static String entry(TypedTest.Cell cell) {
        return cell.entry().map(UUID::toString).orElse("");
    }
}
