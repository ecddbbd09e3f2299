package org.twinbar.method.creep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Setting;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.statistics.CurveFit;

/** Strain under a constant load, in the manner of ISO 899. */
public final class Creep implements TestMethod {

    /** Nothing is forecast beyond so many times the last reading (METHODS K). */
    static final double DECADE = 10;

    private static final double PER_CENT = 100;

    /** Three parameters and enough scatter to judge them by; our own. */
    private static final int FEWEST_ROWS = 6;

    @Override
    public Description description() {
        return CreepForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return CreepClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(CreepForm.DESCRIPTION);
        Optional<Stretch> found = Stretch.of(readings);
        if (found.isEmpty()) {
            return out.restMissing("time and strain were not recorded").build();
        }
        Stretch stretch = found.get();
        if (stretch.rows() == 0) {
            return out.restMissing("no row holds a time after loading and a strain")
                    .build();
        }
        OptionalDouble stress = stress(readings);
        modulus(readings, out, stretch, stress, CreepForm.MODULUS_EARLY, CreepForm.EARLY);
        modulus(readings, out, stretch, stress, CreepForm.MODULUS_LATE, CreepForm.LATE);
        law(readings, out, stretch);
        if (readings.atRest()) {
            CreepFindings.of(readings, stretch, out);
        }
        return out.build();
    }

    private static OptionalDouble stress(Readings readings) {
        if (readings.has(CreepForm.STRESS)) {
            return OptionalDouble.of(readings.number(CreepForm.STRESS));
        }
        return readings.has(CreepForm.FORCE)
                        && readings.has(CreepForm.WIDTH)
                        && readings.has(CreepForm.THICKNESS)
                ? OptionalDouble.of(readings.number(CreepForm.FORCE)
                        / readings.number(CreepForm.WIDTH)
                        / readings.number(CreepForm.THICKNESS))
                : OptionalDouble.empty();
    }

    /** Gives E_c = σ/ε at a set time, the strain straight in log time between two readings. */
    private static void modulus(
            Readings readings,
            Outcome.Builder out,
            Stretch stretch,
            OptionalDouble stress,
            Property property,
            Setting time) {
        double hours = readings.setting(time);
        if (stress.isEmpty()) {
            out.missing(property, "the stress is not known");
        } else if (hours > stretch.lastHours()) {
            out.missing(property, "the readings end before that time");
        } else if (hours < stretch.firstHours()) {
            out.missing(property, "the readings begin after that time");
        } else {
            double strain = stretch.at(hours, property.name());
            boolean stretched =
                    readings.once(property.name() + " stretched", Boolean.class, () -> strain > 0);
            if (stretched) {
                out.value(property, PER_CENT * stress.getAsDouble() / strain);
            } else {
                out.missing(
                        property,
                        "it was not stretched at that time: the sign of the gauge is"
                                + " turned round, or its zero has drifted");
            }
        }
    }

    /** What Findley's law gave in the world without errors; empty with its reason. */
    private record Law(Optional<CurveFit> fit, String reason) {}

    private static void law(Readings readings, Outcome.Builder out, Stretch stretch) {
        Law law = readings.once("law", Law.class, () -> fit(stretch));
        if (law.fit().isEmpty()) {
            out.restMissing(law.reason());
            return;
        }
        CurveFit fit = law.fit().get();
        double[] parameters = fit.parameters();
        double scale = stretch.scale();
        double freedom = fit.degreesOfFreedom();
        out.put(
                CreepForm.START,
                fitted(
                        stretch.asReadHere(parameters[Findley.START]),
                        scale * fit.uncertainty(Findley.START),
                        freedom));
        out.put(
                CreepForm.GROWTH,
                fitted(
                        scale * parameters[Findley.GROWTH],
                        scale * fit.uncertainty(Findley.GROWTH),
                        freedom));
        out.put(
                CreepForm.EXPONENT,
                fitted(parameters[Findley.EXPONENT], fit.uncertainty(Findley.EXPONENT), freedom));
        double hours = readings.setting(CreepForm.FORECAST);
        if (hours > DECADE * stretch.lastHours()) {
            out.missing(
                    CreepForm.FORECAST_STRAIN,
                    "that time is more than ten times the last reading's, too far to forecast");
        } else {
            out.put(
                    CreepForm.FORECAST_STRAIN,
                    fitted(
                            stretch.asReadHere(Findley.LAW.at(hours, parameters)),
                            scale * fit.uncertaintyAt(Findley.LAW, hours),
                            freedom));
        }
    }

    private static Law fit(Stretch stretch) {
        if (stretch.rows() < FEWEST_ROWS) {
            return new Law(Optional.empty(), "Findley's law needs 6 readings or more");
        }
        Optional<CurveFit> fit = Findley.through(stretch.hours(), stretch.strains());
        if (fit.isEmpty()) {
            return new Law(Optional.empty(), "Findley's law does not settle on these readings");
        }
        boolean grows = fit.get().parameters()[Findley.GROWTH] > 0
                && fit.get().parameters()[Findley.EXPONENT] > 0;
        return grows
                ? new Law(fit, "")
                : new Law(Optional.empty(), "the strain does not grow as Findley's law has it");
    }

    private static Yield fitted(double value, double uncertainty, double freedom) {
        return Double.isFinite(value) && Double.isFinite(uncertainty)
                ? new Yield.Fitted(value, uncertainty, freedom)
                : Yield.of(Double.NaN);
    }
}
