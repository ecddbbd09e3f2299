package org.twinbar.web;

import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.study.FieldException;
import org.twinbar.study.Filled;
import org.twinbar.treatment.Film;

/**
 * How much a coat takes.
 *
 * @param area of one specimen (mm²)
 * @param each mix for one (g)
 * @param all mix for all, with the reserve (g)
 */
public record CoatView(
        double area,
        int specimens,
        double film,
        int coats,
        double each,
        double all,
        double reserve,
        OptionalDouble wet) {

    private static final Unit SQUARE_MILLIMETRES = Unit.of("mm²");
    private static final Unit SQUARE_CENTIMETRES = Unit.of("cm²");
    private static final Unit MICROMETRES = Unit.of("µm");
    private static final Unit DENSITY = Unit.of("g/cm³");
    private static final int MOST_SPECIMENS = 10_000;
    private static final int MOST_COATS = 20;

    /** Of a brush on small parts; common practice, no source. */
    static final double USUAL_TRANSFER = 0.85;

    static final double USUAL_RESERVE = 0.1;

    /** @throws FieldException with the field that is missing or wrong */
    static CoatView of(Filled form) {
        double area = area(form);
        double film = form.number("film", MICROMETRES, "how thick the dry film is to be");
        double density = form.number("density", DENSITY, "the density of the mix");
        Film coat = form.at("density", () -> new Film(area, density));
        double transfer = form.share("transfer").orElse(USUAL_TRANSFER);
        double reserve = form.share("reserve").orElse(USUAL_RESERVE);
        int specimens = form.whole("specimens", 1, MOST_SPECIMENS).orElse(1);
        int coats = form.whole("coats", 1, MOST_COATS).orElse(1);
        form.at("film", () -> coat.grams(film));
        double each = form.at("transfer", () -> coat.needed(film, transfer));
        double all = form.at("reserve", () -> coat.batch(film, transfer, specimens, reserve));
        OptionalDouble solids = form.share("solids");
        OptionalDouble wet = solids.isPresent()
                ? OptionalDouble.of(
                        form.at("solids", () -> Film.wet(film / coats, solids.getAsDouble())))
                : OptionalDouble.empty();
        return new CoatView(area, specimens, film, coats, each, all, reserve, wet);
    }

    /** Returns the area that was typed, else that of the shape (mm²). */
    private static double area(Filled form) {
        OptionalDouble typed = form.number("area", SQUARE_CENTIMETRES);
        if (typed.isPresent()) {
            double area = SQUARE_CENTIMETRES.to(SQUARE_MILLIMETRES).apply(typed.getAsDouble());
            form.at("area", () -> new Film(area, 1));
            return area;
        }
        return form.said("shape")
                .flatMap(StandardShapes::named)
                .map(Shape::solid)
                .map(solid -> solid.area())
                .orElseThrow(() -> new FieldException(
                        "area", "choose a shape, hand in a mesh, or write down the area"));
    }

    public String areaWords() {
        return Written.number(area / 100, 4) + "\u2009cm²";
    }

    /** Returns how much to mix, in a sentence. */
    public String sentence() {
        return "Mix %s for %s of %s: %s each, and %s in reserve."
                .formatted(
                        grams(all),
                        Words.count(specimens, "specimen"),
                        areaWords(),
                        grams(each),
                        Written.percent(reserve));
    }

    public List<String> more() {
        String coat = coats == 1
                ? "One coat of %s".formatted(micrometres(film))
                : "%s coats of %s, %s of mix for each"
                        .formatted(coats, micrometres(film / coats), grams(all / coats));
        return wet.isPresent()
                ? List.of(
                        coat + ".",
                        "Spread each coat %s wet.".formatted(micrometres(wet.getAsDouble())))
                : List.of(coat + ".");
    }

    /** Returns the mass of one coat as the page of mixing takes it. */
    public String total() {
        return Written.number(all / coats, 3);
    }

    private static String grams(double grams) {
        return Written.number(grams, 3) + "\u2009g";
    }

    private static String micrometres(double thickness) {
        return Written.number(thickness, 3) + "\u2009µm";
    }
}
