package org.twinbar.method;

import java.util.Comparator;
import java.util.Map;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.StudentT;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.MonteCarlo;
import org.twinbar.uncertainty.Source;

/**
 * A number that bends within the uncertainty of its readings, so that the usual first order may
 * mislead: what first order says, and what worlds of errors drawn at random say.
 */
record Bending(Property property, Budget budget) {

    static final Finding.Kind DRAWN = Finding.Kind.note(
            "bends",
            "%s doesn't go straight within the uncertainty of its readings (of %s most). By first"
                    + " order it lies between %s and %s; by %s worlds of errors drawn at random"
                    + " (seed %s), which follow the bend, between %s and %s %s (95 %% each).");
    static final Finding.Kind NOT_DRAWN = Finding.Kind.note(
            "bends-not-drawn",
            "%s doesn't go straight within the uncertainty of its readings (of %s most): over all"
                    + " that they may have been, its mean is off by %s, and its uncertainty by"
                    + " first order, %s %s, may mislead. Worlds are not drawn where a curve would"
                    + " have to be worked through in each.");

    private static final double LEVEL = 0.95;

    Finding finding(MonteCarlo.Drawn drawn, MonteCarlo run) {
        double half = new StudentT(budget.degreesOfFreedom()).twoSided(LEVEL) * budget.u();
        return DRAWN.with(
                property.label(),
                most(),
                Figures.three(budget.value() - half),
                Figures.three(budget.value() + half),
                Long.toString(drawn.worlds()),
                Long.toString(run.seed()),
                Figures.three(drawn.symmetricLow()),
                Figures.three(drawn.symmetricHigh()),
                property.unit().symbol());
    }

    Finding undrawn() {
        return NOT_DRAWN.with(
                property.label(),
                most(),
                Figures.two(budget.bend()),
                Figures.two(budget.u()),
                property.unit().symbol());
    }

    private String most() {
        return budget.shifts().entrySet().stream()
                .max(Comparator.comparingDouble(it -> Math.abs(it.getValue())))
                .map(Map.Entry::getKey)
                .map(Source::identity)
                .orElse("sources that cancel by first order");
    }
}
