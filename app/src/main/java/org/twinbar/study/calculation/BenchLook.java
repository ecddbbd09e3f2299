package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Instrument;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.resolving.Resolution;
import org.twinbar.planning.resolving.Resolving;
import org.twinbar.planning.resolving.Smallest;
import org.twinbar.planning.resolving.Typical;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.study.bench.BenchAnswer;
import org.twinbar.study.bench.BenchAsk;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.bench.TestBench;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;
import org.twinbar.uncertainty.Budget;

/** What a bench can resolve, asked before any specimen is broken. */
public final class BenchLook {

    static final Finding.Kind OF_EXAMPLE = Finding.Kind.note(
            "typical-of-example",
            "The typical readings, and how they scatter, are those of the worked example, whose"
                    + " numbers are invented; with a few specimens of your own the answer is about"
                    + " yours.");
    static final Finding.Kind SCATTER_UNKNOWN = Finding.Kind.note(
            "scatter-unknown",
            "Nothing tells how specimens scatter, so that only the instruments count here; say it"
                    + " (scatter), or give more than one specimen.");
    static final Finding.Kind TOO_COARSE = Finding.Kind.warning(
            "bench-too-coarse",
            "The change worth having is %s, but %s per group find nothing below %s four times in"
                    + " five.");
    static final Finding.Kind NEVER = Finding.Kind.warning(
            "instruments-too-coarse",
            "The instruments alone leave open %s, more than the change worth having, %s: no number"
                    + " of specimens makes up for that.");

    private BenchLook() {}

    /** Looks with the readings of the method's worked example. */
    public static BenchAnswer of(Methods methods, BenchAsk ask, Shelf shelf) {
        String name = ask.sheet().method();
        TestMethod method = OwnMethods.named(methods, name);
        WorkedExample example = WorkedExample.of(name)
                .orElseThrow(() -> new InputException(
                        "'%s' has no worked example; give a table of typical specimens"
                                .formatted(name)));
        return of(method, ask, shelf, example.table(), example.curves(), true);
    }

    /**
     * Looks with readings of one's own.
     *
     * @throws InputException where they can't be read, or there is nothing to tell of them
     */
    public static BenchAnswer of(
            Methods methods, BenchAsk ask, Shelf shelf, Upload specimens, Handed curves) {
        TestMethod method = OwnMethods.named(methods, ask.sheet().method());
        return of(method, ask, shelf, specimens, curves, false);
    }

    private static BenchAnswer of(
            TestMethod method,
            BenchAsk ask,
            Shelf shelf,
            Upload specimens,
            Handed curves,
            boolean invented) {
        TestBench bench = TestBench.of(ask.sheet(), method.description(), shelf);
        TypicalReadings readings =
                TypicalReadings.of(method, ask.sheet(), TableFile.read(specimens), curves);
        Property property = readings.property(ask.property());
        Typical typical = readings.typical(property);
        double value = typicalValue(typical, property);
        OptionalDouble scatter = scatter(ask, readings, property, value);
        Resolution resolution =
                Resolving.of(typical, property, bench.bench(), ask.perGroup(), scatter);
        List<Finding> findings = new ArrayList<>();
        if (invented) {
            findings.add(OF_EXAMPLE.with());
        }
        if (scatter.isEmpty()) {
            findings.add(SCATTER_UNKNOWN.with());
        }
        findings.addAll(bench.findings(readings.read()));
        ask.worth().ifPresent(text -> against(text, resolution).ifPresent(findings::add));
        return new BenchAnswer(
                method.description(),
                "%s of %s".formatted(typical.readings().specimen(), specimens.name()),
                resolution,
                instruments(typical, bench.bench()),
                findings);
    }

    private static OptionalDouble scatter(
            BenchAsk ask, TypicalReadings readings, Property property, double value) {
        if (ask.scatter().isPresent()) {
            return OptionalDouble.of(size("scatter", ask.scatter().get(), property, value));
        }
        OptionalDouble found = readings.scatter(property);
        double unit = property.scale() == Property.Scale.RATIO ? Math.abs(value) : 1;
        return found.isEmpty() ? found : OptionalDouble.of(unit * found.getAsDouble());
    }

    private static double typicalValue(Typical typical, Property property) {
        Map<Property, Budget> budgets =
                Result.of(typical.method(), typical.readings()).budgets();
        return Optional.ofNullable(budgets.get(property))
                .map(Budget::value)
                .orElseThrow(() -> new IllegalStateException(
                        "a typical specimen has a number of " + property.name()));
    }

    /** A share of the value where it is compared by ratio, else an amount in its unit. */
    private static double size(String what, String text, Property property, double value) {
        try {
            boolean share = text.strip().endsWith("%") && !property.unit().equals(Unit.PERCENT);
            Quantity quantity = Quantity.parse(text);
            boolean bare = quantity.unit().equals(Unit.ONE);
            double size = share
                    ? Quantity.parseShare(text) * Math.abs(value)
                    : bare ? quantity.value() : quantity.differenceIn(property.unit());
            if (share && property.scale() != Property.Scale.RATIO) {
                throw new InputException("%s: %s has no true zero, so give an amount in %s"
                        .formatted(
                                what,
                                property.label().toLowerCase(java.util.Locale.ROOT),
                                property.unit().symbol()));
            }
            if (!(size >= 0)) {
                throw new InputException(
                        "%s is %s, must be zero or more".formatted(what, text.strip()));
            }
            return size;
        } catch (QuantityException e) {
            throw new InputException("%s: %s".formatted(what, e.getMessage()));
        }
    }

    private static Optional<Finding> against(String text, Resolution resolution) {
        double worth = size("worth", text, resolution.property(), resolution.value());
        if (resolution.fromInstruments().amount().orElse(Double.POSITIVE_INFINITY) > worth) {
            return Optional.of(
                    NEVER.with(amount(resolution.fromInstruments(), resolution), text.strip()));
        }
        return resolution.withScatter().amount().orElse(Double.POSITIVE_INFINITY) > worth
                ? Optional.of(TOO_COARSE.with(
                        text.strip(),
                        resolution.perGroup(),
                        amount(resolution.withScatter(), resolution)))
                : Optional.empty();
    }

    private static String amount(Smallest smallest, Resolution resolution) {
        if (smallest.amount().isEmpty()) {
            return "anything";
        }
        return smallest.share().isPresent()
                ? Figures.two(100 * smallest.share().getAsDouble()) + " %"
                : Figures.two(smallest.amount().getAsDouble()) + " "
                        + resolution.property().unit().symbol();
    }

    private static List<Instrument> instruments(Typical typical, Bench bench) {
        List<Instrument> instruments = new ArrayList<>();
        for (Named named : typical.method().description().asked()) {
            if (typical.readings().has(named)) {
                if (named instanceof Input input) {
                    instruments.add(bench.of(input.name(), input.instrument(), input.unit()));
                } else if (named instanceof Channel channel) {
                    instruments.add(bench.of(channel.name(), channel.instrument(), channel.unit()));
                }
            }
        }
        return instruments.stream()
                .filter(it -> !it.name().equals(Kind.NONE.word()))
                .distinct()
                .toList();
    }
}
