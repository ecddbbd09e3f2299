package org.twinbar.method.own;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Caution;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Setting;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Unit;

/** Builds plans for tests, a line for each part. */
public final class Planned {

    private final List<Ask> asks = new ArrayList<>();
    private final List<Setting> settings = new ArrayList<>();
    private final List<OwnPlan.Step> steps = new ArrayList<>();
    private final List<OwnPlan.Wanted> results = new ArrayList<>();

    static Planned begin() {
        return new Planned();
    }

    /** A wedge that is bent by hand: a sound plan with an input, a setting, a step and a curve. */
    public static TestMethod sample() {
        return begin().input("width", "mm", Kind.CALIPER)
                .input("thickness", "mm", Kind.CALIPER)
                .channel("force", "N", Kind.LOAD_CELL)
                .channel("travel", "mm", Kind.CROSSHEAD)
                .setting("gravity", "m/s2", 9.80665)
                .step("section", "width * thickness")
                .result("stress", "MPa", "peak(force) / section")
                .result("work", "J", "area(force, travel)")
                .result("lifted_mass", "kg", "last(force) / gravity")
                .result("travel_at_peak", "mm", "at_peak(travel, force) - first(travel)")
                .method();
    }

    Planned input(String name, String unit, Kind kind) {
        Input input = Input.of(name, label(name), unit, kind).within(Limits.ANY);
        asks.add(Ask.required("What is the " + name + "?", List.of(input)));
        return this;
    }

    Planned channel(String name, String unit, Kind kind) {
        Channel channel = Channel.of(name, label(name), unit, kind);
        asks.add(Ask.required("What was recorded of " + name + "?", List.of(channel)));
        return this;
    }

    Planned setting(String name, String unit, double preset) {
        settings.add(new Setting(name, label(name), Unit.of(unit), preset, Limits.ANY));
        return this;
    }

    Planned step(String name, String formula) {
        steps.add(new OwnPlan.Step(name, formula));
        return this;
    }

    Planned result(String name, String unit, String formula) {
        return result(name, unit, formula, Limits.ANY);
    }

    Planned result(String name, String unit, String formula, Limits valid) {
        Property.Scale scale =
                Unit.of(unit).hasTrueZero() ? Property.Scale.RATIO : Property.Scale.INTERVAL;
        results.add(
                new OwnPlan.Wanted(Property.of(name, label(name), unit, scale), formula, valid));
        return this;
    }

    OwnPlan plan() {
        return new OwnPlan(
                "own-test",
                1,
                "A test of one's own",
                "No standard.",
                asks,
                settings,
                steps,
                results,
                List.of(new Caution("Mind your fingers.")));
    }

    TestMethod method() {
        return OwnMethod.of(plan());
    }

    private static String label(String name) {
        return Character.toUpperCase(name.charAt(0)) + name.substring(1).replace('_', ' ');
    }

    static Readings.Builder specimen() {
        return Readings.of("S1", "plain", Bench.usual());
    }

    static Input input(TestMethod method, String name) {
        return method.description().inputs().stream()
                .filter(input -> input.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Channel channel(TestMethod method, String name) {
        return method.description().channels().stream()
                .filter(channel -> channel.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    static Yield yield(TestMethod method, Readings.Builder readings, String property) {
        return Result.of(method, readings.build())
                .yields()
                .get(method.description().property(property).orElseThrow());
    }

    static double value(TestMethod method, Readings.Builder readings, String property) {
        Yield yield = Planned.yield(method, readings, property);
        if (yield instanceof Yield.Value value) {
            return value.value();
        }
        throw new AssertionError(property + " is " + yield);
    }
}
