package org.twinbar.method.heating;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Mark;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.Line;

/** The record of one bar that is heated under load, in one world; °C, mm and s. */
public final class Heated {

    public static final Channel DEFLECTION =
            Channel.of("deflection", "Deflection", "mm", Kind.DEFLECTION_GAUGE);
    public static final Channel TEMPERATURE =
            Channel.of("temperature", "Temperature", "°C", Kind.THERMOMETER);
    public static final Channel TIME = Channel.of("time", "Time", "s", Kind.NONE);

    public static final Mark START = new Mark("start", "Zero of the deflection");
    public static final Mark REACHED = new Mark("reached", "Deflection reached");

    static final Finding.Kind TEMPERATURE_FELL = Finding.Kind.warning(
            "temperature-fell",
            "The temperature fell by %s °C within the run, from %s °C; a bar does not stiffen"
                    + " back as it cools, so what it sagged may belong to the hotter moment.");
    static final Finding.Kind COARSE_ROWS = Finding.Kind.warning(
            "coarse-rows",
            "From one row to the next the temperature rose by %s °C where the deflection was"
                    + " reached; record more often, or heat more slowly.");
    /** Below this a fall is the thermometer's, not the oven's (°C); our own. */
    private static final double FALL_WORTH_SAYING = 1;

    /** Rows further apart than this leave too much to interpolation (°C); our own. */
    private static final double FINE_ROWS = 2;

    /** Deflections within this share of the limit tell how many degrees a millimetre is worth. */
    private static final double ABOUT = 0.25;

    private static final double SECONDS_PER_MINUTE = 60;

    private final Readings readings;
    private final Trace deflection;
    private final Trace temperature;
    private final int start;
    private final int end;

    private Heated(Readings readings, int start, int end) {
        this.readings = readings;
        this.deflection = readings.trace(DEFLECTION);
        this.temperature = readings.trace(TEMPERATURE);
        this.start = start;
        this.end = end;
    }

    /** Returns whether there is a record at all. */
    public static boolean isIn(Readings readings) {
        return readings.has(DEFLECTION) && readings.has(TEMPERATURE);
    }

    /**
     * Returns the record from its zero to its hottest row; ask {@link #isIn} first.
     *
     * @return empty where no row holds both numbers
     */
    public static Optional<Heated> of(Readings readings) {
        Trace deflection = readings.trace(DEFLECTION);
        Trace temperature = readings.trace(TEMPERATURE);
        OptionalInt start = readings.mark(START, () -> {
            for (int row = 0; row < deflection.size(); row++) {
                if (Double.isFinite(deflection.get(row)) && Double.isFinite(temperature.get(row))) {
                    return OptionalInt.of(row);
                }
            }
            return OptionalInt.empty();
        });
        if (start.isEmpty()) {
            return Optional.empty();
        }
        int from = start.getAsInt();
        int end = readings.once("hottest row", Integer.class, () -> hottest(temperature, from));
        return Optional.of(new Heated(readings, from, end));
    }

    private static int hottest(Trace temperature, int from) {
        int best = from;
        for (int row = from; row < temperature.size(); row++) {
            if (temperature.get(row) > temperature.get(best)) {
                best = row;
            }
        }
        return best;
    }

    /** Returns why nothing can be read off this record, in one clause; empty where it can. */
    public Optional<String> unusable() {
        String reason = readings.once("unusable", String.class, this::reason);
        return reason.isEmpty() ? Optional.empty() : Optional.of(reason);
    }

    private String reason() {
        int last = temperature.size() - 1;
        double least = 0;
        double most = 0;
        for (int row = start; row < deflection.size(); row++) {
            if (Double.isFinite(deflection.get(row))) {
                least = Math.min(least, sag(row));
                most = Math.max(most, sag(row));
            }
        }
        if (end == start) {
            double fell = temperature.get(start) - temperature.get(last);
            return fell > 0
                    ? "the temperature falls from %s °C to %s °C over the record, where a heating run"
                                    .formatted(
                                            Figures.three(temperature.get(start)),
                                            Figures.three(temperature.get(last)))
                            + " has to rise"
                    : "the temperature does not rise in the record";
        }
        return -least > most
                ? "the deflection runs to %s mm, against the load: the gauge's sign is turned round"
                        .formatted(Figures.two(least))
                : "";
    }

    public int start() {
        return start;
    }

    /** Returns the hottest row, behind which nothing is read. */
    public int end() {
        return end;
    }

    public double temperature(int row) {
        return temperature.get(row);
    }

    /** Returns the deflection (mm) since the start. */
    public double sag(int row) {
        return deflection.get(row) - deflection.get(start);
    }

