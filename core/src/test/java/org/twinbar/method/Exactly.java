package org.twinbar.method;

import java.util.Map;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.quantity.Quantity;

/** A bench without error for tests of methods, and short ways to what came out. */
public final class Exactly {

    private static final Map<String, String> NOTHING = Map.ofEntries(
            Map.entry("load cell", "0 N"),
            Map.entry("caliper", "0 mm"),
            Map.entry("ruler", "0 mm"),
            Map.entry("extensometer", "0 mm"),
            Map.entry("strain extensometer", "0 %"),
            Map.entry("crosshead", "0 mm"),
            Map.entry("deflection gauge", "0 mm"),
            Map.entry("scale", "0 g"),
            Map.entry("thermometer", "0 K"),
            Map.entry("timer", "0 s"),
            Map.entry("angle scale", "0 °"),
            Map.entry("pressure gauge", "0 kPa"),
            Map.entry("gloss meter", "0 GU"),
            Map.entry("durometer", "0 HD"),
            Map.entry("profilometer", "0 µm"),
            Map.entry("torque sensor", "0 N·m"));

    private Exactly() {}

    /** A bench whose instruments are without error, so that a test adds only what it is about. */
    public static Bench bench() {
        Bench bench = Bench.usual();
        for (Map.Entry<String, String> instrument : NOTHING.entrySet()) {
            Quantity nothing = Quantity.parse(instrument.getValue());
            bench = bench.withResolution(instrument.getKey(), nothing)
                    .withZero(instrument.getKey(), nothing)
                    .withGain(instrument.getKey(), 0);
        }
        return bench;
    }

    /** The same with one instrument that is off, by standard uncertainties of gain and zero. */
    public static Bench bench(String instrument, double gain, String zero, String step) {
        return with(bench(), instrument, gain, zero, step);
    }

    /** Another instrument that is off. */
    public static Bench with(
            Bench bench, String instrument, double gain, String zero, String step) {
        return bench.withGain(instrument, gain)
                .withZero(instrument, Quantity.parse(zero))
                .withResolution(instrument, Quantity.parse(step));
    }

    /** The number of a property that has one. */
    public static double value(Result result, Property property) {
        Yield yield = result.yields().get(property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        if (yield instanceof Yield.Fitted fitted) {
            return fitted.value();
        }
        throw new AssertionError(property.name() + " is " + yield);
    }

    public static double u(Result result, Property property) {
        return result.budgets().get(property).u();
    }

    /** Why a property has no number, or only a bound. */
    public static String reason(Result result, Property property) {
        Yield yield = result.yields().get(property);
        return yield instanceof Yield.Missing missing
                ? missing.reason()
                : yield instanceof Yield.AtLeast bound ? bound.reason() : "a value: " + yield;
    }

    public static boolean found(Result result, String code) {
        return result.findings().stream().anyMatch(finding -> finding.code().equals(code));
    }

    /** The sentence of a finding that must be there. */
    public static String text(Result result, String code) {
        return result.findings().stream()
                .filter(finding -> finding.code().equals(code))
                .map(Finding::text)
                .findFirst()
                .orElseThrow(() -> new AssertionError(code + " is not in " + result.findings()));
    }
}
