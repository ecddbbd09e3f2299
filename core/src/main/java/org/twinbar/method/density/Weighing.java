package org.twinbar.method.density;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.method.Readings;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * Two weighings of one part.
 *
 * @param inAir mass that the scale shows in air (g)
 * @param displaced what the scale shows less in the liquid (g)
 * @param liquid density of the liquid (g/cm³)
 * @param air density of the air (g/cm³)
 */
record Weighing(double inAir, double displaced, double liquid, double air) {

    /**
     * Weather, height and warmth change the air's density by up to a tenth of it; common practice,
     * no source.
     */
    private static final double AIR_SHARE = 0.10 / Math.sqrt(3);

    /** Returns why there is nothing to calculate, if so. */
    static Optional<String> missing(Readings readings) {
        if (!readings.has(DensityForm.IN_AIR) || !readings.has(DensityForm.IN_LIQUID)) {
            return Optional.of("it was not weighed in air and in the liquid");
        }
        if (!readings.has(DensityForm.TEMPERATURE) && !readings.has(DensityForm.LIQUID_DENSITY)) {
            return Optional.of("neither the temperature of the water nor a density of the liquid"
                    + " was noted");
        }
        return Optional.empty();
    }

    static Weighing of(Readings readings) {
        double inAir = readings.number(DensityForm.IN_AIR);
        double sinker = readings.has(DensityForm.SINKER) ? readings.number(DensityForm.SINKER) : 0;
        double liquid = readings.has(DensityForm.LIQUID_DENSITY)
                ? readings.number(DensityForm.LIQUID_DENSITY)
                : Water.density(readings.number(DensityForm.TEMPERATURE));
        double usualAir = readings.setting(DensityForm.AIR_DENSITY);
        double air = usualAir
                + readings.error(Source.shared(
                        "density of the air", Shape.RECTANGULAR, AIR_SHARE * usualAir));
        return new Weighing(
                inAir, inAir + sinker - readings.number(DensityForm.IN_LIQUID), liquid, air);
    }

    /** Returns why the readings can't be, if so. */
    Optional<String> impossible() {
        if (!(displaced > 0)) {
            return Optional.of("it weighs no less in the liquid than in air (%s g less)"
                    .formatted(Figures.three(displaced)));
        }
        return liquid > air
                ? Optional.empty()
                : Optional.of("the liquid, %s g/cm³, is not denser than the air"
                        .formatted(Figures.three(liquid)));
    }

    /**
     * Returns the density (g/cm³), with the buoyancy of the air.
     *
     * <pre>ρ = m·(ρ_L − ρ_a)/Δm + ρ_a</pre>
     *
     * <p>m in air, Δm lost in the liquid (both g), ρ_L liquid, ρ_a air. That the scale was adjusted
     * with steel weights, which the air lifts as well, cancels in the ratio of the two. Source: ISO
     * 1183-1:2019, method A; METHODS K for the term of the air.
     */
    double density() {
        return inAir * (liquid - air) / displaced + air;
    }

    /** Returns the volume (cm³): V = Δm/(ρ_L − ρ_a). */
    double volume() {
        return displaced / (liquid - air);
    }
}
