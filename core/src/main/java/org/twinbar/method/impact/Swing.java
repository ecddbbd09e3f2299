package org.twinbar.method.impact;

import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.method.Input;
import org.twinbar.method.Readings;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/** One swing of the hammer in one world: how far it fell, how far it rose, what it lost. */
final class Swing {

    private static final double MM = 1e-3;
    private static final double GRAM = 1e-3;

    /**
     * How much of the pieces' largest energy the toss took: anything from none to all, the same for
     * all specimens, since pieces of one shape leave alike. Source: METHODS C.3.
     */
    private static final Source TOSS =
            Source.shared("share of the pieces' energy", Shape.RECTANGULAR, 1 / Math.sqrt(12));

    private final Readings readings;
    private final double moment;
    private final boolean byHeight;

    private Swing(Readings readings, double moment) {
        this.readings = readings;
        this.moment = moment;
        this.byHeight = readings.has(ImpactForm.RISE_HEIGHT);
    }

    /** Returns why nothing can be calculated from these readings, if so. */
    static Optional<String> missing(Readings readings) {
        boolean hammer = readings.has(ImpactForm.MOMENT)
                || has(readings, ImpactForm.SCALE_READING, ImpactForm.SCALE_RADIUS)
                || has(readings, ImpactForm.MASS, ImpactForm.CENTRE_OF_MASS);
        if (!hammer) {
            return Optional.of("the hammer's moment is not known");
        }
        if (readings.has(ImpactForm.RISE_HEIGHT)) {
            return readings.has(ImpactForm.HEIGHT_RADIUS)
                            && (readings.has(ImpactForm.RELEASE_HEIGHT)
                                    || readings.has(ImpactForm.FREE_RISE_HEIGHT))
                    ? Optional.empty()
                    : Optional.of(
                            "heights want the height of release and the radius that they were read at");
        }
        return readings.has(ImpactForm.RISE_ANGLE)
                        && (readings.has(ImpactForm.RELEASE_ANGLE)
                                || readings.has(ImpactForm.FREE_RISE_ANGLE))
                ? Optional.empty()
                : Optional.of("the angles, or the heights, of release and rise were not read");
    }

    private static boolean has(Readings readings, Input one, Input other) {
        return readings.has(one) && readings.has(other);
    }

    /** Returns the swing of readings of which nothing is missing. */
    static Swing of(Readings readings) {
        return new Swing(readings, momentNm(readings));
    }

    /** Returns M_H (N·m): as weighed under the level arm, as given, or m·g·l_c. */
    private static double momentNm(Readings readings) {
        if (has(readings, ImpactForm.SCALE_READING, ImpactForm.SCALE_RADIUS)) {
            return Hammer.G
                    * readings.number(ImpactForm.SCALE_READING)
                    * GRAM
                    * readings.number(ImpactForm.SCALE_RADIUS)
                    * MM;
        }
        return readings.has(ImpactForm.MOMENT)
                ? readings.number(ImpactForm.MOMENT)
                : Hammer.G
                        * readings.number(ImpactForm.MASS)
                        * readings.number(ImpactForm.CENTRE_OF_MASS)
                        * MM;
    }

    /** How a loss was found, the best way first. */
    enum Loss {
        THREE_READINGS,
        TWO_READINGS,
        FREE_RISE,
        GIVEN,
        UNKNOWN
    }

    Loss loss() {
        boolean two = !byHeight
                && readings.has(ImpactForm.RELEASE_ANGLE)
                && has(readings, ImpactForm.FREE_FIRST, ImpactForm.FREE_SECOND);
        if (two) {
            return readings.has(ImpactForm.FREE_THIRD) ? Loss.THREE_READINGS : Loss.TWO_READINGS;
        }
        if (readings.has(freeRise())) {
            return Loss.FREE_RISE;
        }
        return readings.has(ImpactForm.FRICTION) ? Loss.GIVEN : Loss.UNKNOWN;
    }

    private Input freeRise() {
        return byHeight ? ImpactForm.FREE_RISE_HEIGHT : ImpactForm.FREE_RISE_ANGLE;
    }

    private Input rise() {
        return byHeight ? ImpactForm.RISE_HEIGHT : ImpactForm.RISE_ANGLE;
    }

    /** The reading of the release; of the free rise where nothing else was read. */
    private Input release() {
        Input release = byHeight ? ImpactForm.RELEASE_HEIGHT : ImpactForm.RELEASE_ANGLE;
        return readings.has(release) ? release : freeRise();
    }

