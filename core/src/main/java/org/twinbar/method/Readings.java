package org.twinbar.method;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.uncertainty.Errors;
import org.twinbar.uncertainty.Source;

/**
 * What was read on one specimen, seen in one world of errors.
 *
 * <p>A method asks for numbers, words, traces, settings and marks, and gets them as they are in
 * this world. Each source of error that is asked about is remembered, so that propagation knows
 * which sources there are; each mark is sought once, in the world without errors, and stands still
 * in all others.
 */
public final class Readings {

    private final Recorded recorded;
    private final Errors errors;

    private Readings(Recorded recorded, Errors errors) {
        this.recorded = recorded;
        this.errors = errors;
    }

    /** Returns the same readings in another world. */
    public Readings in(Errors world) {
        return new Readings(recorded, world);
    }

    public String specimen() {
        return recorded.specimen;
    }

    public String group() {
        return recorded.group;
    }

    /**
     * Returns whether this is the world without errors: the one in which a method looks for
     * findings, since no other world's are kept.
     */
    public boolean atRest() {
        return errors == Errors.NONE;
    }

    public boolean has(Named named) {
        return recorded.numbers.containsKey(named.name())
                || recorded.words.containsKey(named.name())
                || recorded.channels.containsKey(named.name());
    }

    /**
     * Returns a number: the mean of its readings, off by what this world says.
     *
     * <p>A reading has an error of its own from the display's step; several readings have the
     * larger of that and of their scatter's standard error, since rounding does not average out
     * (METHODS J.1). Gain and zero are the instrument's, and shared.
     *
     * @throws IllegalStateException where it was not read; ask {@link #has} first
     */
    public double number(Input input) {
        Recorded.Reader reader = recorded.reader(input.name(), input.instrument(), input.unit());
        double mean = recorded.number(input).mean();
        return reader.moved(mean + error(own(input)), this);
    }

    /**
     * Returns the standard uncertainty that a number has from its readings alone: their step, their
     * scatter, or as it was given; for detection limits.
     *
     * @throws IllegalStateException where it was not read; ask {@link #has} first
     */
    public double readingUncertainty(Input input) {
        return own(input).standardUncertainty();
    }

    private Source own(Input input) {
        Recorded.Number number = recorded.number(input);
        Recorded.Reader reader = recorded.reader(input.name(), input.instrument(), input.unit());
        return recorded.own(
                input.name(),
                () -> number.own(
                        number.reach() == Source.Reach.OWN ? named(input) : plain(input),
                        reader.instrument()));
    }

    /** Returns how many readings a number has; 0 where it was not read. */
    public int count(Input input) {
        Recorded.Number number = recorded.numbers.get(input.name());
        return number == null ? 0 : number.readings().length;
    }

    /** Returns the single readings of a number, corrected by calibration, in the input's unit. */
    public double[] each(Input input) {
        Recorded.Number number = recorded.numbers.get(input.name());
        return number == null ? new double[0] : number.readings().clone();
    }

    /**
     * Returns a word.
     *
     * @throws IllegalStateException where it was not noted; ask {@link #has} first
     */
    public String word(Words words) {
        String word = recorded.words.get(words.name());
        if (word == null) {
            throw new IllegalStateException(words.name() + " was not noted");
        }
        return word;
    }

    /**
     * Returns a channel of the curve, with gain and zero of this world.
     *
     * @throws IllegalStateException where it was not recorded; ask {@link #has} first
     */
    public Trace trace(Channel channel) {
        double[] values = recorded.channels.get(channel.name());
        if (values == null) {
            throw new IllegalStateException(channel.name() + " was not recorded");
        }
        Recorded.Reader reader =
                recorded.reader(channel.name(), channel.instrument(), channel.unit());
        return reader.trace(values, this);
    }

    /**
     * Returns the error that one reading of a channel has afresh from its display's step.
     *
     * @param place what the reading is called, such as {@code peak}; places that share a name share
     *     the error
     */
    public double resolutionAt(Channel channel, String place) {
        Recorded.Reader reader =
                recorded.reader(channel.name(), channel.instrument(), channel.unit());
        Source own = recorded.own(
                channel.name() + " at " + place,
                () -> reader.instrument().errorOf(named(channel) + " at " + place));
        return error(own);
    }

    /** Returns the smallest step of the display that a channel was read on, 0 where it has none. */
    public double step(Channel channel) {
        return recorded.reader(channel.name(), channel.instrument(), channel.unit())
                .instrument()
                .resolution();
    }

