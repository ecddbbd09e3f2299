package org.twinbar.method.oven;

/**
 * How slowly a bar of plastic follows the air about it, reckoned from its size where nobody
 * measured it.
 *
 * <p>Density, heat capacity and conductivity are those of PLA, which other filaments come within a
 * third of; coefficients of heat transfer are common values for still air and for a gentle fan,
 * radiation included (METHODS D.4).
 */
final class Warming {

    /** Heat transfer in still air, in W/(m²K). */
    static final double STILL_AIR = 10;

    /** Heat transfer under a gentle fan, in W/(m²K). */
    static final double FAN = 25;

    /** ρc of PLA: 1240 kg/m³ times 1800 J/(kg K). */
    private static final double HEAT_PER_CUBIC_METRE = 1240.0 * 1800;

    /** Conductivity of PLA, in W/(m K). */
    private static final double CONDUCTIVITY = 0.13;

    private static final double MM_PER_METRE = 1000;

    private Warming() {}

    /**
     * Returns the time constant (s) of a long bar that is heated all round: τ = ρcbh/(2(b + h)α).
     *
     * @param transfer α, in W/(m²K)
     */
    static double timeConstant(double widthMm, double thicknessMm, double transfer) {
        double volumePerArea = widthMm * thicknessMm / (2 * (widthMm + thicknessMm)) / MM_PER_METRE;
        return HEAT_PER_CUBIC_METRE * volumePerArea / transfer;
    }

    /** Returns by how much (s) a slab's mean trails its faces: (h/2)²ρc/(3k). */
    static double behindFaces(double thicknessMm) {
        return squareOfHalf(thicknessMm) / 3;
    }

    /**
     * Returns the lag (K) of the faces of a slab that is heated on both: r·ρc(h/2)/α.
     *
     * @param ramp r (K/s), long after heating began
     * @param thicknessMm h
     * @param transfer α, in W/(m²K)
     */
    static double slabFaces(double ramp, double thicknessMm, double transfer) {
        return ramp * HEAT_PER_CUBIC_METRE * thicknessMm / 2 / MM_PER_METRE / transfer;
    }

    /** Returns the lag (K) of such a slab's middle: r·[ρc(h/2)/α + (h/2)²ρc/(2k)]. */
    static double slabCentre(double ramp, double thicknessMm, double transfer) {
        return slabFaces(ramp, thicknessMm, transfer) + ramp * squareOfHalf(thicknessMm) / 2;
    }

    /** (h/2)² over the diffusivity k/(ρc), in s. */
    private static double squareOfHalf(double thicknessMm) {
        double half = thicknessMm / 2 / MM_PER_METRE;
        return half * half * HEAT_PER_CUBIC_METRE / CONDUCTIVITY;
    }
}
