package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;

/**
 * The masses of one cup of mix.
 *
 * @param recipe how the components stand to each other
 * @param grams mass of each component, in the recipe's order (g)
 */
public record Batch(Recipe recipe, List<Double> grams) {

    /**
     * A cup of more than this runs away: the heat of curing cannot leave it. Common practice,
     * METHODS.md G.
     */
    public static final double MOST_IN_A_CUP = 100;

    /** @throws TreatmentException unless each component has a mass above zero */
    public Batch {
        grams = List.copyOf(grams);
        if (grams.size() != recipe.components().size()) {
            throw new TreatmentException("A mix of %s components has as many masses, not %s."
                    .formatted(recipe.components().size(), grams.size()));
        }
        for (int i = 0; i < grams.size(); i++) {
            Amounts.requirePositive(
                    grams.get(i), "mass of " + recipe.components().get(i).name(), "g");
        }
    }

    /** Returns the mass of all components together (g). */
    public double total() {
        return grams.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * Returns the largest relative error of any ratio of two components, against the recipe, that a
     * scale may hide behind these figures: |(m_i ± d/2)/(m_j ∓ d/2)/r_ij − 1|, d the scale's step.
     * Source: METHODS.md G.
     *
     * @throws TreatmentException if a component weighs less than one step
     */
    public double worstRatioError(Scale scale) {
        requireWeighable(scale);
        return Ratios.worst(grams, recipe.massShares(), scale.step() / 2);
    }

    /**
     * Returns the standard uncertainty of the ratio of two components from the scale's step,
     * relative: √[(d/√12/m_i)² + (d/√12/m_j)²]. Source: METHODS.md G.
     */
    public double standardRatioError(Scale scale, int first, int second) {
        double u = scale.step() / Math.sqrt(12);
        double a = u / grams.get(first);
        double b = u / grams.get(second);
        return Math.sqrt(a * a + b * b);
    }

    /**
     * Returns the batch as the scale can show it: each mass at its nearest step.
     *
     * @throws TreatmentException if a component weighs less than one step
     */
    public Batch onScale(Scale scale) {
        requireWeighable(scale);
        return new Batch(recipe, grams.stream().map(scale::nearest).toList());
    }

    /** Returns equal batches, as few as keep each within a mass. */
    public List<Batch> split(double mostGrams) {
        Amounts.requirePositive(mostGrams, "largest batch", "g");
        double parts = Math.ceil(total() / mostGrams - 1e-9);
        if (!(parts <= 1000)) {
            throw new TreatmentException(
                    "A batch of %s g in cups of %s g would take more than 1000 cups."
                            .formatted(Amounts.written(total()), Amounts.written(mostGrams)));
        }
        int cups = (int) Math.max(1, parts);
        Batch one = new Batch(recipe, grams.stream().map(mass -> mass / cups).toList());
        return java.util.Collections.nCopies(cups, one);
    }

    /**
     * Returns a thinner's part of this batch.
     *
     * @param share volume of thinner over the volume of the mix before it, 0.1 for 10 %
     * @throws TreatmentException unless 0 < share ≤ 1 and every density is known
     */
    public Thinner thinner(double share) {
        Amounts.requireShare(share, "share of thinner");
        return new Thinner(share, share * total() / recipe.density());
    }

    /**
     * Returns what must still be poured of each component so that the ratio is the recipe's (g).
     *
     * <p>Nothing can be taken out of the cup again: the component that there is most of, against
     * the recipe, sets the size of the batch, and the others follow it.
     */
    public List<Double> stillToPour() {
        List<Double> shares = recipe.massShares();
        double total = 0;
        for (int i = 0; i < shares.size(); i++) {
            total = Math.max(total, grams.get(i) / shares.get(i));
        }
        List<Double> rest = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            // The component that sets the size is not to be left with a rounding error to pour.
            double more = shares.get(i) * total - grams.get(i);
            rest.add(more > 1e-12 * total ? more : 0.0);
        }
        return List.copyOf(rest);
    }

    /** Returns the largest relative error of any ratio of two components against the recipe. */
    public double ratioError() {
        return Ratios.worst(grams, recipe.massShares(), 0);
    }

    private void requireWeighable(Scale scale) {
        for (int i = 0; i < grams.size(); i++) {
            if (!(grams.get(i) >= scale.step())) {
                throw new TreatmentException(
                        "The batch asks for %s g of %s, less than the scale's step of %s g: mix more, or take a finer scale."
                                .formatted(
                                        Amounts.written(grams.get(i)),
                                        recipe.components().get(i).name(),
                                        Amounts.written(scale.step())));
            }
        }
    }
}
