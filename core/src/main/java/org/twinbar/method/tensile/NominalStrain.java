package org.twinbar.method.tensile;

import java.util.OptionalInt;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.Toe;

/**
 * Strain at break over the distance of the grips, for bars that neck outside an extensometer.
 *
 * <pre>A: ε_t = ΔL/L;  B: ε_t = ε_y + ΔL_t/L</pre>
 *
 * <p>ΔL is the crosshead's travel from the start, ΔL_t that from the yield on, ε_y the
 * extensometer's strain there, L the distance of the grips. B where there is an extensometer and
 * the force fell at a yield, else A; a finding says which. Source: ISO 527-1:2019, 10.2 (from
 * memory; METHODS A.1).
 */
record NominalStrain(Readings readings, Stretching stretching, LoadCurve curve, double zero) {

    /**
     * Returns the nominal strain at break in per cent.
     *
     * @param yield where the force first fell, empty where it never did
     * @param end row of the break
     */
    Yield at(OptionalInt yield, int end, Bound bound, Outcome.Builder out) {
        if (!readings.has(PullForm.DISPLACEMENT) || !readings.has(PullForm.GRIP_DISTANCE)) {
            return new Yield.Missing(
                    "travel of the crosshead and distance of the grips were not both given");
        }
        double length = readings.number(PullForm.GRIP_DISTANCE);
        Trace travel = readings.trace(PullForm.DISPLACEMENT);
        double give = readings.has(PullForm.COMPLIANCE) ? readings.number(PullForm.COMPLIANCE) : 0;
        boolean fromYield = yield.isPresent()
                && !stretching.byCrosshead()
                && stretching.strainPerWay().isPresent();
        int from = fromYield ? yield.getAsInt() : Toe.start(readings);
        double before = 0;
        if (fromYield) {
            before = (curve.way(from) - zero) * stretching.strainPerWay().orElseThrow();
        } else if (stretching.byCrosshead()) {
            before = (curve.way(from) - zero) / length;
        }
        double gone = travel.get(end)
                - travel.get(from)
                - give * (curve.force(end) - curve.force(from))
                + readings.resolutionAt(PullForm.DISPLACEMENT, "break");
        if (readings.atRest() && !stretching.byCrosshead()) {
            out.found(PullFindings.NOMINAL.with(fromYield ? "B" : "A"));
        }
        return bound.of(100 * (before + gone / length));
    }
}
