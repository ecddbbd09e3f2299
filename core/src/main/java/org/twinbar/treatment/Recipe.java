package org.twinbar.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How the components of a mix stand to each other.
 *
 * <p>A ratio by volume becomes one by mass with the densities: (A:B)_m = (A:B)_v · ρ_A/ρ_B. Source:
 * METHODS.md G.
 *
 * @param by what the parts of the components are parts of
 * @param components two or more, in the order in which they are weighed into the cup
 */
public record Recipe(By by, List<Component> components) {

    /** What parts are parts of. */
    public enum By {
        VOLUME("volume"),
        MASS("mass");

        private final String word;

        By(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A thousand to one is past any resin's hardener or catalyst; common practice, no source. */
    private static final double WIDEST_RATIO = 1000;

    private static final int MOST_COMPONENTS = 26;

    /**
     * @throws TreatmentException unless there are 2 to 26 components, each at most 1000 times
     *     another, and by volume all densities are known
     */
    public Recipe {
        components = List.copyOf(components);
        if (components.size() < 2 || components.size() > MOST_COMPONENTS) {
            throw new TreatmentException("A mix has from 2 to %s components, not %s."
                    .formatted(MOST_COMPONENTS, components.size()));
        }
        double most = components.stream().mapToDouble(Component::parts).max().orElseThrow();
        double least = components.stream().mapToDouble(Component::parts).min().orElseThrow();
        if (!(most / least <= WIDEST_RATIO)) {
            throw new TreatmentException(
                    "A ratio of %s to %s is wider than 1000 to 1, which no resin is mixed at."
                            .formatted(Amounts.written(most), Amounts.written(least)));
        }
        if (by == By.VOLUME) {
            components.forEach(Recipe::requireDensity);
        }
    }

    /**
     * Returns the recipe of a ratio such as 2 : 1, its components named A, B, C and so on.
     *
     * @param densities (g/cm³) of each component, or none at all
     * @throws TreatmentException if the recipe cannot be followed so, with the reason
     */
    public static Recipe of(By by, List<Double> parts, List<Double> densities) {
        if (!densities.isEmpty() && densities.size() != parts.size()) {
            throw new TreatmentException("A ratio of %s components needs as many densities, not %s."
                    .formatted(parts.size(), densities.size()));
        }
        List<Component> components = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            components.add(new Component(
                    name(i),
                    parts.get(i),
                    densities.isEmpty()
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(densities.get(i))));
        }
        return new Recipe(by, components);
    }

    /** Returns how much of the mix's mass each component has; they add up to 1. */
    public List<Double> massShares() {
        List<Double> masses = components.stream()
                .map(it -> by == By.VOLUME ? it.parts() * it.density().orElseThrow() : it.parts())
                .toList();
        double sum = masses.stream().mapToDouble(Double::doubleValue).sum();
        return masses.stream().map(mass -> mass / sum).toList();
    }

    /** Returns the mass of the first component over that of another, r = m_A/m_B. */
    public double massRatio(int component) {
        List<Double> shares = massShares();
        return shares.get(0) / shares.get(component);
    }

    /** Returns the parts by mass of a component for 100 parts of the first: 100/r. */
    public double partsPerHundred(int component) {
        return 100 / massRatio(component);
    }

    /**
     * Returns the density of the mix (g/cm³), as if no component shrank: 1/Σ(w/ρ), w shares of
     * mass.
     *
     * @throws TreatmentException unless every density is known
     */
    public double density() {
        components.forEach(Recipe::requireDensity);
        List<Double> shares = massShares();
        double volume = 0;
        for (int i = 0; i < shares.size(); i++) {
            volume += shares.get(i) / components.get(i).density().orElseThrow();
        }
        return 1 / volume;
    }

    /**
     * Returns a batch of this much in all.
     *
     * @param grams M
     * @throws TreatmentException unless M > 0
     */
    public Batch ofTotal(double grams) {
        Amounts.requirePositive(grams, "batch", "g");
        return new Batch(this, massShares().stream().map(share -> share * grams).toList());
    }

    /**
     * Returns the batch that this much of the first component makes.
     *
     * @param grams m_A
     * @throws TreatmentException unless m_A > 0
     */
    public Batch ofFirst(double grams) {
        Amounts.requirePositive(grams, "part of " + components.get(0).name(), "g");
        return ofTotal(grams / massShares().get(0));
    }

    private static void requireDensity(Component component) {
        if (component.density().isEmpty()) {
            throw new TreatmentException(
                    "A mix by volume needs the density of %s in g/cm³ from its data sheet: without it the mass would be a guess."
                            .formatted(component.name()));
        }
    }

    private static String name(int component) {
        return String.valueOf((char) ('A' + component));
    }
}
