package org.twinbar.planning;

/**
 * What one specimen takes.
 *
 * @param filamentGrams printed mass
 * @param resinGrams of a mix, for a specimen of a group that takes some
 * @param printHours on the printer
 * @param handHours of a person: treating, measuring and testing
 * @param prices of what is used up
 */
public record Effort(
        double filamentGrams,
        double resinGrams,
        double printHours,
        double handHours,
        Prices prices) {

    /**
     * What is used up costs.
     *
     * @param filamentPerKilogram in any money
     * @param resinPerKilogram in the same
     */
    public record Prices(double filamentPerKilogram, double resinPerKilogram) {

        public static final Prices NONE = new Prices(0, 0);

        /** @throws PlanException unless both are zero or more */
        public Prices {
            require(filamentPerKilogram, "price of filament");
            require(resinPerKilogram, "price of resin");
        }
    }

    public static final Effort NONE = new Effort(0, 0, 0, 0, Prices.NONE);

    private static final double GRAMS_PER_KILOGRAM = 1000;

    /** @throws PlanException unless all are zero or more */
    public Effort {
        require(filamentGrams, "filament per specimen");
        require(resinGrams, "resin per specimen");
        require(printHours, "printing time per specimen");
        require(handHours, "working time per specimen");
    }

    /**
     * What a study takes.
     *
     * @param specimens all of them
     * @param filamentGrams of all
     * @param resinGrams of those that take some
     * @param printHours of all
     * @param handHours of all
     * @param money for filament and resin
     */
    public record Cost(
            int specimens,
            double filamentGrams,
            double resinGrams,
            double printHours,
            double handHours,
            double money) {

        public Cost plus(Cost other) {
            return new Cost(
                    specimens + other.specimens,
                    filamentGrams + other.filamentGrams,
                    resinGrams + other.resinGrams,
                    printHours + other.printHours,
                    handHours + other.handHours,
                    money + other.money);
        }
    }

    /**
     * Returns what a number of specimens takes.
     *
     * @param specimens all of them
     * @param taking how many of them take resin
     */
    public Cost of(int specimens, int taking) {
        double filament = specimens * filamentGrams;
        double resin = taking * resinGrams;
        return new Cost(
                specimens,
                filament,
                resin,
                specimens * printHours,
                specimens * handHours,
                (filament * prices.filamentPerKilogram() + resin * prices.resinPerKilogram())
                        / GRAMS_PER_KILOGRAM);
    }

    private static void require(double value, String what) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new PlanException("The %s must be zero or more, not %s.".formatted(what, value));
        }
    }
}
