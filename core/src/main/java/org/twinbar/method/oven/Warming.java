package org.twinbar.method.oven;

/**
 * How slowly a bar of plastic follows the air about it, reckoned from its size where nobody
 * measured it.
 *
 * <p>Density and heat capacity are those of PLA, which other filaments come within a third of;
 * coefficients of heat transfer are common values for still air and for a gentle fan (METHODS D.4).
 */
final class Warming {

    /** Heat transfer in still air, in W/(m²K). */
    static final double STILL_AIR = 10;

    /** Heat transfer under a gentle fan, in W/(m²K). */
    static final double FAN = 25;

    /** ρc of PLA: 1240 kg/m³ times 1800 J/(kg K). */
    private static final double HEAT_PER_CUBIC_METRE = 1240.0 * 1800;

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
}
