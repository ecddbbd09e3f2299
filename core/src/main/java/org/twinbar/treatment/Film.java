package org.twinbar.treatment;

/**
 * A film of resin on a surface.
 *
 * <p>Thickness is the mean over the area: edges and the valleys between layers take more. Source:
 * METHODS.md G.
 *
 * @param area A of the surface (mm²)
 * @param density ρ of the film: of the mix for what is needed, of the cured film for what was
 *     gained (g/cm³)
 */
public record Film(double area, double density) {

    private static final double MM3_PER_CM3 = 1000;
    private static final double MICROMETRES_PER_MM = 1000;

    /** @throws TreatmentException unless the area is above zero and the density one of a film */
    public Film {
        Amounts.requirePositive(area, "area", "mm²");
        Amounts.requireDensity(density, "density of the film");
    }

    /**
     * Returns the mass of a film that lies on the surface (g): A·t·ρ.
     *
     * @param thickness t (µm)
     * @throws TreatmentException unless t > 0
     */
    public double grams(double thickness) {
        Amounts.requirePositive(thickness, "film thickness", "µm");
        return area * (thickness / MICROMETRES_PER_MM) * density / MM3_PER_CM3;
    }

    /**
     * Returns the mass to mix for a film (g): A·t·ρ/TE.
     *
     * @param thickness t (µm)
     * @param transfer TE, share of the mix that ends up on the part
     * @throws TreatmentException unless t > 0 and 0 < TE ≤ 1
     */
    public double needed(double thickness, double transfer) {
        return grams(thickness) / Amounts.requireShare(transfer, "transfer");
    }

    /**
     * Returns the mass to mix for several parts, with a reserve for cup and brush (g): n ·
     * {@link #needed} · (1 + reserve).
     *
     * @param parts n, how many
     * @param reserve share on top, 0.1 for 10 %
     * @throws TreatmentException unless n ≥ 1 and 0 ≤ reserve ≤ 2
     */
    public double batch(double thickness, double transfer, int parts, double reserve) {
        if (parts < 1) {
            throw new TreatmentException("At least one part is coated, not %s.".formatted(parts));
        }
        if (!(reserve >= 0 && reserve <= 2)) {
            throw new TreatmentException("The reserve must lie from 0 to 200 %%, not at %s %%."
                    .formatted(Amounts.written(100 * reserve)));
        }
        return parts * needed(thickness, transfer) * (1 + reserve);
    }

    /**
     * Returns the mean thickness from the mass gained (µm): Δm/(ρ·A).
     *
     * @param grams Δm (g)
     * @throws TreatmentException unless Δm > 0
     */
    public double thickness(double grams) {
        Amounts.requirePositive(grams, "mass gained", "g");
        return grams * MM3_PER_CM3 / (density * area) * MICROMETRES_PER_MM;
    }

    /**
     * Returns the standard uncertainty of {@link #thickness} (µm), to first order: t · √[(u_Δm/Δm)²
     * + r_A² + r_ρ²], with u_Δm = d/√6 from the scale's step d in each of the two weighings.
     *
     * @param scale that weighed the part before and after
     * @param relativeArea r_A, standard uncertainty of the area over it
     * @param relativeDensity r_ρ, likewise of the density
     * @throws TreatmentException unless Δm > 0
     */
    public double uncertainty(
            double grams, Scale scale, double relativeArea, double relativeDensity) {
        double weighing = scale.step() / Math.sqrt(6) / grams;
        return thickness(grams)
                * Math.sqrt(weighing * weighing
                        + relativeArea * relativeArea
                        + relativeDensity * relativeDensity);
    }

    /**
     * Returns the wet film that dries to a thickness (µm): t/VS.
     *
     * @param dry t (µm)
     * @param solids VS, share of the volume that stays
     * @throws TreatmentException unless t > 0 and 0 < VS ≤ 1
     */
    public static double wet(double dry, double solids) {
        Amounts.requirePositive(dry, "film thickness", "µm");
        return dry / Amounts.requireShare(solids, "share of solids");
    }
}
