package org.twinbar.method.gloss;

import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;

/** What a person should know about a surface whose gloss was read. */
final class GlossFindings {

    static final Finding.Kind TOO_GLOSSY = Finding.Kind.warning(
            "angle-too-flat",
            "At 60° it reads %s GU; above 70 GU, ISO 2813 takes 20°, at which glossy surfaces are"
                    + " told apart. No reading at 20° was given.");
    static final Finding.Kind TOO_MATT = Finding.Kind.warning(
            "angle-too-steep",
            "At 60° it reads %s GU; below 10 GU, ISO 2813 takes 85°, at which matt surfaces are"
                    + " told apart. No reading at 85° was given.");
    static final Finding.Kind TAKE = Finding.Kind.note(
            "angle-to-compare-at",
            "At 60° it reads %s GU, so ISO 2813 judges it at %s°; compare groups at one angle, that"
                    + " of most specimens.");
    static final Finding.Kind NO_60 = Finding.Kind.note(
            "no-reading-at-60",
            "It was not read at 60°, by which ISO 2813 decides whether 20° or 85° suits the"
                    + " surface.");
    static final Finding.Kind FEW = Finding.Kind.note(
            "few-readings",
            "It was read %s at %s°; take 6 readings or more, on 3 places: gloss differs from place"
                    + " to place by more than the meter's error.");
    static final Finding.Kind ONE_DIRECTION = Finding.Kind.warning(
            "one-direction",
            "The surface is ridged and was read in one direction only; ridges throw the light"
                    + " aside, so read along and across and compare like with like.");
    static final Finding.Kind DIRECTED = Finding.Kind.note(
            "differs-by-direction",
            "At %s° it reads %s GU along the lines and %s GU across; much of that is the shape of"
                    + " the lines and not the skin of the surface.");
    static final Finding.Kind CURVED = Finding.Kind.serious(
            "surface-curved",
            "The surface is curved: light that is thrown past the meter is missing, and ISO 2813"
                    + " does not hold. Read a flat piece that was treated with it.");
    static final Finding.Kind METALLIC = Finding.Kind.serious(
            "surface-metallic",
            "The surface is metallic, which ISO 2813 leaves out: flakes throw light by their own"
                    + " tilt.");
    static final Finding.Kind SURFACE_UNKNOWN = Finding.Kind.note(
            "surface-not-stated",
            "Whether the surface is flat was not noted; on curves and ridges a gloss is not"
                    + " comparable.");
    static final Finding.Kind LET_LIGHT_IN = Finding.Kind.serious(
            "window-not-covered",
            "The surface did not cover the meter's window, so light from the room came in; use a"
                    + " larger piece, or a mask with a smaller window for both groups.");
    static final Finding.Kind ABOVE_IDEAL = Finding.Kind.warning(
            "above-smooth-resin",
            "At %s° it reads %s GU, where a perfectly smooth resin reads at most %s GU: check the"
                    + " meter on its tile, and whether the surface was wet.");

    private static final double GLOSSY = 70;
    private static final double MATT = 10;

    /** On 3 places, twice each: METHODS F. */
    private static final int ENOUGH = 6;

    /** Two directions further apart than this share of their mean differ; our own. */
    private static final double DIRECTED_SHARE = 0.2;

    /** And by more than the meter's own doubt (GU); our own. */
    private static final double DIRECTED_UNITS = 2;

    /** Highest refractive index of clear coats and filaments: polystyrene, 1.59 (from memory). */
    private static final double HIGHEST_INDEX = 1.6;

    private final Readings readings;
    private final Outcome.Builder out;

    GlossFindings(Readings readings, Outcome.Builder out) {
        this.readings = readings;
        this.out = out;
    }

    void find() {
        boolean any = false;
        for (Geometry geometry : Geometry.ALL) {
            any |= has(geometry);
            number(geometry, geometry.along());
            number(geometry, geometry.across());
            directions(geometry);
        }
        if (any) {
            angle();
            surface();
        }
    }

    private boolean has(Geometry geometry) {
        return readings.has(geometry.along()) || readings.has(geometry.across());
    }

    private void number(Geometry geometry, Input read) {
        if (!readings.has(read)) {
            return;
        }
        int count = readings.count(read);
        if (count < ENOUGH) {
            out.found(FEW.with(count == 1 ? "once" : count + " times", geometry.degrees()));
        }
        double gloss = readings.number(read);
        double ideal = Fresnel.gloss(HIGHEST_INDEX, geometry.degrees());
        if (gloss > ideal) {
            out.found(ABOVE_IDEAL.with(
                    geometry.degrees(), Figures.three(gloss), Figures.three(ideal)));
        }
    }

    private void directions(Geometry geometry) {
        if (!readings.has(geometry.along()) || !readings.has(geometry.across())) {
            return;
        }
        double along = readings.number(geometry.along());
        double across = readings.number(geometry.across());
        double apart = Math.abs(along - across);
        if (apart > DIRECTED_UNITS && apart > DIRECTED_SHARE * (along + across) / 2) {
            out.found(
                    DIRECTED.with(geometry.degrees(), Figures.three(along), Figures.three(across)));
        }
    }

    private void angle() {
        if (!has(Geometry.AT_60)) {
            out.found(NO_60.with());
            return;
        }
        double gloss = readings.number(
                readings.has(Geometry.AT_60.along())
                        ? Geometry.AT_60.along()
                        : Geometry.AT_60.across());
        if (gloss > GLOSSY) {
            judgedAt(Geometry.AT_20, TOO_GLOSSY, gloss);
        } else if (gloss < MATT) {
            judgedAt(Geometry.AT_85, TOO_MATT, gloss);
        }
    }

    private void judgedAt(Geometry geometry, Finding.Kind missing, double gloss) {
        String read = Figures.three(gloss);
        out.found(has(geometry) ? TAKE.with(read, geometry.degrees()) : missing.with(read));
    }

    private void surface() {
        if (!readings.has(GlossForm.SURFACE)) {
            out.found(SURFACE_UNKNOWN.with());
        } else {
            switch (readings.word(GlossForm.SURFACE)) {
                case GlossForm.CURVED -> out.found(CURVED.with());
                case GlossForm.METALLIC -> out.found(METALLIC.with());
                case GlossForm.RIDGED -> ridged();
                default -> {}
            }
        }
        if (readings.has(GlossForm.COVERED)
                && readings.word(GlossForm.COVERED).equals(GlossForm.OPEN)) {
            out.found(LET_LIGHT_IN.with());
        }
    }

    private void ridged() {
        boolean both = Geometry.ALL.stream()
                .filter(this::has)
                .allMatch(geometry ->
                        readings.has(geometry.along()) && readings.has(geometry.across()));
        if (!both) {
            out.found(ONE_DIRECTION.with());
        }
    }
}