    /** Returns 1 − cos of the angle that a reading stands for; a height at r is r·(1 − cos). */
    private double raised(Input reading) {
        double value = readings.number(reading);
        return byHeight ? value / readings.number(ImpactForm.HEIGHT_RADIUS) : 1 - Hammer.cos(value);
    }

    /** Returns why the readings can't be, if so. */
    Optional<String> impossible() {
        double rose = readings.number(rise());
        double released = readings.number(release());
        String unit = " " + rise().unit().symbol();
        if (rose > released) {
            return Optional.of("it rose to %s%s, above the release at %s%s"
                    .formatted(rose, unit, released, unit));
        }
        if (loss() == Loss.FREE_RISE && rose > readings.number(freeRise())) {
            return Optional.of("it rose to %s%s with a specimen, but only to %s%s without one"
                    .formatted(rose, unit, readings.number(freeRise()), unit));
        }
        if (byHeight && released > 2 * readings.number(ImpactForm.HEIGHT_RADIUS)) {
            return Optional.of("the release at %s mm is above the top of a circle of radius %s mm"
                    .formatted(released, readings.number(ImpactForm.HEIGHT_RADIUS)));
        }
        return Optional.empty();
    }

    /** Returns E₀ (J). */
    double available() {
        return moment * raised(release());
    }

    /**
     * Returns the energy that the specimen took (J), less friction and half of what its pieces can
     * have flown off with.
     *
     * <p>The rise without a specimen, read on the same scale, takes the place of the release: an
     * error of the latch and the mean friction are in both.
     */
    double absorbed() {
        double from = loss() == Loss.FREE_RISE ? raised(freeRise()) : raised(release());
        double indicated = moment * (from - raised(rise()));
        double toss = tossAtMost().orElse(0) * (0.5 + readings.error(TOSS));
        return indicated - (loss() == Loss.FREE_RISE ? 0 : lost()) - toss;
    }

    /** Returns the energy that friction took in this swing (J), 0 where nothing is known. */
    double lost() {
        return switch (loss()) {
            case THREE_READINGS ->
                Friction.byThreeReadings(
                        moment,
                        readings.number(ImpactForm.RELEASE_ANGLE),
                        readings.number(ImpactForm.RISE_ANGLE),
                        readings.number(ImpactForm.FREE_FIRST),
                        readings.number(ImpactForm.FREE_SECOND),
                        readings.number(ImpactForm.FREE_THIRD));
            case TWO_READINGS ->
                Friction.byTwoReadings(
                        moment,
                        readings.number(ImpactForm.RELEASE_ANGLE),
                        readings.number(ImpactForm.RISE_ANGLE),
                        readings.number(ImpactForm.FREE_FIRST),
                        readings.number(ImpactForm.FREE_SECOND));
            case FREE_RISE -> moment * (raised(release()) - raised(freeRise()));
            case GIVEN -> readings.number(ImpactForm.FRICTION);
            case UNKNOWN -> 0;
        };
    }

    /** Returns the largest energy that the pieces can have flown off with: ½·m·v² (J). */
    OptionalDouble tossAtMost() {
        OptionalDouble speed = speed();
        if (!readings.has(ImpactForm.PIECE_MASS) || speed.isEmpty()) {
            return OptionalDouble.empty();
        }
        double mass = readings.number(ImpactForm.PIECE_MASS) * GRAM;
        return OptionalDouble.of(mass * speed.getAsDouble() * speed.getAsDouble() / 2);
    }

    /** Returns L_P (m) where small swings were timed. */
    OptionalDouble reducedLength() {
        if (!has(readings, ImpactForm.SWINGS, ImpactForm.SWINGS_TIME)) {
            return OptionalDouble.empty();
        }
        double amplitude = readings.has(ImpactForm.SWINGS_AMPLITUDE)
                ? readings.number(ImpactForm.SWINGS_AMPLITUDE)
                : 0;
        double period =
                readings.number(ImpactForm.SWINGS_TIME) / readings.number(ImpactForm.SWINGS);
        return OptionalDouble.of(Hammer.reducedLength(period, amplitude));
    }

    OptionalDouble strikerRadius() {
        return readings.has(ImpactForm.STRIKER_RADIUS)
                ? OptionalDouble.of(readings.number(ImpactForm.STRIKER_RADIUS) * MM)
                : OptionalDouble.empty();
    }

    /** Returns the speed of the striker at the lowest point (m/s), its radius being known. */
    OptionalDouble speed() {
        OptionalDouble radius = strikerRadius();
        if (radius.isEmpty()) {
            return radius;
        }
        double length = reducedLength().orElse(radius.getAsDouble());
        double raised = raised(release());
        return OptionalDouble.of(radius.getAsDouble() * Math.sqrt(2 * Hammer.G * raised / length));
    }
}
