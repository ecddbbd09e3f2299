package org.twinbar.statistics.blocks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.twinbar.statistics.Summary;

/**
 * A linear mixed model, y = Xβ + ΣZᵢuᵢ + e, fitted by restricted maximum likelihood.
 *
 * <p>Variances climb by Fisher's scoring, halving steps that lead downwards; values are first taken
 * about their mean and over their spread, so that units change nothing. Source: H. D. Patterson, R.
 * Thompson, Recovery of inter-block information when block sizes are unequal (1971),
 * doi:10.1093/biomet/58.3.545.
 */
final class MixedModel {

    /**
     * A combination of coefficients.
     *
     * @param value Σ lᵢβᵢ
     * @param standardError adjusted by Kenward and Roger
     * @param df their degrees of freedom
     */
    record Contrast(double value, double standardError, double df) {}

    private static final int MOST_STEPS = 500;
    private static final int MOST_HALVINGS = 40;
    private static final double SETTLED = 1e-11;
    private static final double NEAR_TOP = 1e-6;

    /**
     * Runs nearer to each other than this share of their specimens' scatter leave too few digits.
     */
    private static final double LEAST_PIVOT = 1e-3;

    /**
     * Specimens that agree within each run to this share of all squares leave nothing to judge by.
     */
    private static final double LEAST_RESIDUAL = 1e-9;

    /** How low a shared variance may come out. */
    enum Floor {
        /**
         * Below zero, as in analysis of variance: exact with equal numbers. With unequal ones the
         * likelihood climbs to where the covariance is none any more, and intervals lose all sense.
         */
        NONE,
        /** Zero: with few runs, Kenward and Roger's intervals are then wider than they need be. */
        ZERO
    }

    private final List<RandomTerm> terms;
    private final double scale;
    private final double centre;
    private final double[] variances;
    private final Likelihood at;

    private MixedModel(
            List<RandomTerm> terms,
            double scale,
            double centre,
            double[] variances,
            Likelihood at) {
        this.terms = terms;
        this.scale = scale;
        this.centre = centre;
        this.variances = variances;
        this.at = at;
    }

    /**
     * The fitted model; the first fixed column is the constant.
     *
     * @return empty where variances can't be told apart, specimens agree completely, or the climb
     *     doesn't settle
     */
    static Optional<MixedModel> fit(
            double[] values, double[][] fixed, List<RandomTerm> shared, Floor floor) {
        Summary summary = Summary.of(values);
        double sd = summary.sd();
        if (!(sd > 0)) {
            return Optional.empty();
        }
        double[] y = new double[values.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = (values[i] - summary.mean()) / sd;
        }
        List<RandomTerm> terms = new ArrayList<>(shared);
        terms.add(RandomTerm.residual(y.length));
        RealMatrix columns = MatrixUtils.createRealMatrix(fixed);
        return climb(y, columns, terms, floor)
                .or(() -> climb(y, columns, terms, Floor.ZERO))
                .map(variances -> new MixedModel(
                        List.copyOf(terms),
                        sd,
                        summary.mean(),
                        variances,
                        Likelihood.at(variances, y, columns, terms).orElseThrow()));
    }

    /** Returns the variances at the top; empty where none is reached. */
    private static Optional<double[]> climb(
            double[] y, RealMatrix fixed, List<RandomTerm> terms, Floor floor) {
        double[] variances = new double[terms.size()];
        Arrays.fill(variances, 1.0 / terms.size());
        Optional<Likelihood> start = Likelihood.at(variances, y, fixed, terms);
        if (start.isEmpty()) {
            return Optional.empty();
        }
        Likelihood here = start.get();
        for (int step = 0; step < MOST_STEPS; step++) {
            Optional<double[]> direction = direction(variances, here, floor);
            if (direction.isEmpty()) {
                return Optional.empty();
            }
            double share = 1;
            double[] next = moved(variances, direction.get(), share, floor);
            Optional<Likelihood> there = Likelihood.at(next, y, fixed, terms);
            for (int halving = 0; halving < MOST_HALVINGS && !higher(there, here); halving++) {
                share /= 2;
                next = moved(variances, direction.get(), share, floor);
                there = Likelihood.at(next, y, fixed, terms);
            }
            double farthest = farthest(
                    variances,
                    higher(there, here) ? next : moved(variances, direction.get(), 1, floor));
            if (!higher(there, here)) {
                // Within rounding of the top no step leads upwards; farther off there is no top.
                return farthest < NEAR_TOP ? judged(variances, here) : Optional.empty();
            }
            variances = next;
            here = there.orElseThrow();
            if (farthest < SETTLED) {
                return judged(variances, here);
            }
        }
        return Optional.empty();
    }

