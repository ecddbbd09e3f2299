package org.twinbar.method.own;

import static org.twinbar.instrument.Kind.LOAD_CELL;
import static org.twinbar.instrument.Kind.TORQUE_SENSOR;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Mark;
import org.twinbar.method.Named;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Setting;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.CurveFindings;

/** Makes a test method of what a person wrote down. */
public final class OwnMethod {

    static final Finding.Kind OUT_OF_VALIDITY = Finding.Kind.warning(
            "outside-method",
            "%s is %s; the method was written for %s, and beyond that its formula may not hold.");

    /** What is recorded on these rises to a peak when something gives way. */
    private static final Set<org.twinbar.instrument.Kind> LOADS = Set.of(LOAD_CELL, TORQUE_SENSOR);

    /** Curve functions read every row, in every world. */
    private static final int MOST_CURVE_FUNCTIONS = 20;

    private OwnMethod() {}

    /**
     * Returns the method, its formulas parsed and their units followed through.
     *
     * @throws FormulaException where a formula can't be read, names what does not stand before it,
     *     holds what a formula may not, has units that don't go together, or gives something else
     *     than its property measures
     */
    public static TestMethod of(OwnPlan plan) {
        return new Building(plan).method();
    }

    /** Goes through a plan from top to bottom; what is declared may be named below it. */
    private static final class Building {
        private final OwnPlan plan;
        private final Map<String, Kind> variables = new LinkedHashMap<>();
        private final Map<String, Channel> channels = new LinkedHashMap<>();
        private final Map<String, Kind> channelKinds = new HashMap<>();
        private final List<Numbered> numbers = new ArrayList<>();
        private final List<Calculated> calculated = new ArrayList<>();
        private final Set<Mark> marks = new LinkedHashSet<>();
        private final Set<String> read = new HashSet<>();
        private int curveFunctions;

        private Building(OwnPlan plan) {
            this.plan = plan;
        }

        private TestMethod method() {
            plan.asks().forEach(ask -> ask.ways().forEach(way -> way.forEach(this::declare)));
            plan.settings().forEach(this::declare);
            plan.steps()
                    .forEach(
                            step -> add(step.name(), Optional.empty(), Limits.ANY, step.formula()));
            plan.results()
                    .forEach(wanted -> add(
                            wanted.property().name(),
                            Optional.of(wanted.property()),
                            wanted.valid(),
                            wanted.formula()));
            Description description = new Description(
                    plan.name(),
                    plan.version(),
                    plan.title(),
                    plan.standard(),
                    plan.asks(),
                    List.copyOf(plan.settings()),
                    List.copyOf(marks),
                    plan.results().stream().map(OwnPlan.Wanted::property).toList(),
                    plan.cautions());
            List<Channel> loads = channels.values().stream()
                    .filter(channel -> LOADS.contains(channel.instrument()))
                    .filter(channel -> marks.contains(Evaluation.peakOf(channel)))
                    .toList();
            return new Checked(
                    description,
                    Map.copyOf(channels),
                    loads,
                    List.copyOf(numbers),
                    List.copyOf(calculated));
        }

        private void declare(Named named) {
            if (named instanceof Input input) {
                variables.put(input.name(), Kind.of(input.unit()));
                read.add(input.name());
                numbers.add(new Numbered(input.name(), input.label(), input));
            } else if (named instanceof Setting setting) {
                variables.put(setting.name(), Kind.of(setting.unit()));
                numbers.add(new Numbered(setting.name(), setting.label(), setting));
            } else if (named instanceof Channel channel) {
                channels.put(channel.name(), channel);
                read.add(channel.name());
                channelKinds.put(channel.name(), Kind.of(channel.unit()));
            }
        }

        private void add(String name, Optional<Property> property, Limits valid, String formula) {
            try {
                Term term = FormulaParser.parse(formula, variables.keySet(), channels.keySet());
                Kind kind = new UnitCheck(variables, channelKinds).of(term);
                property.ifPresent(it -> requireMeasures(it, kind));
                if (look(term)) {
                    read.add(name);
                } else if (property.isPresent()) {
                    throw new FormulaException("it depends on nothing that is read");
                }
                calculated.add(new Calculated(name, property, valid, term));
                variables.put(name, property.map(it -> Kind.of(it.unit())).orElse(kind));
            } catch (FormulaException e) {
                throw new FormulaException("formula of '%s': %s".formatted(name, e.getMessage()));
            }
        }

        private static void requireMeasures(Property property, Kind kind) {
            Kind wanted = Kind.of(property.unit());
            if (!wanted.dimension().equals(kind.dimension())) {
                throw new FormulaException("it gives %s, but %s is %s"
                        .formatted(
                                kind.describe(),
                                property.unit().named(),
                                property.unit().dimension().describe()));
            }
            if (wanted.isPlace() && !kind.isPlace()) {
                throw new FormulaException(
                        "it gives a difference of temperatures, so its unit must be K, not %s"
                                .formatted(property.unit().named()));
            }
        }

