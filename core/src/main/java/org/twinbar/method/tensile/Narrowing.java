package org.twinbar.method.tensile;

import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Channel;
import org.twinbar.method.Readings;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.Line;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Window;

/**
 * How much a bar narrows as it stretches.
 *
 * <pre>μ = −dε_t/dε</pre>
 *
 * <p>ε_t across and ε along the pull, by the line through all rows of the modulus window. A strain
 * from the crosshead is refused, since it is not the strain of the place that narrows. Source: ISO
 * 527-1:2019, 10.5 (from memory).
 */
final class Narrowing {

    private static final double PERCENT = 0.01;

    private Narrowing() {}

    static Yield poissonRatio(
            Readings readings, Stretching stretching, Optional<SlopeWindow> window) {
        Channel across =
                readings.has(PullForm.NARROWING) ? PullForm.NARROWING : PullForm.TRANSVERSE_STRAIN;
        if (!readings.has(across)) {
            return new Yield.Missing("how far it narrowed was not recorded");
        }
        if (stretching.byCrosshead()) {
            return new Yield.Missing("the stretch is the crosshead's; a Poisson ratio wants an"
                    + " extensometer along the bar as well as across it");
        }
        OptionalDouble perAcross = strainPer(readings, across);
        if (perAcross.isEmpty() || window.isEmpty()) {
            return new Yield.Missing(
                    perAcross.isEmpty()
                            ? "neither width nor diameter was given to narrow"
                            : stretching.reason());
        }
        Optional<String> missing = window.get().missing();
        if (missing.isPresent()) {
            return new Yield.Missing(missing.get());
        }
        LoadCurve curve =
                LoadCurve.of(readings.trace(across), readings.trace(stretching.needChannel()), 0);
        Line line = curve.line(readings.once(
                "narrowing",
                Window.class,
                () -> curve.window(window.get().from(), window.get().to())));
        double factor = perAcross.getAsDouble() / stretching.strainPerWay().orElseThrow();
        double ratio = line.slope() * factor;
        if (readings.once("widens", Boolean.class, () -> !(ratio > 0))) {
            return new Yield.Missing(
                    "it does not narrow over the modulus window: the sign may be turned round");
        }
        double u = Math.abs(line.slopeUncertainty() * factor);
        return Double.isFinite(ratio) && Double.isFinite(u) && line.degreesOfFreedom() > 0
                ? new Yield.Fitted(ratio, u, line.degreesOfFreedom())
                : Yield.of(ratio);
    }

    /** Returns strain across (mm/mm), counted as it narrows, per unit of the channel. */
    private static OptionalDouble strainPer(Readings readings, Channel across) {
        if (across.equals(PullForm.TRANSVERSE_STRAIN)) {
            return OptionalDouble.of(-PERCENT);
        }
        if (readings.has(PullForm.WIDTH)) {
            return OptionalDouble.of(1 / readings.number(PullForm.WIDTH));
        }
        return readings.has(PullForm.DIAMETER)
                ? OptionalDouble.of(1 / readings.number(PullForm.DIAMETER))
                : OptionalDouble.empty();
    }
}
