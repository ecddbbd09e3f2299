package org.twinbar.method.timeconstant;

import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Trace;
import org.twinbar.method.Yield;

/** A step test: how slowly a dummy warms that is put into a held oven. */
public final class TimeConstant implements TestMethod {

    @Override
    public Description description() {
        return TimeConstantForm.DESCRIPTION;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(TimeConstantForm.DESCRIPTION);
        if (!readings.has(TimeConstantForm.TIME) || !readings.has(TimeConstantForm.TEMPERATURE)) {
            return out.restMissing("time and temperature were not both recorded")
                    .build();
        }
        Warmed warmed = readings.once("warmed", Warmed.class, () -> Warmed.of(readings));
        if (warmed.approach().isPresent()) {
            give(readings, out, warmed.approach().get());
        } else {
            out.restMissing(warmed.reason());
        }
        if (readings.atRest()) {
            TimeConstantFindings.of(readings, warmed, out);
        }
        return out.build();
    }

    /** A world's thermometer moves all temperatures together, which leaves τ where it is. */
    private static void give(Readings readings, Outcome.Builder out, Approach approach) {
        Trace time = readings.trace(TimeConstantForm.TIME);
        Trace temperature = readings.trace(TimeConstantForm.TEMPERATURE);
        double freedom = approach.degreesOfFreedom();
        out.put(
                TimeConstantForm.SECONDS,
                fitted(approach.seconds() * time.scale(), approach.secondsUncertainty(), freedom));
        out.put(
                TimeConstantForm.HELD,
                fitted(
                        approach.held() * temperature.scale() + temperature.offset(),
                        approach.heldUncertainty(),
                        freedom));
    }

    private static Yield fitted(double value, double uncertainty, double freedom) {
        return Double.isFinite(value) && Double.isFinite(uncertainty)
                ? new Yield.Fitted(value, uncertainty, freedom)
                : Yield.of(Double.NaN);
    }
}