    /**
     * Returns what is the same in all worlds, such as the noise of a curve, calculated once.
     *
     * @param what names it among all that the method keeps so
     */
    public <T> T once(String what, Class<T> type, Supplier<T> calculation) {
        Object known = recorded.kept.get(what);
        if (known == null) {
            known = calculation.get();
            recorded.kept.put(what, known);
        }
        return type.cast(known);
    }

    public double setting(Setting setting) {
        return recorded.settings.getOrDefault(setting.name(), setting.preset());
    }

    public String choice(Choice choice) {
        return recorded.words.getOrDefault(choice.name(), choice.preset());
    }

    /**
     * Returns the row of a mark: where a person put it, else where the method found it in the world
     * without errors; empty where it was not found.
     */
    public OptionalInt mark(Mark mark, Supplier<OptionalInt> search) {
        Integer put = recorded.movedMarks.get(mark.name());
        if (put != null) {
            recorded.foundMarks.putIfAbsent(mark, OptionalInt.of(put));
            return OptionalInt.of(put);
        }
        OptionalInt found = recorded.foundMarks.get(mark);
        if (found == null) {
            found = search.get();
            recorded.foundMarks.put(mark, found);
        }
        return found;
    }

    /**
     * Returns the error of a source in this world, and remembers the source.
     *
     * <p>A method calls it for errors that no instrument brings, such as the energy of a piece that
     * flew off, or the thermal lag that one group has.
     */
    public double error(Source source) {
        if (source.standardUncertainty() == 0) {
            return 0;
        }
        if (atRest()) {
            recorded.sources.putIfAbsent(source.identity(), source);
            return 0;
        }
        return errors.of(source);
    }

    /** Returns the sources that have been asked about so far, in that order. */
    public List<Source> sources() {
        return List.copyOf(recorded.sources.values());
    }

    /** Returns the marks that have been sought so far, in that order. */
    public Map<Mark, OptionalInt> marks() {
        return Collections.unmodifiableMap(new LinkedHashMap<>(recorded.foundMarks));
    }

    /** Returns what was read where its instrument was never calibrated. */
    List<BeyondCalibration> beyondCalibration() {
        return List.copyOf(recorded.beyond);
    }

    /** Returns the instruments that were asked about and assumed, by their names. */
    public List<Instrument> assumed() {
        return recorded.readers.values().stream()
                .map(Recorded.Reader::instrument)
                .filter(instrument -> instrument.origin() == Instrument.Origin.ASSUMED)
                .distinct()
                .toList();
    }

    /**
     * Begins these readings anew, on another bench and in another group, to be changed.
     *
     * <p>For typical readings, which no calibration of the old or the new bench corrects.
     */
    public Builder again(String group, Bench bench) {
        return new Builder(recorded.on(group, bench));
    }

    private String named(Named reading) {
        return specimen() + " " + plain(reading);
    }

    private static String plain(Named reading) {
        return reading.name().replace('_', ' ');
    }

    /** Begins the readings of one specimen. */
    public static Builder of(String specimen, String group, Bench bench) {
        return new Builder(new Recorded(specimen, group, bench));
    }

    /** Collects the readings of one specimen, each in the unit of its description. */
    public static final class Builder {
        private final Recorded recorded;

        private Builder(Recorded recorded) {
            this.recorded = recorded;
        }

        /** Adds the readings of a number; several are repeats of the same thing. */
        public Builder number(Input input, double... readings) {
            return number(input, null, Source.Reach.OWN, readings);
        }

        /** Adds a number whose own standard uncertainty was given. */
        public Builder numberWithUncertainty(Input input, double reading, double own) {
            return number(input, Recorded.Given.exactly(own), Source.Reach.OWN, reading);
        }

        /** Adds a number whose own standard uncertainty was found from so many looks. */
        public Builder numberWithUncertainty(
                Input input, double reading, double own, double degreesOfFreedom) {
            return number(
                    input, new Recorded.Given(own, degreesOfFreedom), Source.Reach.OWN, reading);
        }

        /**
         * Adds a number that was read once for all specimens, such as the arm of a pendulum: what
         * is wrong with that reading moves them together, and does not average out.
         */
        public Builder numberForAll(Input input, double... readings) {
            return number(input, null, Source.Reach.SHARED, readings);
        }

        /** Adds a number that was read once for all, with its own standard uncertainty. */
        public Builder numberForAllWithUncertainty(Input input, double reading, double own) {
            return number(input, Recorded.Given.exactly(own), Source.Reach.SHARED, reading);
        }

