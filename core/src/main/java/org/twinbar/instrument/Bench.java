package org.twinbar.instrument;

import java.util.HashMap;
import java.util.Map;
import java.util.function.BiFunction;
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

    private Bench(Map<String, Given> given) {
        this.given = given;
    }

    /** Returns a bench of which nothing is known. */
    public static Bench usual() {
        return new Bench(Map.of());
    }

    /**
     * Returns this bench with the step of a display given, in a unit of the reading's dimension.
     */
    public Bench withResolution(String name, Quantity step) {
        return with(name, (old, unit) -> old.withResolution(step.differenceIn(unit)));
    }

    /** Returns this bench with the standard uncertainty of a gain given, as a share. */
    public Bench withGain(String name, double standardUncertainty) {
        return with(name, (old, unit) -> old.withGain(standardUncertainty));
    }

    /** Returns this bench with the standard uncertainty of a zero given. */
    public Bench withZero(String name, Quantity standardUncertainty) {
        return with(name, (old, unit) -> old.withZero(standardUncertainty.differenceIn(unit)));
    }

    /** Returns this bench with an instrument whose calibration is known. */
    public Bench withInstrument(String name, Instrument instrument) {
        return with(name, (old, unit) -> instrument);
    }

    private Bench with(String name, BiFunction<Instrument, Unit, Instrument> change) {
        Map<String, Given> more = new HashMap<>(given);
        String key = key(name);
        Given before = more.get(key);
        more.put(
                key,
                before == null
                        ? change::apply
                        : (old, unit) -> change.apply(before.apply(old, unit), unit));
        return new Bench(Map.copyOf(more));
    }

    /** Returns what a reading of this name, kind and unit is read on. */
    public Instrument of(String reading, Kind kind, Unit unit) {
        Instrument usual = kind.usual(unit);
        Given forKind = given.get(key(kind.word()));
        Instrument onBench = forKind == null ? usual : forKind.apply(usual, unit);
        Given forReading = given.get(key(reading));
        return forReading == null
                ? onBench
                : forReading.apply(onBench, unit).withName(reading.replace('_', ' '));
    }

    /** Returns the names for which something was given, as readings or kinds. */
    public java.util.Set<String> names() {
        return given.keySet();
    }

    private static String key(String name) {
        return name.strip().toLowerCase(java.util.Locale.ROOT).replace(' ', '_');
    }

    private interface Given extends BiFunction<Instrument, Unit, Instrument> {}
}
