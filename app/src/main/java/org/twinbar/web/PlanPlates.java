package org.twinbar.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.twinbar.planning.Series;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.specimen.Bed;
import org.twinbar.specimen.Plate;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;
import org.twinbar.specimen.ToPrint;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Registered;

/** The print runs of a plan laid out on a bed, each specimen with its code. */
final class PlanPlates {

    /** A common bed; common practice, no source. */
    static final String USUAL_BED = "220x220";

    private static final Unit MILLIMETRES = Unit.of("mm");

    /** Largest distance of a chord from its arc in a file to print (mm). */
    static final double TO_PRINT = 0.01;

    /** The same in a picture. */
    static final double TO_SEE = 0.2;

    private PlanPlates() {}

    /** Returns the shape of a kind of specimens; empty where it is none of ours. */
    static Optional<Shape> shape(Series series) {
        return StandardShapes.named(series.shape());
    }

    /** @throws Refusal where the form says no size of a bed */
    static Bed bed(Form form) {
        String size = form.said("bed").orElse(USUAL_BED);
        String bare = size.replaceAll("\\s*mm\\s*", "");
        String[] sides = bare.split("[x×]", -1);
        if (sides.length != 2) {
            throw Refusal.badRequest(
                    "'%s' is no size of a bed: write length and width in millimetres, such as 220x220."
                            .formatted(size));
        }
        return new Bed(
                millimetres(sides[0]),
                millimetres(sides[1]),
                form.said("gap").map(PlanPlates::millimetres).orElse(Bed.USUAL_GAP));
    }

    private static double millimetres(String text) {
        try {
            return Quantity.parse(text, MILLIMETRES);
        } catch (QuantityException e) {
            throw Refusal.badRequest(Words.sentence(String.valueOf(e.getMessage())));
        }
    }

    /**
     * Lays a run out.
     *
     * @param chord largest distance of a chord from its arc (mm)
     * @throws Refusal where the plan has no such run, or a shape is none of ours
     * @throws org.twinbar.specimen.ShapeException where the bed is too small
     */
    static Plate plate(Making making, int run, Bed bed, double chord) {
        List<Registered> inPlace = making.made().stream()
                .filter(it -> it.placed().run() == run)
                .sorted(Comparator.comparingInt(it -> it.placed().position()))
                .toList();
        if (inPlace.isEmpty()) {
            throw Refusal.notFound("The plan has no print run %s.".formatted(run));
        }
        List<ToPrint> specimens = new ArrayList<>();
        for (Registered one : inPlace) {
            Shape shape = shape(one.series())
                    .orElseThrow(() -> Refusal.badRequest(
                            "%s are of a shape that Twinbar has no file of: lay them out in your own program, in the order of their places."
                                    .formatted(one.series().name())));
            specimens.add(
                    ToPrint.of(shape, Optional.of(one.code()), one.series().orientation()));
        }
        return Plate.of(bed, specimens, chord);
    }
}