        private Builder number(
                Input input, Recorded.@Nullable Given own, Source.Reach reach, double... readings) {
            if (readings.length == 0) {
                throw new IllegalArgumentException(
                        "%s of %s has no reading".formatted(input.name(), recorded.specimen));
            }
            for (double reading : readings) {
                if (!input.limits().allow(reading)) {
                    throw new IllegalArgumentException("%s of %s is %s %s, must be %s"
                            .formatted(
                                    input.name(),
                                    recorded.specimen,
                                    reading,
                                    input.unit().symbol(),
                                    input.limits().describe(input.unit())));
                }
            }
            double[] values =
                    recorded.corrected(input, input.instrument(), input.unit(), readings.clone());
            recorded.numbers.put(input.name(), new Recorded.Number(values, own, reach));
            return this;
        }

        /**
         * Adds a word that was noted, or the way of calculating that was chosen.
         *
         * @throws IllegalArgumentException where the description doesn't allow it there
         */
        public Builder word(Named words, String word) {
            List<String> allowed = words instanceof Words noted
                    ? noted.allowed()
                    : words instanceof Choice choice ? choice.allowed() : List.of();
            if (!allowed.isEmpty() && !allowed.contains(word)) {
                throw new IllegalArgumentException("%s of %s is '%s', must be one of %s"
                        .formatted(
                                words.name(), recorded.specimen, word, String.join(", ", allowed)));
            }
            recorded.words.put(words.name(), word);
            return this;
        }

        /**
         * Adds a channel of the curve; the array is kept, not copied, unless a calibration corrects
         * it.
         */
        public Builder channel(Channel channel, double[] values) {
            for (double[] other : recorded.channels.values()) {
                if (other.length != values.length) {
                    throw new IllegalArgumentException(
                            "%s of %s has %s rows, another channel has %s"
                                    .formatted(
                                            channel.name(),
                                            recorded.specimen,
                                            values.length,
                                            other.length));
                }
            }
            recorded.channels.put(
                    channel.name(),
                    recorded.corrected(channel, channel.instrument(), channel.unit(), values));
            return this;
        }

        /**
         * Multiplies a number or a channel that is there already.
         *
         * @throws IllegalArgumentException where a number then is beyond its limits
         */
        public Builder scale(Named reading, double factor) {
            return each(reading, value -> factor * value);
        }

        /**
         * Adds to a number or a channel that is there already, for scales without a true zero.
         *
         * @throws IllegalArgumentException where a number then is beyond its limits
         */
        public Builder shift(Named reading, double by) {
            return each(reading, value -> value + by);
        }

        private Builder each(Named reading, DoubleUnaryOperator change) {
            Recorded.Number number = recorded.numbers.get(reading.name());
            if (number != null && reading instanceof Input input) {
                Recorded.Number changed = number.with(change);
                if (!input.limits().allow(changed.mean())) {
                    throw new IllegalArgumentException("%s of %s would be %s"
                            .formatted(input.name(), recorded.specimen, changed.mean()));
                }
                recorded.numbers.put(input.name(), changed);
            }
            double[] channel = recorded.channels.get(reading.name());
            if (channel != null) {
                recorded.channels.put(
                        reading.name(), Arrays.stream(channel).map(change).toArray());
            }
            return this;
        }

        /**
         * Sets a number of the calculation.
         *
         * @throws IllegalArgumentException where it is beyond its limits
         */
        public Builder setting(Setting setting, double value) {
            if (!setting.limits().allow(value)) {
                throw new IllegalArgumentException("%s is %s %s, must be %s"
                        .formatted(
                                setting.name(),
                                value,
                                setting.unit().symbol(),
                                setting.limits().describe(setting.unit())));
            }
            recorded.settings.put(setting.name(), value);
            return this;
        }

        /** Puts a mark on a row, where a person moved it. */
        public Builder mark(Mark mark, int row) {
            recorded.movedMarks.put(mark.name(), row);
            return this;
        }

        /**
         * Returns the readings.
         *
         * @throws IllegalArgumentException where a mark was put on a row that the curve doesn't
         *     have
         */
        public Readings build() {
            int rows = recorded.channels.values().stream()
                    .mapToInt(c -> c.length)
                    .max()
                    .orElse(0);
            recorded.movedMarks.forEach((mark, row) -> {
                if (row < 0 || row >= rows) {
                    throw new IllegalArgumentException(
                            "%s of %s was put on row %s, the curve has rows 0 to %s"
                                    .formatted(mark, recorded.specimen, row, rows - 1));
                }
            });
            return new Readings(recorded.asTypedIn(), Errors.NONE);
        }
    }
}
