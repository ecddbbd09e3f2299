package org.twinbar.treatment;

/**
 * A thinner's part of a batch.
 *
 * @param share volume of thinner over the volume of the mix before it
 * @param millilitres volume of the thinner (mL)
 */
public record Thinner(double share, double millilitres) {

    /**
     * Returns its mass (g): volume times density.
     *
     * @param density of the thinner (g/cm³)
     * @throws TreatmentException unless it is the density of a liquid
     */
    public double grams(double density) {
        return millilitres * Amounts.requireDensity(density, "density of the thinner");
    }
}
