package org.twinbar.method;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.twinbar.finding.Finding;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Model;
import org.twinbar.uncertainty.MonteCarlo;
import org.twinbar.uncertainty.Propagation;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * What is known of one specimen after its readings were calculated.
 *
 * @param yields what became of each property, in the method's order
 * @param budgets for the properties that have a number, what may be wrong with it
 * @param ends for the properties that are known by bounds, what may be wrong with those
 * @param marks the places on its curve, where there is one, in the order of the description
 */
public record Result(
        String specimen,
        String group,
        Map<Property, Yield> yields,
        Map<Property, Budget> budgets,
        Map<Property, Ends> ends,
        List<Finding> findings,
        Map<Mark, OptionalInt> marks) {

    public Result {
        yields = Collections.unmodifiableMap(new LinkedHashMap<>(yields));
        budgets = Collections.unmodifiableMap(new LinkedHashMap<>(budgets));
        ends = Collections.unmodifiableMap(new LinkedHashMap<>(ends));
        findings = List.copyOf(findings);
        marks = Collections.unmodifiableMap(new LinkedHashMap<>(marks));
    }

    /**
     * Calculates one specimen: once as it was read, and again in the worlds in which each source of
     * error that it met is moved.
     */
    public static Result of(TestMethod method, Readings readings) {
        Outcome outcome = method.calculate(readings);
        List<Budget> moved = Propagation.linear(
                outcome.numbers(),
                errors -> method.calculate(readings.in(errors)).numbers(),
                readings.sources());
        Map<Property, Budget> budgets = new LinkedHashMap<>();
        Map<Property, Ends> ends = new LinkedHashMap<>();
        int at = 0;
        for (Map.Entry<Property, Yield> entry : outcome.yields().entrySet()) {
            Budget budget = moved.get(at);
            Yield yield = entry.getValue();
            Ends bounds = Ends.of(yield, budget, moved.get(at + 1));
            at += 2;
            if (bounds.any()) {
                ends.put(entry.getKey(), bounds);
            }
            if (yield instanceof Yield.Value) {
                budgets.put(entry.getKey(), budget);
            } else if (yield instanceof Yield.Fitted fitted) {
                budgets.put(entry.getKey(), withFit(budget, fitted, readings, entry.getKey()));
            }
        }
        List<Finding> findings = new ArrayList<>(outcome.findings());
        readings.beyondCalibration().forEach(it -> findings.add(it.finding()));
        return new Result(
                readings.specimen(),
                readings.group(),
                outcome.yields(),
                budgets,
                ends,
                findings,
                inOrder(method.description().marks(), readings.marks()));
    }

    /** Returns this result with other findings. */
    public Result withFindings(List<Finding> all) {
        return new Result(specimen, group, yields, budgets, ends, all, marks);
    }

    private static Map<Mark, OptionalInt> inOrder(List<Mark> order, Map<Mark, OptionalInt> found) {
        Map<Mark, OptionalInt> marks = new LinkedHashMap<>();
        for (Mark mark : order) {
            OptionalInt row = found.get(mark);
            if (row != null) {
                marks.put(mark, row);
            }
        }
        return marks;
    }

    /**
     * Returns this result with a finding for each number that bends within the uncertainty of its
     * readings: by first order and by worlds drawn at random, both are said. Where a curve would
     * have to be worked through in each world, none are drawn, and that is said.
     *
     * @param readings those that it was calculated from
     */
    public Result whereItBends(TestMethod method, Readings readings, MonteCarlo run) {
        List<Bending> bending = budgets.entrySet().stream()
                .filter(it -> it.getValue().bends())
                .map(it -> new Bending(it.getKey(), it.getValue()))
                .toList();
        if (bending.isEmpty()) {
            return this;
        }
        boolean curve = method.description().channels().stream().anyMatch(readings::has);
        Map<Property, MonteCarlo.Drawn> drawn = curve ? Map.of() : drawn(method, readings, run);
        List<Finding> all = new ArrayList<>(findings);
        for (Bending each : bending) {
            MonteCarlo.Drawn of = drawn.get(each.property());
            all.add(of == null ? each.undrawn() : each.finding(of, run));
        }
        return withFindings(all);
    }

    /**
     * Draws worlds at random for one specimen, for methods that bend within the uncertainty of
     * their readings; beside the budgets, not instead of them.
     *
     * @return for each property that has a number, what the worlds gave
     */
    public static Map<Property, MonteCarlo.Drawn> drawn(
            TestMethod method, Readings readings, MonteCarlo run) {
        Outcome outcome = method.calculate(readings);
        List<Source> sources = new ArrayList<>(readings.sources());
        List<Property> properties = List.copyOf(outcome.yields().keySet());
        Map<Integer, Source> fits = new LinkedHashMap<>();
        for (int i = 0; i < properties.size(); i++) {
            if (outcome.yields().get(properties.get(i)) instanceof Yield.Fitted fitted) {
                Source fit = fit(readings, properties.get(i), fitted);
                fits.put(i, fit);
                sources.add(fit);
            }
        }
        Model model = errors -> {
            double[] numbers = method.calculate(readings.in(errors)).numbers();
            fits.forEach((at, fit) -> numbers[2 * at] += errors.of(fit));
            return numbers;
        };
        List<MonteCarlo.Drawn> drawn = run.run(model, sources);
        Map<Property, MonteCarlo.Drawn> found = new LinkedHashMap<>();
        for (int i = 0; i < properties.size(); i++) {
            if (drawn.get(2 * i).worlds() > 0) {
                found.put(properties.get(i), drawn.get(2 * i));
            }
        }
        return found;
    }

    private static Source fit(Readings readings, Property property, Yield.Fitted fitted) {
        return new Source(
                readings.specimen() + " " + property.name().replace('_', ' ') + " fit",
                Source.Reach.OWN,
                Shape.STUDENT,
                fitted.standardUncertainty(),
                fitted.degreesOfFreedom());
    }

    private static Budget withFit(
            Budget budget, Yield.Fitted fitted, Readings readings, Property property) {
        if (fitted.standardUncertainty() == 0) {
            return budget;
        }
        Map<Source, Double> shifts = new LinkedHashMap<>(budget.shifts());
        Source scatter = fit(readings, property, fitted);
        shifts.put(scatter, fitted.standardUncertainty());
        return new Budget(budget.value(), shifts, budget.bend());
    }
}
