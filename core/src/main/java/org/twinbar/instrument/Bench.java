package org.twinbar.instrument;

import java.util.HashMap;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.Unit;

/**
 * The instruments of one bench: what was given for a reading by its name, else for its kind of
 * instrument, else the usual one of that kind.
 *
 * <p>Names of kinds are their words ({@code caliper}); an instrument that was given for one reading
 * is named by it ({@code width}), and shares its errors with no other.
 */
public final class Bench {

    private final Map<String, Given> given;
    private final UnaryOperator<Instrument> change;

    private Bench(Map<String, Given> given, UnaryOperator<Instrument> change) {
        this.given = given;
        this.change = change;
    }

    /** Returns a bench of which nothing is known. */
    public static Bench usual() {
        return new Bench(Map.of(), UnaryOperator.identity());
    }

    /**
     * Returns this bench with the step of a display given, in a unit of the reading's dimension.
     */
    public Bench withResolution(String name, Quantity step) {
        return with(
                name,
                Naming.AS_READING,
                (old, unit) -> old.withResolution(step.differenceIn(unit)));
    }

    /** Returns this bench with the standard uncertainty of a gain given, as a share. */
    public Bench withGain(String name, double standardUncertainty) {
        return with(name, Naming.AS_READING, (old, unit) -> old.withGain(standardUncertainty));
    }

    /** Returns this bench with the standard uncertainty of a zero given. */
    public Bench withZero(String name, Quantity standardUncertainty) {
        return with(
                name,
                Naming.AS_READING,
                (old, unit) -> old.withZero(standardUncertainty.differenceIn(unit)));
    }

    /**
     * Returns this bench with an instrument that has a name of its own; readings that are read on
     * it share its errors.
     */
    public Bench withInstrument(String name, Instrument instrument) {
        return with(name, Naming.OWN, (old, unit) -> instrument.in(unit));
    }

    /** Returns this bench with each of its instruments changed. */
    public Bench withEach(UnaryOperator<Instrument> further) {
        return new Bench(given, instrument -> further.apply(change.apply(instrument)));
    }

    private Bench with(
            String name, Naming naming, BiFunction<Instrument, Unit, Instrument> further) {
        Map<String, Given> more = new HashMap<>(given);
        Given first = more.getOrDefault(key(name), new Given(Naming.AS_READING, (old, u) -> old));
        more.put(key(name), first.then(naming, further));
        return new Bench(Map.copyOf(more), change);
    }

    /** Returns what a reading of this name, kind and unit is read on. */
    public Instrument of(String reading, Kind kind, Unit unit) {
        return change.apply(onBench(reading, kind, unit));
    }

    private Instrument onBench(String reading, Kind kind, Unit unit) {
        Instrument usual = kind.usual(unit);
        Given forKind = given.get(key(kind.word()));
        Instrument onBench = forKind == null ? usual : forKind.change().apply(usual, unit);
        Given forReading = given.get(key(reading));
        if (forReading == null) {
            return onBench;
        }
        Instrument own = forReading.change().apply(onBench, unit);
        return forReading.naming() == Naming.OWN ? own : own.withName(reading.replace('_', ' '));
    }

    private static String key(String name) {
        return name.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '_');
    }

    /** What an instrument is called that was given for one reading. */
    private enum Naming {
        AS_READING,
        OWN
    }

    private record Given(Naming naming, BiFunction<Instrument, Unit, Instrument> change) {
        Given then(Naming next, BiFunction<Instrument, Unit, Instrument> more) {
            return new Given(
                    naming == Naming.OWN ? naming : next,
                    (old, unit) -> more.apply(change.apply(old, unit), unit));
        }
    }
}
