package org.twinbar.method.dimensions;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;

/** What a person should know about one part's change. */
final class DimensionsFindings {

    static final Finding.Kind BELOW_READING = Finding.Kind.note(
            "change-below-reading",
            "The %s changed by %s %s, less than two readings can tell (%s %s); the mean of"
                    + " several places tells more.");
    static final Finding.Kind FILMS_DISAGREE = Finding.Kind.warning(
            "films-disagree",
            "The film is %s µm by thickness and %s µm by mass, further apart than the readings"
                    + " explain: it is uneven, soaked into the part, or the part itself changed.");
    static final Finding.Kind THINNER = Finding.Kind.warning(
            "thinner-after-treatment",
            "It became thinner by %s mm, so no film can be told from its thickness: the part"
                    + " shrank, or it was sanded.");
    static final Finding.Kind WARPED_APART = Finding.Kind.note(
            "shrank-one-way",
            "It shrank by %s %% in %s and grew by %s %% in %s, as prints do whose strands relax in"
                    + " the heat; a film is not to be told from that growth.");

    /** A difference beyond this many standard uncertainties of its readings is one. */
    private static final double BEYOND = 3;

    private DimensionsFindings() {}

    static void of(Readings readings, Outcome.Builder out) {
        for (Axis axis : Axis.ALL) {
            if (axis.isMeasured(readings) && !isBeyond(axis, readings)) {
                String unit = axis.before().unit().symbol();
                out.found(BELOW_READING.with(
                        axis.word(),
                        Figures.two(axis.gained(readings)),
                        unit,
                        Figures.two(BEYOND * axis.uncertainty(readings)),
                        unit));
            }
        }
        lookAtSides(readings, out);
        lookAtFilms(readings, out);
    }

    private static boolean isBeyond(Axis axis, Readings readings) {
        return Math.abs(axis.gained(readings)) > BEYOND * axis.uncertainty(readings);
    }

    private static void lookAtSides(Readings readings, Outcome.Builder out) {
        Optional<Axis> shrunk = firstMoved(readings, -1);
        Optional<Axis> grown = firstMoved(readings, 1);
        if (shrunk.isPresent() && grown.isPresent()) {
            out.found(WARPED_APART.with(
                    Figures.two(-shrunk.get().percent(readings)),
                    shrunk.get().word(),
                    Figures.two(grown.get().percent(readings)),
                    grown.get().word()));
        }
    }

    private static Optional<Axis> firstMoved(Readings readings, int sign) {
        return Axis.SIDES.stream()
                .filter(axis -> axis.isMeasured(readings) && isBeyond(axis, readings))
                .filter(axis -> sign * axis.gained(readings) > 0)
                .findFirst();
    }

    private static void lookAtFilms(Readings readings, Outcome.Builder out) {
        if (!Dimensions.hasFilmByMass(readings) || !Axis.THICKNESS.isMeasured(readings)) {
            return;
        }
        double gained = Axis.THICKNESS.gained(readings);
        if (gained < 0 && isBeyond(Axis.THICKNESS, readings)) {
            out.found(THINNER.with(Figures.two(-gained)));
            return;
        }
        double byThickness = Dimensions.film(readings);
        double byMass = Dimensions.filmByMass(readings);
        double perMillimetre = 1000.0 / Dimensions.faces(readings);
        double perGram = 1e4
                / (readings.number(DimensionsForm.FILM_DENSITY)
                        * readings.number(DimensionsForm.AREA));
        double first = perMillimetre * Axis.THICKNESS.uncertainty(readings);
        double second = perGram * Axis.MASS.uncertainty(readings);
        if (Math.abs(byThickness - byMass) > BEYOND * Math.sqrt(first * first + second * second)) {
            out.found(FILMS_DISAGREE.with(Figures.three(byThickness), Figures.three(byMass)));
        }
    }
}