    private static Optional<double[]> judged(double[] variances, Likelihood top) {
        double residual = variances[variances.length - 1];
        return residual > 2 * LEAST_RESIDUAL && top.leastPivot() > LEAST_PIVOT * residual
                ? Optional.of(variances)
                : Optional.empty();
    }

    private static boolean higher(Optional<Likelihood> there, Likelihood here) {
        return there.isPresent() && there.get().value() >= here.value();
    }

    private static double farthest(double[] from, double[] to) {
        double farthest = 0;
        for (int i = 0; i < from.length; i++) {
            farthest = Math.max(farthest, Math.abs(to[i] - from[i]));
        }
        return farthest;
    }

    /** Information⁻¹·score among the variances that aren't held at zero. */
    private static Optional<double[]> direction(double[] variances, Likelihood here, Floor floor) {
        double[] score = here.score();
        double[][] information = here.information();
        List<Integer> free = new ArrayList<>();
        for (int i = 0; i < score.length; i++) {
            if (floor == Floor.NONE || variances[i] > 0 || score[i] > 0) {
                free.add(i);
            }
        }
        RealMatrix part = new Array2DRowRealMatrix(free.size(), free.size());
        double[] slope = new double[free.size()];
        for (int i = 0; i < slope.length; i++) {
            slope[i] = score[free.get(i)];
            for (int j = 0; j < slope.length; j++) {
                part.setEntry(i, j, information[free.get(i)][free.get(j)]);
            }
        }
        DecompositionSolver solver = new LUDecomposition(part).getSolver();
        if (!solver.isNonSingular()) {
            return Optional.empty();
        }
        double[] step = solver.solve(MatrixUtils.createRealVector(slope)).toArray();
        double[] direction = new double[score.length];
        for (int i = 0; i < step.length; i++) {
            direction[free.get(i)] = step[i];
        }
        return Optional.of(direction);
    }

    private static double[] moved(
            double[] variances, double[] direction, double share, Floor floor) {
        double[] next = new double[variances.length];
        int residual = next.length - 1;
        for (int i = 0; i < next.length; i++) {
            next[i] = variances[i] + share * direction[i];
            if (i == residual) {
                next[i] = Math.max(LEAST_RESIDUAL, next[i]);
            } else if (floor == Floor.ZERO) {
                next[i] = Math.max(0, next[i]);
            }
        }
        return next;
    }

    /** The variances, the residual last; one that came out below zero is given as zero. */
    List<BlockOutcome.Component> components() {
        List<BlockOutcome.Component> components = new ArrayList<>();
        for (int i = 0; i < variances.length; i++) {
            components.add(new BlockOutcome.Component(
                    terms.get(i).name(),
                    Math.max(0, variances[i]) * scale * scale,
                    terms.get(i).members().size()));
        }
        return components;
    }

    /**
     * A combination of coefficients, with Kenward and Roger's standard error and degrees of
     * freedom.
     *
     * <p>Φ_A = Φ + 2Φ(ΣWᵢⱼ(Qᵢⱼ − PᵢΦPⱼ))Φ, W the inverse of the expected information of all
     * variances as they came out; for one contrast the degrees of freedom are 2φ²/ΣWᵢⱼaᵢaⱼ, aᵢ =
     * l'ΦPᵢΦl, φ = l'Φl, and no factor on F remains. Source: M. G. Kenward, J. H. Roger, Small
     * sample inference for fixed effects from restricted maximum likelihood (1997),
     * doi:10.2307/2533558.
     *
     * @return empty where the variances can't be told apart
     */
    Optional<Contrast> contrast(double... l) {
        RealMatrix phi = at.covariance();
        int count = variances.length;
        DecompositionSolver information =
                new LUDecomposition(MatrixUtils.createRealMatrix(at.information())).getSolver();
        if (!information.isNonSingular()) {
            return Optional.empty();
        }
        RealMatrix spread = information.getInverse();
        double[] direction = phi.operate(l);
        double plain = dot(l, direction);
        double[] slopes = new double[count];
        RealMatrix[] first = new RealMatrix[count];
        for (int i = 0; i < count; i++) {
            first[i] = at.first(i);
            slopes[i] = dot(direction, first[i].operate(direction));
        }
        double scatter = 0;
        double adjustment = 0;
        for (int i = 0; i < count; i++) {
            for (int j = 0; j < count; j++) {
                double weight = spread.getEntry(i, j);
                scatter += weight * slopes[i] * slopes[j];
                RealMatrix rest =
                        at.second(i, j).subtract(first[i].multiply(phi).multiply(first[j]));
                adjustment += weight * dot(direction, rest.operate(direction));
            }
        }
        double variance = plain + 2 * adjustment;
        double df = 2 * plain * plain / scatter;
        return variance > 0 && df > 0
                ? Optional.of(new Contrast(
                        scale * dot(l, at.coefficients()) + centre * l[0],
                        scale * Math.sqrt(variance),
                        df))
                : Optional.empty();
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
