package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A cup while it is being poured: what is in it, what must still go in, how far the ratio is off.
 *
 * <p>Nothing can be taken out of the cup again. Where more was poured of a component than was
 * meant, the batch becomes larger and the other components follow it; an excess that changes no
 * other target on the scale's display is none.
 *
 * @param meant the batch that is aimed at
 * @param pours what the scale showed after each, in their order; a component may be poured again
 * @param reading how the scale was read
 * @param scale that shows them
 */
public record Pouring(Batch meant, List<Pour> pours, Reading reading, Scale scale) {

    /** How a scale is read while a cup fills. */
    public enum Reading {
        /** Set to zero before each pour, so that it shows that pour alone. */
        TARED,
        /** Set to zero with the empty cup, so that it shows all that is in it. */
        RUNNING
    }

    /**
     * What the scale showed after a pour.
     *
     * @param component of the recipe, counted from 0
     * @param shown (g)
     */
    public record Pour(int component, double shown) {}

    /**
     * The ratio of two components in the cup.
     *
     * @param first component, counted from 0
     * @param second a later one
     * @param ratio mass of the first over that of the second
     * @param error of the ratio against the recipe's, relative; above zero is too much of the first
     * @param uncertainty standard uncertainty of that from the scale's steps, relative
     */
    public record Reached(int first, int second, double ratio, double error, double uncertainty) {}

    /** Whether the ratio is within a limit, as far as the scale can tell. */
    public enum Standing {
        WITHIN,
        /** Within or beyond: the scale's steps hide which. */
        UNSURE,
        BEYOND
    }

    /** A tenth of a millionth of a step is the dust of decimals, not resin. */
    private static final double DUST = 1e-7;

    /**
     * @throws TreatmentException if a reading is below zero or no number, or a running total falls
     */
    public Pouring {
        pours = List.copyOf(pours);
        double before = 0;
        for (Pour pour : pours) {
            String name = meant.recipe().components().get(pour.component()).name();
            if (!(pour.shown() >= 0 && pour.shown() < Double.POSITIVE_INFINITY)) {
                throw new TreatmentException(
                        "The scale can't show %s g after %s: set it to zero with the cup on it."
                                .formatted(Amounts.written(pour.shown()), name));
            }
            if (reading == Reading.RUNNING && !(pour.shown() >= before)) {
                throw new TreatmentException(
                        "The total of %s g after %s is less than the %s g before it: is the scale set to zero between pours?"
                                .formatted(
                                        Amounts.written(pour.shown()),
                                        name,
                                        Amounts.written(before)));
            }
            before = pour.shown();
        }
    }

    /** Returns the mass of a component in the cup (g). */
    public double grams(int component) {
        double sum = 0;
        double[] counts = counts(component);
        for (int i = 0; i < counts.length; i++) {
            sum += counts[i] * pours.get(i).shown();
        }
        return Math.abs(sum) < DUST * scale.step() ? 0 : sum;
    }

    /** How often each reading counts in the mass of a component. */
    private double[] counts(int component) {
        double[] counts = new double[pours.size()];
        for (int i = 0; i < counts.length; i++) {
            if (pours.get(i).component() == component) {
                counts[i] += 1;
                if (reading == Reading.RUNNING && i > 0) {
                    counts[i - 1] -= 1;
                }
            }
        }
        return counts;
    }

    /** Returns the batch that the cup is to become: the one meant, or a larger that saves it. */
    public Batch target() {
        int most = largest();
        double size = grams(most) / meant.recipe().massShares().get(most);
        if (!(size > meant.total())) {
            return meant;
        }
        Batch larger = meant.recipe().ofTotal(size);
        for (int i = 0; i < larger.grams().size(); i++) {
            if (i != most
                    && scale.nearest(larger.grams().get(i))
                            > scale.nearest(meant.grams().get(i))) {
                return larger;
            }
        }
        return meant;
    }

    /** Returns the component that was poured over its target; none where nothing is to be saved. */
    public OptionalInt over() {
        return target().equals(meant) ? OptionalInt.empty() : OptionalInt.of(largest());
    }

