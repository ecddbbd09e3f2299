package org.twinbar.treatment;

/**
 * How long a mix can be worked.
 *
 * <p>Data sheets quote it for 100 g in a cup at a temperature. It roughly halves for 10 °C more. A
 * smaller or spread batch lasts longer, by a factor that is not counted on here; a fuller cup
 * shorter, by one that nobody can tell. Source: common practice, METHODS.md G.
 *
 * @param quotedMinutes as the data sheet has it (min)
 * @param quotedAt temperature that the data sheet names (°C)
 */
public record WorkingLife(double quotedMinutes, double quotedAt) {

    /** Data sheets name 23 to 25 °C; the shorter life is the safer guess. */
    public static final double USUAL_TEMPERATURE = 23;

    /** @throws TreatmentException unless the minutes are above zero and the place is a workshop */
    public WorkingLife {
        Amounts.requirePositive(quotedMinutes, "working life", "min");
        requireWorkshop(quotedAt);
    }

    /**
     * Returns the working life of a batch of up to 100 g (min): quoted · 2^((T_q − T)/10).
     *
     * @param temperature T of room and resin (°C)
     * @throws TreatmentException unless 0 ≤ T ≤ 60 °C
     */
    public double minutesAt(double temperature) {
        requireWorkshop(temperature);
        return quotedMinutes * StrictMath.pow(2, (quotedAt - temperature) / 10);
    }

    /**
     * Returns the largest batch that is spread within the working life and stays safe in a cup (g).
     *
     * @param gramsPerMinute how quickly it is spread
     * @throws TreatmentException unless that is above zero
     */
    public double largestBatch(double temperature, double gramsPerMinute) {
        Amounts.requirePositive(gramsPerMinute, "spreading", "g/min");
        return Math.min(Batch.MOST_IN_A_CUP, gramsPerMinute * minutesAt(temperature));
    }

    private static void requireWorkshop(double celsius) {
        if (!(celsius >= 0 && celsius <= 60)) {
            throw new TreatmentException("Resin is worked from 0 to 60 °C, not at %s °C."
                    .formatted(Amounts.written(celsius)));
        }
    }
}
