package org.twinbar.statistics.groups;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.special.Gamma;
import org.twinbar.statistics.ChiSquared;

/**
 * The distribution of a standard deviation over the true one, s = √(χ²/ν), which is averaged over.
 */
final class PooledSpread {

    /** Beyond these shares nothing is left that twelve digits would show. */
    private static final double LEFT_OUT = 1e-15;

    private static final int PANELS = 8;

    /**
     * With few degrees of freedom s reaches far, and what is averaged climbs within a small part.
     */
    private static final int PANELS_FOR_FEW = 32;

    private static final double FEW = 5;

    private final Panels panels;

    private PooledSpread(Panels panels) {
        this.panels = panels;
    }

    /** Density 2(ν/2)^(ν/2)/Γ(ν/2)·s^(ν−1)·exp(−νs²/2), ν finite. */
    static PooledSpread of(double df) {
        ChiSquared chi = new ChiSquared(df);
        double low = Math.sqrt(chi.quantile(LEFT_OUT) / df);
        double high = Math.sqrt(chi.quantile(1 - LEFT_OUT) / df);
        double constant =
                StrictMath.log(2) + df / 2 * StrictMath.log(df / 2) - Gamma.logGamma(df / 2);
        return new PooledSpread(Panels.over(low, high, df < FEW ? PANELS_FOR_FEW : PANELS)
                .weightedBy(s ->
                        StrictMath.exp(constant + (df - 1) * StrictMath.log(s) - df * s * s / 2)));
    }

    double average(DoubleUnaryOperator ofSpread) {
        return panels.integral(ofSpread);
    }
}
