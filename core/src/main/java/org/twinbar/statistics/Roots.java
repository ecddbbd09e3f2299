package org.twinbar.statistics;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a function crosses zero. */
public final class Roots {

    private static final int MOST_CALLS = 500;
    private static final int MOST_DOUBLINGS = 1100;
    private static final int ORDER = 5;
    private static final double RELATIVE = 1e-14;
    private static final double ABSOLUTE = 1e-25;
    private static final double NEVER_BY_VALUE = 0;

    private Roots() {}

    /**
     * The root of an increasing function, searched outwards from a start.
     *
     * @param start where the search begins
     * @param stride the first step from there, above zero; each further one is twice as long
     * @throws ArithmeticException if no sign change is found before the line ends
     */
    public static double increasing(DoubleUnaryOperator function, double start, double stride) {
        double near = start;
        double atNear = function.applyAsDouble(near);
        if (atNear == 0) {
            return near;
        }
        double direction = atNear < 0 ? 1 : -1;
        for (int i = 0; i < MOST_DOUBLINGS; i++) {
            double far = near + direction * stride;
            double atFar = function.applyAsDouble(far);
            if (atFar == 0) {
                return far;
            }
            if (atFar < 0 != atNear < 0) {
                return between(function, Math.min(near, far), Math.max(near, far));
            }
            near = far;
            stride *= 2;
        }
        throw new ArithmeticException("No sign change was found from " + start + ".");
    }

    /**
     * The root between two places where the function has different signs, to about 14 digits.
     *
     * @throws org.hipparchus.exception.MathIllegalArgumentException if the signs are equal
     */
    public static double between(DoubleUnaryOperator function, double low, double high) {
        return new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, NEVER_BY_VALUE, ORDER)
                .solve(MOST_CALLS, function::applyAsDouble, low, high);
    }
}