    private int largest() {
        List<Double> shares = meant.recipe().massShares();
        int most = 0;
        for (int i = 1; i < shares.size(); i++) {
            if (grams(i) / shares.get(i) > grams(most) / shares.get(most)) {
                most = i;
            }
        }
        return most;
    }

    /** Returns what must still be poured of a component (g); 0 where it has enough. */
    public double still(int component) {
        double more = target().grams().get(component) - grams(component);
        return more > DUST * scale.step() ? more : 0;
    }

    /** Returns what the scale will show when a component has enough, if it is poured now (g). */
    public double showsAt(int component) {
        if (pours.isEmpty()) {
            return still(component);
        }
        Pour last = pours.get(pours.size() - 1);
        boolean goesOn = last.component() == component || reading == Reading.RUNNING;
        return (goesOn ? last.shown() : 0) + still(component);
    }

    /** Returns the first component that lacks half a step of the scale or more. */
    public OptionalInt next() {
        for (int i = 0; i < meant.grams().size(); i++) {
            if (scale.nearest(still(i)) >= scale.step()) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** Returns whether each component is in the cup. */
    public boolean hasAll() {
        return meant.grams().size()
                == pours.stream()
                        .filter(pour -> grams(pour.component()) > 0)
                        .mapToInt(Pour::component)
                        .distinct()
                        .count();
    }

    /**
     * Returns what is in the cup.
     *
     * @throws TreatmentException while a component is missing
     */
    public Batch cup() {
        List<Double> grams = new ArrayList<>();
        for (int i = 0; i < meant.grams().size(); i++) {
            grams.add(grams(i));
        }
        return new Batch(meant.recipe(), grams);
    }

    /**
     * Returns the ratio of each two components that are in the cup.
     *
     * <p>Each reading s_k is off by its own share of a step d, uniformly: u(s) = d/√12. With masses
     * m_i = Σ c_ik s_k, the ratio's relative standard uncertainty is, to first order, (d/√12) ·
     * √Σ_k (c_ik/m_i − c_jk/m_j)². Set to zero before each pour this is METHODS.md G's
     * √[(d/√12/m_i)² + (d/√12/m_j)²]; a running total shares a reading between two pours, and is a
     * little worse. The zero itself is taken as exact.
     */
    public List<Reached> reached() {
        List<Reached> reached = new ArrayList<>();
        List<Double> shares = meant.recipe().massShares();
        for (int i = 0; i < shares.size(); i++) {
            for (int j = i + 1; j < shares.size(); j++) {
                if (grams(i) > 0 && grams(j) > 0) {
                    double ratio = grams(i) / grams(j);
                    double meantRatio = shares.get(i) / shares.get(j);
                    reached.add(
                            new Reached(i, j, ratio, ratio / meantRatio - 1, uncertainty(i, j)));
                }
            }
        }
        return reached;
    }

    private double uncertainty(int first, int second) {
        double[] one = counts(first);
        double[] other = counts(second);
        double squares = 0;
        for (int k = 0; k < one.length; k++) {
            double slope = one[k] / grams(first) - other[k] / grams(second);
            squares += slope * slope;
        }
        return scale.step() / Math.sqrt(12) * Math.sqrt(squares);
    }

    /**
     * Returns whether every ratio keeps within a limit: surely so where its error and two of its
     * standard uncertainties do together, surely not where the error less those is beyond.
     *
     * @param limit relative, 0.02 for 2 %
     * @throws TreatmentException unless 0.001 ≤ limit < 1, or while a component is missing
     */
    public Standing standing(double limit) {
        Scale.requireLimit(limit);
        cup();
        return reached().stream()
                .map(it -> standing(it, limit))
                .max(Enum::compareTo)
                .orElse(Standing.WITHIN);
    }

    private static Standing standing(Reached one, double limit) {
        double off = Math.abs(one.error());
        if (off + 2 * one.uncertainty() <= limit) {
            return Standing.WITHIN;
        }
        return off - 2 * one.uncertainty() > limit ? Standing.BEYOND : Standing.UNSURE;
    }
}
