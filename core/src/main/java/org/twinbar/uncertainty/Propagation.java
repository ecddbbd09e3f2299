package org.twinbar.uncertainty;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Runs a model in other worlds, and tells how far its results move. */
public final class Propagation {

    private Propagation() {}

    /**
     * Propagates by first order: each source moved by one standard uncertainty up and down.
     *
     * <pre>shift_i = [f(+u_i) − f(−u_i)] / 2</pre>
     *
     * <p>Where a result can't be had in one of the two worlds, the other one's shift stands; where
     * in neither, the source counts as not moving it. The same two worlds tell how far the model
     * bends, {@code Σ [f(+u_i) + f(−u_i) − 2f(0)] / 2}, from sources that have both. Source: JCGM
     * 100:2008, 5.1.3, note 2, and 5.1.2, note (terms of second order).
     *
     * @return a budget for each result, in the model's order; results that are NaN in the world
     *     without errors have an empty one
     */
    public static List<Budget> linear(Model model, List<Source> sources) {
        return linear(model.at(Errors.NONE), model, sources);
    }

    /** As {@link #linear(Model, List)}, where the values in the world without errors are known. */
    public static List<Budget> linear(double[] values, Model model, List<Source> sources) {
        List<Map<Source, Double>> shifts = new ArrayList<>();
        double[] bends = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            shifts.add(new LinkedHashMap<>());
        }
        for (Source source : sources) {
            double u = source.standardUncertainty();
            if (u == 0) {
                continue;
            }
            double[] up = model.at(Errors.of(source, u));
            double[] down = model.at(Errors.of(source, -u));
            for (int i = 0; i < values.length; i++) {
                bends[i] += bend(values[i], up[i], down[i]);
                double shift = shift(values[i], up[i], down[i]);
                if (shift != 0) {
                    shifts.get(i).put(source, shift);
                }
            }
        }
        List<Budget> budgets = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            budgets.add(new Budget(values[i], shifts.get(i), bends[i]));
        }
        return budgets;
    }

    private static double shift(double value, double up, double down) {
        if (Double.isNaN(value)) {
            return 0;
        }
        boolean hasUp = Double.isFinite(up);
        boolean hasDown = Double.isFinite(down);
        if (hasUp && hasDown) {
            return (up - down) / 2;
        }
        return hasUp ? up - value : hasDown ? value - down : 0;
    }

    private static double bend(double value, double up, double down) {
        double bend = (up + down - 2 * value) / 2;
        return Double.isFinite(bend) ? bend : 0;
    }
}
