package org.twinbar.study.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Spelling;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Named;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.file.TestSheet;

/** The instruments of one test, as its sheet names and describes them. */
public final class TestBench {

    static final Finding.Kind NOT_READ = Finding.Kind.warning(
            "instrument-not-read",
            "Nothing here was read on '%s', so that the %s said of it changes nothing; was another"
                    + " reading meant?");

    private final Description description;
    private final Shelf shelf;
    private final Map<String, Target> targets = new LinkedHashMap<>();
    private final Map<String, String> said = new LinkedHashMap<>();
    private final Set<String> calibrated = new LinkedHashSet<>();
    private final Set<Finding> findings = new LinkedHashSet<>();
    private Bench bench = Bench.usual();

    /**
     * What may be named.
     *
     * @param reading the reading that is called so; none where it is a kind of instrument
     */
    private record Target(String name, Optional<Named> reading, Kind kind, Optional<Unit> unit) {
        boolean isAmong(Collection<Named> read) {
            return reading.isPresent()
                    ? read.contains(reading.get())
                    : read.stream().anyMatch(it -> kindOf(it) == kind);
        }
    }

    private TestBench(Description description, Shelf shelf) {
        this.description = description;
        this.shelf = shelf;
        for (Kind kind : Kind.values()) {
            add(new Target(kind.word(), Optional.empty(), kind, Optional.empty()));
        }
        description.inputs().forEach(it -> add(target(it, it.instrument(), it.unit())));
        description.channels().forEach(it -> add(target(it, it.instrument(), it.unit())));
    }

    private static Target target(Named reading, Kind kind, Unit unit) {
        return new Target(reading.name(), Optional.of(reading), kind, Optional.of(unit));
    }

    private void add(Target target) {
        targets.put(plain(target.name()), target);
    }

    /**
     * Reads what a sheet says of its instruments.
     *
     * @throws InputException where a name is neither a reading of the method nor a kind of
     *     instrument, a size is none, an instrument is not on the shelf or reads something else, or
     *     both a calibration and an error of gain or zero are given
     */
    public static TestBench of(TestSheet sheet, Description description, Shelf shelf) {
        TestBench found = new TestBench(description, shelf);
        sheet.instrument().forEach((name, tool) -> found.instrument(sheet, name, tool));
        sheet.resolution().forEach((name, text) -> {
            Target target = found.target("resolution", name);
            Quantity step = size("resolution", name, text);
            found.bench = found.bench.withResolution(target.name(), inUnit(step, target));
        });
        sheet.calibration().forEach((name, text) -> {
            Target target = found.target("calibration", name);
            found.refuseCalibrated(target, "calibration");
            found.bench = found.bench.withGain(target.name(), share(name, text));
        });
        sheet.zero().forEach((name, text) -> {
            Target target = found.target("zero", name);
            found.refuseCalibrated(target, "zero");
            Quantity zero = size("zero", name, text);
            found.bench = found.bench.withZero(target.name(), inUnit(zero, target));
        });
        return found;
    }

    public Bench bench() {
        return bench;
    }

    /**
     * Returns what is to be said of the instruments.
     *
     * @param read what this test has readings of
     */
    public List<Finding> findings(Collection<Named> read) {
        List<Finding> all = new ArrayList<>(findings);
        said.forEach((name, what) -> {
            Target target = targets.get(plain(name));
            if (target != null && !target.isAmong(read)) {
                all.add(NOT_READ.with(name, what));
            }
        });
        return all;
    }

    private void instrument(TestSheet sheet, String name, String tool) {
        Target target = target("instrument", name);
        KeptInstrument kept =
                shelf.find(tool).orElseThrow(() -> shelf.unknown(tool, "the workspace"));
        if (!kept.reads(target.kind())) {
            throw new InputException("'%s' is a %s; %s is read on a %s"
                    .formatted(
                            kept.name(),
                            kept.sheet().kind(),
                            target.name().replace('_', ' '),
                            target.kind().word()));
        }
        Optional<Unit> unit = target.unit().or(() -> unitOf(target.kind()));
        if (unit.filter(it -> !it.measuresSameAs(kept.unit())).isPresent()) {
            throw new InputException("'%s' reads in %s; %s is in %s"
                    .formatted(
                            kept.name(),
                            kept.unit().named(),
                            target.name().replace('_', ' '),
                            unit.get().named()));
        }
        KeptInstrument.InUse inUse = kept.at(sheet.date());
        bench = bench.withInstrument(target.name(), inUse.instrument());
        findings.addAll(inUse.findings());
        if (inUse.instrument().correction().isPresent()) {
            calibrated.add(plain(target.name()));
        }
    }

    private static Optional<Unit> unitOf(Kind kind) {
        return kind == Kind.NONE ? Optional.empty() : Optional.of(Unit.of(kind.unit()));
    }

    private void refuseCalibrated(Target target, String what) {
        boolean ofItsKind = target.reading().isPresent()
                && calibrated.contains(plain(target.kind().word()));
        if (calibrated.contains(plain(target.name())) || ofItsKind) {
            throw new InputException(
                    "%s of %s can't be given beside an instrument that was calibrated: its line says it"
                            .formatted(what, target.name().replace('_', ' ')));
        }
    }

    private Target target(String what, String name) {
        Target found = targets.get(plain(name));
        if (found == null) {
            throw new InputException("%s '%s': no reading of %s and no instrument is called so%s"
                    .formatted(
                            what,
                            name,
                            description.name(),
                            Spelling.hint(
                                    name,
                                    targets.values().stream().map(Target::name).toList())));
        }
        said.merge(name, what, (one, other) -> one + " and " + other);
        return found;
    }

    private static Quantity size(String what, String name, String text) {
        try {
            Quantity quantity = Quantity.parse(text);
            if (!(quantity.value() >= 0)) {
                throw new InputException(
                        "%s of %s is %s, must be zero or more".formatted(what, name, text));
            }
            return quantity;
        } catch (QuantityException e) {
            throw new InputException("%s of %s: %s".formatted(what, name, e.getMessage()));
        }
    }

    /** A bare number is in the unit of the reading. */
    private static Quantity inUnit(Quantity quantity, Target target) {
        if (!quantity.unit().symbol().isEmpty()) {
            return quantity;
        }
        return target.unit()
                .map(unit -> new Quantity(quantity.value(), unit))
                .orElseThrow(() -> new InputException("'%s' of the %s needs its unit"
                        .formatted(quantity.value(), target.name())));
    }

    private static double share(String name, String text) {
        try {
            double share = Quantity.parseShare(text);
            if (!(share >= 0)) {
                throw new InputException(
                        "calibration of %s is %s, must be zero or more".formatted(name, text));
            }
            return share;
        } catch (QuantityException e) {
            throw new InputException("calibration of %s: %s, as a share of the reading"
                    .formatted(name, e.getMessage()));
        }
    }

    private static Kind kindOf(Named reading) {
        return reading instanceof Input input
                ? input.instrument()
                : reading instanceof Channel channel ? channel.instrument() : Kind.NONE;
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    }
}
