package org.twinbar.method.heatdeflection;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.method.heating.Heated;
import org.twinbar.method.section.Side;

/** Deflection temperature under load, in the manner of ISO 75 and ASTM D648. */
public final class HeatDeflection implements TestMethod {

    /** Growth of the surface strain (%) at which ISO 75 reads. */
    static final double STRAIN_GROWN = 0.2;

    /** Deflection (mm) at which ASTM D648 reads. */
    static final double QUARTER = 0.25;

    @Override
    public Description description() {
        return HeatForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return HeatDeflectionClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(HeatForm.DESCRIPTION);
        if (!readings.has(HeatForm.SPAN)
                || !readings.has(HeatForm.WIDTH)
                || !readings.has(HeatForm.THICKNESS)) {
            return out.restMissing("span, width and thickness are not all known")
                    .build();
        }
        LoadedBar bar = new LoadedBar(
                readings.number(HeatForm.SPAN),
                Side.of(readings, HeatForm.WIDTH, Side.RIDGES),
                Side.of(readings, HeatForm.THICKNESS, Side.RIDGES));
        double sag = readings.choice(HeatForm.READ_AT).equals(HeatForm.QUARTER_MM)
                ? QUARTER
                : bar.deflection(STRAIN_GROWN);
        out.value(HeatForm.DEFLECTION, sag);
        if (!readings.has(HeatForm.STRESS)) {
            return out.restMissing("the stress is not known, without which the rest says nothing")
                    .build();
        }
        double stress = readings.number(HeatForm.STRESS);
        out.value(HeatForm.FORCE, bar.force(stress));
        mass(readings, out, bar, stress);
        if (readings.atRest()) {
            HeatFindings.ofBar(readings, bar, stress, out);
        }
        temperature(readings, out, sag);
        return out.build();
    }

    private static void mass(
            Readings readings, Outcome.Builder out, LoadedBar bar, double stressMPa) {
        if (!readings.has(HeatForm.ROD_MASS)) {
            out.missing(HeatForm.ADDED_MASS, "the rod was not weighed");
            return;
        }
        double gauge =
                readings.has(HeatForm.SPRING_FORCE) ? readings.number(HeatForm.SPRING_FORCE) : 0;
        double mass = bar.addedMass(stressMPa, readings.number(HeatForm.ROD_MASS), gauge);
        boolean tooHeavy = readings.once("rod too heavy", Boolean.class, () -> mass < 0);
        if (tooHeavy) {
            out.missing(
                    HeatForm.ADDED_MASS,
                    "rod and gauge press with more than the stress asks for: counterbalance them");
        } else {
            out.value(HeatForm.ADDED_MASS, mass);
        }
    }

    private static void temperature(Readings readings, Outcome.Builder out, double sag) {
        if (!Heated.isIn(readings)) {
            out.missing(HeatForm.TEMPERATURE, "temperature and deflection were not recorded");
            return;
        }
        Optional<Heated> found = Heated.of(readings);
        if (found.isEmpty()) {
            out.missing(HeatForm.TEMPERATURE, "no row holds a temperature and a deflection");
            return;
        }
        Heated heated = found.get();
        Optional<String> unusable = heated.unusable();
        if (unusable.isPresent()) {
            out.missing(HeatForm.TEMPERATURE, unusable.get());
            return;
        }
        OptionalInt row = heated.rowReaching(sag);
        out.put(
                HeatForm.TEMPERATURE,
                row.isPresent()
                        ? Yield.of(heated.temperatureAt(sag, row.getAsInt()))
                        : new Yield.AtLeast(
                                heated.temperature(heated.end()),
                                "it had not sagged by the standard deflection when heating ended"));
        if (readings.atRest()) {
            heated.findings(out, row.orElse(heated.end()));
            row.ifPresent(at -> heated.findingAt(out, at));
            HeatFindings.ofHeating(readings, heated, row.orElse(heated.end()), out);
        }
    }
}