    /** Returns a temperature of the world without errors (°C) as this world reads it. */
    public double asReadHere(double restC) {
        return restC * temperature.scale() + temperature.offset();
    }

    /** Returns the rate of heating (°C/min) from the start to a row; empty without a clock. */
    public OptionalDouble rate(int to) {
        if (!readings.has(TIME)) {
            return OptionalDouble.empty();
        }
        Trace time = readings.trace(TIME);
        double[] seconds = new double[Math.max(0, to - start + 1)];
        double[] degrees = new double[seconds.length];
        for (int i = 0; i < seconds.length; i++) {
            seconds[i] = time.get(start + i);
            degrees[i] = temperature.get(start + i);
        }
        double rate = Line.through(seconds, degrees).slope() * SECONDS_PER_MINUTE;
        return Double.isFinite(rate) ? OptionalDouble.of(rate) : OptionalDouble.empty();
    }

    /** Returns the first row at which a deflection (mm) since the start is reached. */
    public OptionalInt rowReaching(double sagMm) {
        return readings.mark(REACHED, () -> {
            for (int row = start + 1; row <= end; row++) {
                if (sag(row) >= sagMm) {
                    return OptionalInt.of(row);
                }
            }
            return OptionalInt.empty();
        });
    }

    /**
     * Returns the temperature (°C) at a deflection, straight between two rows.
     *
     * <p>The row is that of {@link #rowReaching} and stands still in every world; what a world has
     * the deflection read too much is turned into degrees by the local line of temperature on
     * deflection.
     *
     * @param sagMm deflection since the start
     * @param row the row that reached it
     */
    public double temperatureAt(double sagMm, int row) {
        Place place = readings.once("place", Place.class, () -> place(sagMm, row));
        double there = between(temperature.get(place.before()), temperature.get(row), place.part())
                + readings.resolutionAt(TEMPERATURE, "reached");
        double sag = between(sag(place.before()), sag(row), place.part())
                + readings.resolutionAt(DEFLECTION, "reached")
                - readings.resolutionAt(DEFLECTION, "start");
        return there + place.degreesPerMm() * (sagMm - sag);
    }

    /** Where a deflection was reached: the row before, how far from it, and °C per mm there. */
    private record Place(int before, double part, double degreesPerMm) {}

    private Place place(double sagMm, int row) {
        int before = Math.max(start, row - 1);
        while (before > start
                && !(Double.isFinite(sag(before)) && Double.isFinite(temperature.get(before)))) {
            before--;
        }
        double step = sag(row) - sag(before);
        double part = step > 0 ? (sagMm - sag(before)) / step : 1;
        return new Place(before, part, degreesPerMm(sagMm, before, row));
    }

    private double degreesPerMm(double sagMm, int before, int row) {
        double[] sags = new double[row + 1];
        double[] degrees = new double[row + 1];
        int count = 0;
        for (int at = start; at <= row; at++) {
            if (Math.abs(sag(at) - sagMm) <= ABOUT * sagMm) {
                sags[count] = sag(at);
                degrees[count++] = temperature.get(at);
            }
        }
        double slope = Line.through(Arrays.copyOf(sags, count), Arrays.copyOf(degrees, count))
                .slope();
        double chord = (temperature.get(row) - temperature.get(before)) / (sag(row) - sag(before));
        double worth = count >= 3 && slope > 0 ? slope : chord;
        return Double.isFinite(worth) ? Math.max(0, worth) : 0;
    }

    private static double between(double from, double to, double part) {
        return from + (to - from) * part;
    }

    /** Says what a person should know of the record up to a row. */
    public void findings(Outcome.Builder out, int to) {
        int lost = 0;
        double hottest = temperature.get(start);
        double fall = 0;
        double fellFrom = hottest;
        for (int row = start; row <= to; row++) {
            double here = temperature.get(row);
            lost += Double.isFinite(here) && Double.isFinite(sag(row)) ? 0 : 1;
            if (hottest - here > fall) {
                fall = hottest - here;
                fellFrom = hottest;
            }
            hottest = here > hottest ? here : hottest;
        }
        if (readings.has(TIME)) {
            CurveFindings.timeFalls(readings.trace(TIME)).ifPresent(out::found);
        }
        CurveFindings.lostRows(lost).ifPresent(out::found);
        if (fall > FALL_WORTH_SAYING) {
            out.found(TEMPERATURE_FELL.with(Figures.two(fall), Figures.three(fellFrom)));
        }
    }

    /** Says that the rows about the one that reached a deflection are far apart, where they are. */
    public void findingAt(Outcome.Builder out, int row) {
        double step = row > start ? temperature.get(row) - temperature.get(row - 1) : 0;
        if (step > FINE_ROWS) {
            out.found(COARSE_ROWS.with(Figures.two(step)));
        }
    }
}
