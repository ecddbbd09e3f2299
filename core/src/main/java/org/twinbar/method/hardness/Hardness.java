package org.twinbar.method.hardness;

import java.util.Arrays;
import java.util.List;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.conditioning.Conditioning;

/** Shore D hardness, in the manner of ISO 868. */
public final class Hardness implements TestMethod {

    static final Finding.Kind FEW_PLACES = Finding.Kind.note(
            "few-places",
            "Read at %s places; ISO 868 wants 5, at least 6 mm apart, since a print is soft above"
                    + " its infill and hard above a wall.");
    static final Finding.Kind THIN = Finding.Kind.warning(
            "specimen-thin",
            "It is %s mm thick; below 6 mm the table below it is read as well. Up to 3 pieces may be"
                    + " stacked.");
    static final Finding.Kind STACKED = Finding.Kind.warning(
            "stacked-high",
            "It is a stack of %s pieces; ISO 868 allows 3, since the gaps between them give.");
    static final Finding.Kind NEAR_EDGE = Finding.Kind.warning(
            "near-edge",
            "A place lay %s mm from an edge; below 9 mm the edge gives way and the reading is too"
                    + " low.");
    static final Finding.Kind OUTSIDE = Finding.Kind.warning(
            "outside-range",
            "The hardness is %s HD; Shore D holds from 20 to 90, beyond which another scale has to"
                    + " be taken.");
    static final Finding.Kind FILM = Finding.Kind.warning(
            "reads-through-film",
            "A film of %s mm is thinner than the cone is deep: this is mostly the hardness of the"
                    + " print below it. Films are told apart by pencils.");

    private static final int PLACES = 5;
    private static final double THINNEST = 6;
    private static final double MOST_PIECES = 3;
    private static final double NEAREST_EDGE = 9;
    private static final double LOWEST = 20;
    private static final double HIGHEST = 90;

    /** Full travel of the cone (mm): 0 HD at 2.5 mm, 100 HD at none (ISO 868). */
    private static final double TRAVEL = 2.5;

    private static final double FULL_SCALE = 100;

    @Override
    public Description description() {
        return HardnessForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return HardnessClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(HardnessForm.DESCRIPTION);
        if (!readings.has(HardnessForm.HARDNESS)) {
            return out.restMissing("no hardness was read").build();
        }
        double hardness = readings.number(HardnessForm.HARDNESS);
        out.value(HardnessForm.MEAN, hardness);
        out.value(HardnessForm.SOFTEST, softest(readings, hardness));
        if (readings.atRest()) {
            findings(readings, hardness, out);
        }
        return out.build();
    }

    /** Returns the softest place: as far below the mean as it was read, in every world. */
    private static double softest(Readings readings, double mean) {
        double below = readings.once("softest below mean", Double.class, () -> {
            double[] each = readings.each(HardnessForm.HARDNESS);
            return mean - Arrays.stream(each).min().orElse(mean);
        });
        return mean - below;
    }

    private static void findings(Readings readings, double hardness, Outcome.Builder out) {
        Conditioning.find(readings, out);
        int places = readings.count(HardnessForm.HARDNESS);
        if (places < PLACES) {
            out.found(FEW_PLACES.with(places));
        }
        if (hardness < LOWEST || hardness > HIGHEST) {
            out.found(OUTSIDE.with(Figures.three(hardness)));
        }
        if (isBelow(readings, HardnessForm.THICKNESS, THINNEST)) {
            out.found(THIN.with(Figures.two(readings.number(HardnessForm.THICKNESS))));
        }
        if (readings.has(HardnessForm.PIECES)
                && readings.number(HardnessForm.PIECES) > MOST_PIECES) {
            out.found(STACKED.with((int) readings.number(HardnessForm.PIECES)));
        }
        if (isBelow(readings, HardnessForm.EDGE, NEAREST_EDGE)) {
            out.found(NEAR_EDGE.with(Figures.two(readings.number(HardnessForm.EDGE))));
        }
        if (isBelow(readings, HardnessForm.FILM, depth(hardness))) {
            out.found(FILM.with(Figures.two(readings.number(HardnessForm.FILM))));
        }
    }

    /** Returns how deep the cone sinks in (mm): 2.5·(1 − HD/100). */
    static double depth(double hardness) {
        return TRAVEL * (1 - hardness / FULL_SCALE);
    }

    private static boolean isBelow(Readings readings, Input input, double limit) {
        return readings.has(input) && readings.number(input) < limit;
    }
}
