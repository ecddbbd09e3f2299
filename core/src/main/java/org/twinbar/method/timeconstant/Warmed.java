package org.twinbar.method.timeconstant;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.twinbar.finding.Figures;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

/**
 * The record of one dummy in the world without errors: which rows count, and what they give.
 *
 * @param rows those with time and temperature, between the marks
 * @param startC temperature of the first row that holds one
 * @param endC temperature of the last row that counts
 * @param fellK how far the temperature fell back at the end of the record, 0 where it did not
 * @param lost rows without a number
 * @param approach the exponential; empty where there is none
 * @param reason why there is none, else empty
 */
record Warmed(
        int[] rows,
        double startC,
        double endC,
        double fellK,
        int lost,
        Optional<Approach> approach,
        String reason) {

    /** Fewer rows than this leave no scatter to be judged by. */
    private static final int FEWEST_ROWS = 8;

    /** More rows than this tell no more, and take long to go through (our own). */
    private static final int MOST_ROWS = 2000;

    /** A rise below this is no step (K); our own. */
    private static final double LEAST_RISE = 3;

    /** What is left after one time constant: before that the end is a guess (METHODS D.4). */
    private static final double LEAST_REACHED = 0.63;

    /** A fall at the end beyond this is the door, not the thermometer (K); our own. */
    private static final double FALL = 1;

    private static final double PER_CENT = 100;

    static Warmed of(Readings readings) {
        Trace time = readings.trace(TimeConstantForm.TIME);
        Trace temperature = readings.trace(TimeConstantForm.TEMPERATURE);
        int[] whole = IntStream.range(0, temperature.size())
                .filter(row -> Double.isFinite(time.get(row)))
                .filter(row -> Double.isFinite(temperature.get(row)))
                .toArray();
        int lost = temperature.size() - whole.length;
        if (whole.length == 0) {
            return new Warmed(whole, 0, 0, 0, lost, Optional.empty(), "no row holds a number");
        }
        int hottest = whole[0];
        int coldest = whole[0];
        for (int row : whole) {
            hottest = temperature.get(row) > temperature.get(hottest) ? row : hottest;
            coldest = temperature.get(row) < temperature.get(coldest) ? row : coldest;
        }
        double start = temperature.get(whole[0]);
        int last = whole[whole.length - 1];
        double rise = temperature.get(hottest) - start;
        double fell = temperature.get(hottest) - temperature.get(last);
        double threshold = start + readings.setting(TimeConstantForm.LEFT_OUT) / PER_CENT * rise;
        int from = readings.mark(TimeConstantForm.FROM, () -> first(whole, temperature, threshold))
                .orElse(whole[0]);
        int end = fell > FALL ? hottest : last;
        int to = readings.mark(TimeConstantForm.TO, () -> OptionalInt.of(end)).orElse(end);
        int[] rows = IntStream.of(whole).filter(row -> row >= from && row <= to).toArray();
        double ended = temperature.get(Math.max(from, to));
        Warmed bare =
                new Warmed(rows, start, ended, fell > FALL ? fell : 0, lost, Optional.empty(), "");
        if (start - temperature.get(coldest) > rise) {
            return bare.without("the temperature falls from %s °C to %s °C, where a dummy that is"
                            .formatted(
                                    Figures.three(start), Figures.three(temperature.get(coldest)))
                    + " put into a hot oven has to warm");
        }
        if (rise < LEAST_RISE) {
            return bare.without("the temperature rises by %s °C, and less than 3 °C is no step"
                    .formatted(Figures.two(rise)));
        }
        return bare.fitted(time, temperature);
    }

    private static OptionalInt first(int[] rows, Trace temperature, double threshold) {
        return IntStream.of(rows)
                .filter(row -> temperature.get(row) >= threshold)
                .findFirst();
    }

    private Warmed without(String why) {
        return new Warmed(rows, startC, endC, fellK, lost, Optional.empty(), why);
    }

    private Warmed fitted(Trace time, Trace temperature) {
        if (rows.length < FEWEST_ROWS) {
            return without("an exponential needs 8 rows or more behind the start of the rise");
        }
        int each = (rows.length + MOST_ROWS - 1) / MOST_ROWS;
        int[] some = IntStream.range(0, rows.length)
                .filter(i -> i % each == 0)
                .map(i -> rows[i])
                .toArray();
        double[] seconds = IntStream.of(some)
                .mapToDouble(row -> time.get(row) - time.get(some[0]))
                .toArray();
        double[] degrees = IntStream.of(some).mapToDouble(temperature::get).toArray();
        if (!(seconds[seconds.length - 1] > 0)) {
            return without("its clock stands still or runs backwards");
        }
        Optional<Approach> found =
                Approach.through(seconds, degrees).filter(it -> it.held() > startC);
        if (found.isEmpty()) {
            return without("no exponential settles on these readings");
        }
        Warmed warmed = new Warmed(rows, startC, endC, fellK, lost, found, "");
        double reached = warmed.reached();
        return reached >= LEAST_REACHED
                ? warmed
                : without(
                        "the record ends when %s %% of the warming is done, and before 63 %% where"
                                        .formatted(Figures.two(PER_CENT * reached))
                                + " it ends is a guess: leave the dummy in for longer");
    }

    /** Returns the share of the warming that is done at the end of the record. */
    double reached() {
        double held = approach.orElseThrow().held();
        return (endC - startC) / (held - startC);
    }
}
