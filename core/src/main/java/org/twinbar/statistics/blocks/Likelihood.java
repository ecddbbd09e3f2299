package org.twinbar.statistics.blocks;

import java.util.List;
import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The restricted likelihood of a mixed model at given variances, with what is needed to climb it.
 *
 * <p>V = Σ σᵢ²Gᵢ, P = V⁻¹ − V⁻¹X(X'V⁻¹X)⁻¹X'V⁻¹; −2ℓ = ln|V| + ln|X'V⁻¹X| + y'Py; score ½(y'PGᵢPy −
 * tr PGᵢ); expected information ½ tr(PGᵢPGⱼ). Gᵢ is never written out: products with it are sums
 * over what its levels share.
 */
final class Likelihood {

    /** A pivot this small says that two fixed columns cannot be told apart. */
    private static final double SINGULAR = 1e-12;

    private final List<RandomTerm> terms;
    private final double[][] inverse;
    private final double[][] weighted;
    private final RealMatrix covariance;
    private final double[][] projection;
    private final double[] projected;
    private final double value;
    private final double[] coefficients;
    private final double leastPivot;

    private Likelihood(
            List<RandomTerm> terms,
            double[][] inverse,
            double[][] weighted,
            RealMatrix covariance,
            double[][] projection,
            double[] projected,
            double value,
            double[] coefficients,
            double leastPivot) {
        this.terms = terms;
        this.inverse = inverse;
        this.weighted = weighted;
        this.covariance = covariance;
        this.projection = projection;
        this.projected = projected;
        this.value = value;
        this.coefficients = coefficients;
        this.leastPivot = leastPivot;
    }

    /**
     * Returns the likelihood; empty where V is no covariance or fixed columns depend on each other.
     */
    static Optional<Likelihood> at(
            double[] variances, double[] y, RealMatrix fixed, List<RandomTerm> terms) {
        int n = y.length;
        double[][] v = new double[n][n];
        for (int i = 0; i < variances.length; i++) {
            terms.get(i).addTo(v, variances[i]);
        }
        try {
            return Optional.of(at(cholesky(MatrixUtils.createRealMatrix(v)), y, fixed, terms));
        } catch (MathIllegalArgumentException notPositiveDefinite) {
            return Optional.empty();
        }
    }

    private static Likelihood at(
            CholeskyDecomposition factor, double[] y, RealMatrix fixed, List<RandomTerm> terms) {
        int n = y.length;
        RealMatrix inverse = factor.getSolver().getInverse();
        RealMatrix weighted = inverse.multiply(fixed);
        CholeskyDecomposition small = cholesky(evened(fixed.transposeMultiply(weighted)));
        RealMatrix covariance = small.getSolver().getInverse();
        RealMatrix projection =
                inverse.subtract(weighted.multiply(covariance).multiplyTransposed(weighted));
        double[] projected = projection.operate(y);
        double squares = 0;
        for (int i = 0; i < n; i++) {
            squares += y[i] * projected[i];
        }
        double value = -0.5 * (logDeterminant(factor) + logDeterminant(small) + squares);
        double[] coefficients = covariance.operate(weighted.preMultiply(y));
        return new Likelihood(
                terms,
                inverse.getData(),
                weighted.getData(),
                covariance,
                projection.getData(),
                projected,
                value,
                coefficients,
                leastPivot(factor));
    }

    double value() {
        return value;
    }

    double[] coefficients() {
        return coefficients.clone();
    }

    /** The least variance of a specimen given those before it: how far V is from being none. */
    double leastPivot() {
        return leastPivot;
    }

    /** (X'V⁻¹X)⁻¹. */
    RealMatrix covariance() {
        return covariance;
    }

    double[] score() {
        double[] score = new double[terms.size()];
        for (int i = 0; i < score.length; i++) {
            RandomTerm term = terms.get(i);
            for (double sum : term.sums(projected)) {
                score[i] += sum * sum / 2;
            }
            for (int[] level : term.members()) {
                for (int row : level) {
                    for (int column : level) {
                        score[i] -= projection[row][column] / 2;
                    }
                }
            }
        }
        return score;
    }

    double[][] information() {
        int count = terms.size();
        double[][] information = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double trace = 0;
                for (double[] row : terms.get(i).sums(projection, terms.get(j))) {
                    for (double sum : row) {
                        trace += sum * sum;
                    }
                }
                information[i][j] = trace / 2;
                information[j][i] = trace / 2;
            }
        }
        return information;
    }

    /** X'V⁻¹GᵢV⁻¹X. */
    RealMatrix first(int i) {
        RealMatrix sums = levelSums(i);
        return sums.transposeMultiply(sums);
    }

    /** X'V⁻¹GᵢV⁻¹GⱼV⁻¹X. */
    RealMatrix second(int i, int j) {
        RealMatrix between = MatrixUtils.createRealMatrix(terms.get(i).sums(inverse, terms.get(j)));
        return levelSums(i).transposeMultiply(between.multiply(levelSums(j)));
    }

    /** Rows of V⁻¹X summed over the members of each level. */
    private RealMatrix levelSums(int i) {
        List<int[]> members = terms.get(i).members();
        double[][] sums = new double[members.size()][weighted[0].length];
        for (int level = 0; level < sums.length; level++) {
            for (int row : members.get(level)) {
                for (int column = 0; column < sums[level].length; column++) {
                    sums[level][column] += weighted[row][column];
                }
            }
        }
        return MatrixUtils.createRealMatrix(sums);
    }

    /** Entries that are nothing but rounding differ across the diagonal, which Cholesky refuses. */
    private static RealMatrix evened(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    private static CholeskyDecomposition cholesky(RealMatrix matrix) {
        return new CholeskyDecomposition(matrix, 1e-8, SINGULAR);
    }

    private static double leastPivot(CholeskyDecomposition factor) {
        RealMatrix lower = factor.getL();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < lower.getRowDimension(); i++) {
            least = Math.min(least, lower.getEntry(i, i) * lower.getEntry(i, i));
        }
        return least;
    }

    private static double logDeterminant(CholeskyDecomposition factor) {
        RealMatrix lower = factor.getL();
        double sum = 0;
        for (int i = 0; i < lower.getRowDimension(); i++) {
            sum += 2 * StrictMath.log(lower.getEntry(i, i));
        }
        return sum;
    }
}
