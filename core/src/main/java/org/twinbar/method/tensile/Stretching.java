package org.twinbar.method.tensile;

import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.twinbar.method.Channel;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.Window;

/**
 * How the stretch was recorded, and what makes a strain of it.
 *
 * @param channel the best one recorded: extensometer, strain, then crosshead; null for none
 * @param strainPerWay strain (mm/mm) per unit of the channel; empty where its length is not known
 * @param over what the strain is over
 */
record Stretching(@Nullable Channel channel, OptionalDouble strainPerWay, Over over) {

    /** What a strain is over. */
    enum Over {
        GAUGE_LENGTH,
        GRIP_DISTANCE,
        /** Travel of the crosshead over the gauge length, for want of the distance of the grips. */
        CROSSHEAD_OVER_GAUGE,
        NOTHING
    }

    private static final double PERCENT = 0.01;
    private static final Stretching NOTHING =
            new Stretching(null, OptionalDouble.empty(), Over.NOTHING);

    static Stretching of(Readings readings) {
        if (readings.has(PullForm.EXTENSION)) {
            return over(readings, PullForm.EXTENSION, Over.GAUGE_LENGTH);
        }
        if (readings.has(PullForm.STRAIN)) {
            return new Stretching(PullForm.STRAIN, OptionalDouble.of(PERCENT), Over.GAUGE_LENGTH);
        }
        if (readings.has(PullForm.DISPLACEMENT)) {
            return over(
                    readings,
                    PullForm.DISPLACEMENT,
                    readings.has(PullForm.GRIP_DISTANCE)
                            ? Over.GRIP_DISTANCE
                            : Over.CROSSHEAD_OVER_GAUGE);
        }
        return NOTHING;
    }

    private static Stretching over(Readings readings, Channel channel, Over over) {
        var length = over == Over.GRIP_DISTANCE ? PullForm.GRIP_DISTANCE : PullForm.GAUGE_LENGTH;
        return readings.has(length)
                ? new Stretching(channel, OptionalDouble.of(1 / readings.number(length)), over)
                : new Stretching(channel, OptionalDouble.empty(), Over.NOTHING);
    }

    Channel needChannel() {
        if (channel == null) {
            throw new IllegalStateException("no stretch was recorded");
        }
        return channel;
    }

    boolean byCrosshead() {
        return PullForm.DISPLACEMENT.equals(channel);
    }

    /** Returns why there is no strain. */
    String reason() {
        return byCrosshead()
                ? "neither the distance of the grips nor a gauge length was given"
                : "the gauge length of the extensometer was not given";
    }

    /**
     * Returns force against the recorded stretch; the machine's give is taken off its own travel.
     */
    LoadCurve curve(Trace force, Readings readings) {
        return LoadCurve.of(
                force, readings.trace(needChannel()), byCrosshead() ? compliance(readings) : 0);
    }

    /** Returns the work (N·mm) between two rows: over the crosshead's way where it was recorded. */
    OptionalDouble work(Trace force, Readings readings, int from, int to) {
        if (readings.has(PullForm.DISPLACEMENT)) {
            Trace travel = readings.trace(PullForm.DISPLACEMENT);
            LoadCurve curve = LoadCurve.of(force, travel, compliance(readings));
            return OptionalDouble.of(work(curve, readings, from, to));
        }
        double work = work(curve(force, readings), readings, from, to);
        if (PullForm.STRAIN.equals(channel)) {
            return readings.has(PullForm.GAUGE_LENGTH)
                    ? OptionalDouble.of(work * PERCENT * readings.number(PullForm.GAUGE_LENGTH))
                    : OptionalDouble.empty();
        }
        return OptionalDouble.of(work);
    }

    private static double work(LoadCurve curve, Readings readings, int from, int to) {
        return curve.work(readings.once("work", Window.class, () -> curve.window(from, to)));
    }

    private static double compliance(Readings readings) {
        return readings.has(PullForm.COMPLIANCE) ? readings.number(PullForm.COMPLIANCE) : 0;
    }
}
