package org.twinbar.statistics;

/**
 * A sum that carries what rounding lost.
 *
 * <p>As if it were calculated with twice the digits and rounded once. Source: T. Ogita, S. M. Rump,
 * S. Oishi, Accurate sum and dot product (2005), doi:10.1137/030601818, algorithms Sum2 and Dot2.
 */
final class Sum {

    private double sum;
    private double lost;

    Sum add(double value) {
        double next = sum + value;
        double part = next - sum;
        lost += (sum - (next - part)) + (value - part);
        sum = next;
        return this;
    }

    Sum addProduct(double one, double other) {
        double product = one * other;
        lost += Math.fma(one, other, -product);
        return add(product);
    }

    double value() {
        return sum + lost;
    }

    static double of(double[] values) {
        Sum sum = new Sum();
        for (double value : values) {
            sum.add(value);
        }
        return sum.value();
    }
}