        /**
         * Counts and marks what a term takes from curves; returns whether it hangs on a reading.
         */
        private boolean look(Term term) {
            if (term instanceof Term.Variable variable) {
                return read.contains(variable.name());
            }
            if (term instanceof Term.Negative negative) {
                return look(negative.of());
            }
            if (term instanceof Term.Operation operation) {
                return look(operation.left()) | look(operation.right());
            }
            if (term instanceof Term.Call call) {
                return call.of().stream().map(this::look).reduce(false, Boolean::logicalOr);
            }
            return term instanceof Term.OfCurve ofCurve && look(ofCurve);
        }

        private boolean look(Term.OfCurve ofCurve) {
            if (++curveFunctions > MOST_CURVE_FUNCTIONS) {
                throw new FormulaException("the formulas read the curve more than %s times"
                        .formatted(MOST_CURVE_FUNCTIONS));
            }
            List<String> names = ofCurve.channels();
            switch (ofCurve.function()) {
                case PEAK -> mark(names.get(0));
                case AT_PEAK -> mark(names.get(1));
                default -> {
                    // The others go by no mark.
                }
            }
            return true;
        }

        private void mark(String channelName) {
            Channel channel = channels.get(channelName);
            if (channel != null) {
                marks.add(Evaluation.peakOf(channel));
            }
        }
    }

    /** A number that is read or set. */
    private record Numbered(String name, String label, Named named) {}

    /** A value that follows from others; a property's where it has one. */
    private record Calculated(String name, Optional<Property> property, Limits valid, Term term) {}

    /**
     * A method whose formulas were found good.
     *
     * @param loads the channels of force or torque whose peak a formula takes
     */
    private record Checked(
            Description description,
            Map<String, Channel> channels,
            List<Channel> loads,
            List<Numbered> numbers,
            List<Calculated> calculated)
            implements TestMethod {

        @Override
        public Outcome calculate(Readings readings) {
            Outcome.Builder out = Outcome.of(description);
            Evaluation evaluation = new Evaluation(readings, channels);
            Map<String, String> reasons = new HashMap<>();
            for (Numbered number : numbers) {
                if (number.named() instanceof Setting setting) {
                    evaluation.put(
                            number.name(),
                            Evaluation.inSi(setting.unit(), readings.setting(setting)));
                } else if (number.named() instanceof Input input && readings.has(input)) {
                    evaluation.put(
                            number.name(), Evaluation.inSi(input.unit(), readings.number(input)));
                } else {
                    reasons.put(number.name(), notRead(number.label()));
                }
            }
            for (Channel channel : channels.values()) {
                if (!readings.has(channel)) {
                    reasons.put(channel.name(), notRead(channel.label()));
                }
            }
            for (Calculated value : calculated) {
                calculate(value, readings, evaluation, reasons, out);
            }
            if (readings.atRest()) {
                loads.forEach(load -> findings(readings, load, out));
            }
            return out.build();
        }

        /** A curve of force is looked at as one of any other method. */
        private static void findings(Readings readings, Channel load, Outcome.Builder out) {
            OptionalInt peak = readings.has(load)
                    ? readings.marks().getOrDefault(Evaluation.peakOf(load), OptionalInt.empty())
                    : OptionalInt.empty();
            if (peak.isPresent()) {
                CurveFindings.of(readings, load, peak.getAsInt()).forEach(out::found);
            }
        }

        private static void calculate(
                Calculated value,
                Readings readings,
                Evaluation evaluation,
                Map<String, String> reasons,
                Outcome.Builder out) {
            Optional<String> reason = missing(value.term(), reasons);
            reason.ifPresent(it -> reasons.put(value.name(), it));
            if (reason.isEmpty()) {
                evaluation.put(value.name(), evaluation.of(value.term()));
            }
            if (value.property().isEmpty()) {
                return;
            }
            Property property = value.property().get();
            if (reason.isPresent()) {
                out.missing(property, reason.get());
                return;
            }
            Yield yield = Yield.of(Evaluation.fromSi(property.unit(), evaluation.of(value.name())));
            out.put(property, yield);
            if (readings.atRest()
                    && yield instanceof Yield.Value found
                    && !value.valid().allow(found.value())) {
                out.found(OUT_OF_VALIDITY.with(
                        property.label(),
                        Figures.three(found.value()) + behind(property),
                        value.valid().describe(property.unit())));
            }
        }

        private static String behind(Property property) {
            String symbol = property.unit().symbol();
            return symbol.isEmpty() ? "" : " " + symbol;
        }

        private static String notRead(String label) {
            return "'%s' was not read".formatted(label);
        }

        /** Returns why a term has no value, if something that it names has none. */
        private static Optional<String> missing(Term term, Map<String, String> reasons) {
            if (term instanceof Term.Variable variable) {
                return Optional.ofNullable(reasons.get(variable.name()));
            }
            if (term instanceof Term.Negative negative) {
                return missing(negative.of(), reasons);
            }
            if (term instanceof Term.Operation operation) {
                return missing(operation.left(), reasons)
                        .or(() -> missing(operation.right(), reasons));
            }
            if (term instanceof Term.Call call) {
                return call.of().stream()
                        .flatMap(of -> missing(of, reasons).stream())
                        .findFirst();
            }
            return term instanceof Term.OfCurve ofCurve
                    ? ofCurve.channels().stream()
                            .filter(reasons::containsKey)
                            .map(reasons::get)
                            .findFirst()
                    : Optional.empty();
        }
    }
}
