package org.twinbar.planning.resolving;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Unit;

/**
 * What a specimen answers with: the reading that changes where the test is set up otherwise, while
 * the specimen stays the same.
 *
 * <p>A lighter hammer rises less behind the same specimen. Which reading that is, is not asked of
 * the description but found: of the readings that differ from specimen to specimen, the ones that
 * the property hangs on most, and of these the first that can bring the value back. Readings with a
 * true zero are scaled; temperatures are shifted, after all others.
 */
final class Response {

    /** A reading is taken to answer within a factor of 20. */
    private static final double FARTHEST = StrictMath.log(20);

    /** A shift of so many degrees counts as much as a factor of e: up to 60 K are tried. */
    private static final double DEGREES = 20;

    private static final double STEP = FARTHEST / 24;
    private static final int HALVINGS = 60;
    private static final double NUDGE = 0.01;
    private static final double SAME = 1e-9;
    private static final Unit SECOND = Unit.of("s");

    private final TestMethod method;
    private final Property property;
    private final double value;
    private final List<Named> candidates;

    private Response(TestMethod method, Property property, double value, List<Named> candidates) {
        this.method = method;
        this.property = property;
        this.value = value;
        this.candidates = candidates;
    }

    static Response of(Typical typical, Property property, Supplier<Readings.Builder> present) {
        TestMethod method = typical.method();
        double value = number(method, property, present.get().build()).orElse(Double.NaN);
        List<Candidate> candidates = new ArrayList<>();
        for (Named named : method.description().asked()) {
            boolean answers = !typical.sameForAll().contains(named)
                    && typical.readings().has(named)
                    && canAnswer(named);
            if (answers) {
                // A curve is the specimen's answer in itself; a number by how much it differs.
                double spread =
                        named instanceof Channel ? 1 : typical.spread().getOrDefault(named, 0.0);
                double moved = at(method, property, present, Optional.of(named), NUDGE);
                candidates.add(new Candidate(named, Math.abs(moved - value) * spread));
            }
        }
        candidates.removeIf(it -> !(it.weight() > 0));
        candidates.sort(Comparator.comparing(
                        (Candidate it) -> hasTrueZero(it.named()), Comparator.reverseOrder())
                .thenComparing(Candidate::weight, Comparator.reverseOrder()));
        return new Response(
                method,
                property,
                value,
                candidates.stream().map(Candidate::named).toList());
    }

    /** A reading, and how much the property hangs on what it differs by between specimens. */
    private record Candidate(Named named, double weight) {}

    private static Optional<Unit> unit(Named named) {
        return named instanceof Input input
                ? Optional.of(input.unit())
                : named instanceof Channel channel ? Optional.of(channel.unit()) : Optional.empty();
    }

    private static boolean canAnswer(Named named) {
        return unit(named).filter(it -> !it.measuresSameAs(SECOND)).isPresent();
    }

    private static boolean hasTrueZero(Named named) {
        return unit(named).filter(Unit::hasTrueZero).isPresent();
    }

    /** Changes a reading by a number that is 0 where it stays. */
    private static Readings.Builder moved(Readings.Builder builder, Named named, double by) {
        return hasTrueZero(named)
                ? builder.scale(named, StrictMath.exp(by))
                : builder.shift(named, by * DEGREES);
    }

    static Optional<Double> number(TestMethod method, Property property, Readings readings) {
        Outcome outcome = method.calculate(readings);
        Yield yield = outcome.yields().get(property);
        if (yield instanceof Yield.Value found) {
            return Optional.of(found.value());
        }
        return yield instanceof Yield.Fitted fitted
                ? Optional.of(fitted.value())
                : Optional.empty();
    }

    /**
     * Returns the readings of the same specimen in a test that is set up otherwise.
     *
     * @param changed gives the changed readings, its answer not yet
     * @return empty where no reading can bring the value back: the test couldn't be done so
     */
    Optional<Readings> in(Supplier<Readings.Builder> changed) {
        double now = at(changed, Optional.empty(), 0);
        if (same(now)) {
            return Optional.of(changed.get().build());
        }
        for (Named named : candidates) {
            Optional<Double> by = root(move -> at(changed, Optional.of(named), move) - value);
            if (by.isPresent()) {
                return Optional.of(moved(changed.get(), named, by.get()).build());
            }
        }
        return Optional.empty();
    }

    private boolean same(double other) {
        return Math.abs(other - value) <= SAME * Math.abs(value);
    }

    private double at(Supplier<Readings.Builder> changed, Optional<Named> named, double by) {
        return at(method, property, changed, named, by);
    }

    /** Returns the property where one reading is changed; NaN where it then has none. */
    private static double at(
            TestMethod method,
            Property property,
            Supplier<Readings.Builder> changed,
            Optional<Named> named,
            double by) {
        try {
            Readings.Builder builder = changed.get();
            named.ifPresent(it -> moved(builder, it, by));
            return number(method, property, builder.build()).orElse(Double.NaN);
        } catch (IllegalArgumentException e) {
            return Double.NaN;
        }
    }

    /** Looks outward from no change for the nearest change of sign, and halves it down. */
    private Optional<Double> root(DoubleUnaryOperator off) {
        double at = off.applyAsDouble(0);
        if (Double.isNaN(at)) {
            return Optional.empty();
        }
        double up = at;
        double down = at;
        for (double log = STEP; log <= FARTHEST; log += STEP) {
            double nextUp = off.applyAsDouble(log);
            double nextDown = off.applyAsDouble(-log);
            if (up * nextUp <= 0) {
                return halved(off, log - STEP, log, up);
            }
            if (down * nextDown <= 0) {
                return halved(off, STEP - log, -log, down);
            }
            up = nextUp;
            down = nextDown;
        }
        return Optional.empty();
    }

    private Optional<Double> halved(
            DoubleUnaryOperator off, double from, double to, double atFrom) {
        double near = from;
        double far = to;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (near + far) / 2;
            double here = off.applyAsDouble(middle);
            if (here * atFrom > 0) {
                near = middle;
            } else {
                far = middle;
            }
        }
        return same(off.applyAsDouble(near) + value)
                ? Optional.of(near)
                : same(off.applyAsDouble(far) + value) ? Optional.of(far) : Optional.empty();
    }
}
