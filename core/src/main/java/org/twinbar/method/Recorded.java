package org.twinbar.method;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Correction;
import org.twinbar.instrument.Fault;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.quantity.Unit;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * What all worlds of one specimen share: what was typed in, and what has been found of it since.
 *
 * <p>It belongs to one specimen and is used by one thread at a time.
 */
final class Recorded {
    private static final double EXACTLY_KNOWN = Double.POSITIVE_INFINITY;

    final String specimen;
    final String group;
    final Bench bench;
    final Map<String, Number> numbers = new HashMap<>();
    final Map<String, String> words = new HashMap<>();
    final Map<String, double[]> channels = new HashMap<>();
    final Map<String, Double> settings = new HashMap<>();
    final Map<String, Integer> movedMarks = new HashMap<>();
    final Map<Mark, OptionalInt> foundMarks = new LinkedHashMap<>();
    final Map<String, Source> sources = new LinkedHashMap<>();
    final Map<String, Reader> readers = new LinkedHashMap<>();
    final Map<String, Source> owns = new HashMap<>();
    final Map<String, Object> kept = new HashMap<>();
    final List<BeyondCalibration> beyond = new ArrayList<>();

    Recorded(String specimen, String group, Bench bench) {
        this.specimen = specimen;
        this.group = group;
        this.bench = bench;
    }

    /** Returns what was put in, without what has been found of it since; arrays are shared. */
    Recorded asTypedIn() {
        return on(group, bench);
    }

    /** Returns the same in another group, read on another bench. */
    Recorded on(String otherGroup, Bench other) {
        Recorded fresh = new Recorded(specimen, otherGroup, other);
        fresh.numbers.putAll(numbers);
        fresh.words.putAll(words);
        fresh.channels.putAll(channels);
        fresh.settings.putAll(settings);
        fresh.movedMarks.putAll(movedMarks);
        fresh.beyond.addAll(beyond);
        return fresh;
    }

    /** Returns what an instrument's calibration makes of readings, and notes those beyond it. */
    double[] corrected(Named reading, Kind kind, Unit unit, double[] readings) {
        Instrument instrument = bench.of(reading.name(), kind, unit);
        Optional<Correction> correction = instrument.correction();
        if (correction.isEmpty()) {
            return readings;
        }
        double[] values = correction.get().of(readings);
        BeyondCalibration.among(reading, instrument, values).ifPresent(beyond::add);
        return values;
    }

    Reader reader(String name, Kind kind, Unit unit) {
        Reader known = readers.get(name);
        if (known == null) {
            known = Reader.of(bench.of(name, kind, unit));
            readers.put(name, known);
        }
        return known;
    }

    Number number(Input input) {
        Number number = numbers.get(input.name());
        if (number == null) {
            throw new IllegalStateException(input.name() + " was not read");
        }
        return number;
    }

    Source own(String name, Supplier<Source> first) {
        Source known = owns.get(name);
        if (known == null) {
            known = first.get();
            owns.put(name, known);
        }
        return known;
    }

    /** An instrument with the errors that it brings, which every world asks for again. */
    record Reader(Instrument instrument, List<Fault> faults) {

        static Reader of(Instrument instrument) {
            return new Reader(instrument, instrument.faults());
        }

        double moved(double value, Readings world) {
            double moved = value;
            for (Fault fault : faults) {
                moved += fault.of(world.error(fault.source()), value);
            }
            return moved;
        }

        Trace trace(double[] values, Readings world) {
            double scale = 1;
            double offset = 0;
            for (Fault fault : faults) {
                double error = world.error(fault.source());
                scale += error * fault.slope();
                offset += error * fault.constant();
            }
            return new Trace(values, scale, offset);
        }
    }

    /** A standard uncertainty that was given for one number, and how well it is known. */
    record Given(double standardUncertainty, double degreesOfFreedom) {

        static Given exactly(double standardUncertainty) {
            return new Given(standardUncertainty, EXACTLY_KNOWN);
        }

        private Shape shape() {
            return Double.isInfinite(degreesOfFreedom) ? Shape.NORMAL : Shape.STUDENT;
        }
    }

    /** One number; where it is the same for all, its own error is one that all share. */
    record Number(double[] readings, @Nullable Given given, Source.Reach reach) {

        double mean() {
            double sum = 0;
            for (double reading : readings) {
                sum += reading;
            }
            return sum / readings.length;
        }

        Number with(DoubleUnaryOperator change) {
            return new Number(Arrays.stream(readings).map(change).toArray(), given, reach);
        }

        Source own(String name, Instrument instrument) {
            if (given != null) {
                return source(
                        name + " as given",
                        given.shape(),
                        given.standardUncertainty(),
                        given.degreesOfFreedom());
            }
            Source one = instrument.errorOf(name);
            double step = one.standardUncertainty();
            double scatter = scatter();
            double ofMean = scatter / Math.sqrt(readings.length);
            // Written after METHODS J.1: rounding does not average out.
            boolean scatterShows = scatter >= Math.sqrt(3) * step || ofMean > step;
            return scatter > 0 && scatterShows
                    ? source(name + " scatter", Shape.STUDENT, ofMean, readings.length - 1.0)
                    : source(one.identity(), one.shape(), step, one.degreesOfFreedom());
        }

        private Source source(String identity, Shape shape, double u, double freedom) {
            return new Source(identity, reach, shape, u, freedom);
        }

        private double scatter() {
            if (readings.length < 2) {
                return 0;
            }
            double mean = mean();
            double sum = 0;
            for (double reading : readings) {
                sum += (reading - mean) * (reading - mean);
            }
            return Math.sqrt(sum / (readings.length - 1));
        }
    }
}
