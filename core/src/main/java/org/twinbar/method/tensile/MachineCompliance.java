package org.twinbar.method.tensile;

import org.twinbar.method.curve.Line;

/**
 * How much machine and grips give, from a pull of their own; it is given to the test as its
 * compliance.
 *
 * @param compliance C_m (mm/N)
 * @param complianceUncertainty standard uncertainty from the scatter, 0 where nothing tells it
 * @param modulus E (MPa) of what was pulled: found, or as it was given
 */
public record MachineCompliance(double compliance, double complianceUncertainty, double modulus) {

    /**
     * Returns the compliance from a pull of a stiff bar.
     *
     * <pre>C_m = ΔL/F − L/(E·A)</pre>
     *
     * <p>Only what is elastic is found: slip and indentation of the grips are not. Measure again
     * when grips, thickness or load cell change. Source: METHODS A.2; common practice.
     *
     * @param travelMm ΔL, of the crosshead
     * @param forceN F, above 0
     * @param lengthMm L between the grips, above 0
     * @param areaMm2 A of the bar, above 0
     * @param modulusMPa E of the bar, above 0: 210 000 for steel
     * @throws IllegalArgumentException where one of F, L, A, E is not above 0, or where the bar
     *     alone gives more than the travel
     */
    public static MachineCompliance ofStiffBar(
            double travelMm, double forceN, double lengthMm, double areaMm2, double modulusMPa) {
        if (!(forceN > 0 && lengthMm > 0 && areaMm2 > 0 && modulusMPa > 0)) {
            throw new IllegalArgumentException(
                    "force %s N, length %s mm, area %s mm² and modulus %s MPa must be above 0"
                            .formatted(forceN, lengthMm, areaMm2, modulusMPa));
        }
        double compliance = travelMm / forceN - lengthMm / (modulusMPa * areaMm2);
        if (!(compliance >= 0)) {
            throw new IllegalArgumentException(
                    "the bar alone gives more than the travel of %s mm: compliance would be %s mm/N"
                            .formatted(travelMm, compliance));
        }
        return new MachineCompliance(compliance, 0, modulusMPa);
    }

    /**
     * Returns the compliance, and the modulus, from pulls of one section at several grip distances.
     *
     * <pre>C(L) = C_m + L/(E·A)</pre>
     *
     * <p>A straight line through the apparent compliances; its value at L = 0 is the machine's.
     * Source: METHODS A.2; common practice.
     *
     * @param lengthsMm L, three or more, not all alike
     * @param apparent ΔL/F at each length (mm/N)
     * @param areaMm2 A, above 0
     * @throws IllegalArgumentException where there are fewer than 3 lengths or not as many
     *     compliances, A is not above 0, or the compliance does not grow with length
     */
    public static MachineCompliance ofLengths(
            double[] lengthsMm, double[] apparent, double areaMm2) {
        if (lengthsMm.length < 3 || lengthsMm.length != apparent.length || !(areaMm2 > 0)) {
            throw new IllegalArgumentException(
                    "%s lengths, %s compliances and an area of %s mm²: 3 or more of each and above 0"
                            .formatted(lengthsMm.length, apparent.length, areaMm2));
        }
        Line line = Line.through(lengthsMm, apparent);
        if (!(line.slope() > 0)) {
            throw new IllegalArgumentException(
                    "the compliance does not grow with length (%s per N), so it tells no modulus"
                            .formatted(line.slope()));
        }
        return new MachineCompliance(
                line.intercept(), line.interceptUncertainty(), 1 / (line.slope() * areaMm2));
    }
}
