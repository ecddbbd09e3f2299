package org.twinbar.uncertainty;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A result and how far one standard uncertainty of each source moves it.
 *
 * @param value the result
 * @param shifts signed shift for each source, in the unit of the result
 * @param bend how far the mean of all worlds lies from the result, by second order, in its unit
 */
public record Budget(double value, Map<Source, Double> shifts, double bend) {

    /** Half a unit of the last of two digits of u, where those are 10: the widest it can be. */
    private static final double SLIGHT = 0.05;

    public Budget {
        shifts = Collections.unmodifiableMap(new LinkedHashMap<>(shifts));
    }

    /** Returns the budget of a result that goes straight with its sources. */
    public Budget(double value, Map<Source, Double> shifts) {
        this(value, shifts, 0);
    }

    /**
     * Returns whether the result bends so much within its uncertainty that first order may mislead:
     * its mean is off by more than u/20, half a unit of the last of two digits.
     *
     * <p>Only each source by itself is looked at; what two small deviations do together is not
     * seen. Source: the limit is the widest that JCGM 101:2008, 7.9.2 and 8.1, gives two digits.
     */
    public boolean bends() {
        return Math.abs(bend) > SLIGHT * u();
    }

    /**
     * Returns the combined standard uncertainty.
     *
     * <pre>u = √(Σ shift²)</pre>
     *
     * <p>Source: JCGM 100:2008, equation (11a).
     */
    public double u() {
        return rootOfSquares(null);
    }

    /** Returns the standard uncertainty from the sources of one reach alone. */
    public double u(Source.Reach reach) {
        return rootOfSquares(reach);
    }

    private double rootOfSquares(Source.@org.jspecify.annotations.Nullable Reach reach) {
        double sum = 0;
        for (Map.Entry<Source, Double> entry : shifts.entrySet()) {
            if (reach == null || entry.getKey().reach() == reach) {
                sum += entry.getValue() * entry.getValue();
            }
        }
        return Math.sqrt(sum);
    }

    /** Returns the source's share of the variance, from 0 to 1; 0 where there is no variance. */
    public double share(Source source) {
        double u = u();
        double shift = shifts.getOrDefault(source, 0.0);
        return u == 0 ? 0 : shift * shift / (u * u);
    }

    /**
     * Returns the effective degrees of freedom.
     *
     * <pre>ν = u⁴ / Σ (shift⁴ / ν_i)</pre>
     *
     * <p>Infinite where every source's size is known. Source: B. L. Welch and F. E. Satterthwaite,
     * as JCGM 100:2008, equation (G.2b).
     */
    public double degreesOfFreedom() {
        double u = u();
        double sum = 0;
        for (Map.Entry<Source, Double> entry : shifts.entrySet()) {
            double shift = entry.getValue();
            sum += shift * shift * shift * shift / entry.getKey().degreesOfFreedom();
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : u * u * u * u / sum;
    }
}
