package org.twinbar.method.dimensions;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;

/** Measured and weighed before and after a treatment. */
public final class Dimensions implements TestMethod {

    @Override
    public Description description() {
        return DimensionsForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return DimensionsClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DimensionsForm.DESCRIPTION);
        for (Axis axis : Axis.ALL) {
            if (axis.isMeasured(readings)) {
                out.value(axis.change(), axis.percent(readings));
            } else {
                out.missing(
                        axis.change(),
                        "the %s was not taken before and after".formatted(axis.word()));
            }
        }
        if (Axis.THICKNESS.isMeasured(readings)) {
            out.value(DimensionsForm.FILM, film(readings));
        } else {
            out.missing(DimensionsForm.FILM, "the thickness was not taken before and after");
        }
        if (hasFilmByMass(readings)) {
            out.value(DimensionsForm.FILM_BY_MASS, filmByMass(readings));
        } else {
            out.missing(
                    DimensionsForm.FILM_BY_MASS,
                    "mass before and after, coated area and density of the film were not all given");
        }
        if (readings.atRest()) {
            DimensionsFindings.of(readings, out);
        }
        return out.build();
    }

    static boolean hasFilmByMass(Readings readings) {
        return Axis.MASS.isMeasured(readings)
                && readings.has(DimensionsForm.AREA)
                && readings.has(DimensionsForm.FILM_DENSITY);
    }

    /** Returns the film (µm) by thickness: (h_after − h_before) over the number of coated faces. */
    static double film(Readings readings) {
        return 1000 * Axis.THICKNESS.gained(readings) / faces(readings);
    }

    static int faces(Readings readings) {
        return readings.choice(DimensionsForm.FACES).equals(DimensionsForm.ONE) ? 1 : 2;
    }

    /**
     * Returns the film (µm) by mass.
     *
     * <pre>t = Δm/(ρ·A)·10⁴</pre>
     *
     * <p>Δm in g, ρ of the cured film in g/cm³, A in cm²: a mean over the area. Source: METHODS G.
     */
    static double filmByMass(Readings readings) {
        return 1e4
                * Axis.MASS.gained(readings)
                / (readings.number(DimensionsForm.FILM_DENSITY)
                        * readings.number(DimensionsForm.AREA));
    }
}
