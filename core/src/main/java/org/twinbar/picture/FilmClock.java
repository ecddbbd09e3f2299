package org.twinbar.picture;

/**
 * Clock time from film time: film of every so many seconds runs faster than the clock, slow motion
 * slower, and two frames on which a clock was seen say how much.
 *
 * <pre>c = c₁ + w (c₂ − c₁),  w = (f − f₁)/(f₂ − f₁),  rate r = (c₂ − c₁)/(f₂ − f₁)
 * u² = (1 − w)² u₁² + w² u₂² + r² u_f²,  u_i² = d_i²/12 + r² u_f²,  u_f = F/√12</pre>
 *
 * <p>f is film time, c clock time (both s), d the step of a clock, F how long a frame lasts (film
 * s): within it nothing is seen. Beyond the two frames w leaves 0 to 1, and the uncertainty grows.
 * Source: JCGM 100:2008, equation (10).
 *
 * @param frameS how long a frame lasts (film s)
 * @param first a frame on which a clock was seen
 * @param second another
 */
public record FilmClock(double frameS, Seen first, Seen second) {

    private static final double STEP_TO_STANDARD = 1 / Math.sqrt(12);

    /**
     * A frame on which a clock was seen.
     *
     * @param filmS its film time (s)
     * @param clockS what the clock showed (s)
     * @param stepS the clock's step (s), 0 where film time itself is the clock
     */
    public record Seen(double filmS, double clockS, double stepS) {

        /** @throws IllegalArgumentException unless all are finite and the step ≥ 0 */
        public Seen {
            if (!Double.isFinite(filmS) || !Double.isFinite(clockS) || !(stepS >= 0)) {
                throw new IllegalArgumentException(
                        "a clock that showed %s s at %s s of film, with steps of %s s, is none"
                                .formatted(clockS, filmS, stepS));
            }
        }
    }

    /** A clock time (s) with its standard uncertainty (s). */
    public record Time(double seconds, double standardUncertainty) {}

    /**
     * @throws IllegalArgumentException unless a frame lasts longer than 0 s, and both film time and
     *     clock time grow from one frame to the other
     */
    public FilmClock {
        if (!(frameS > 0 && frameS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "a frame lasts %s s, must be above 0".formatted(frameS));
        }
        boolean forwards = second.filmS() > first.filmS() && second.clockS() > first.clockS();
        boolean backwards = second.filmS() < first.filmS() && second.clockS() < first.clockS();
        if (!forwards && !backwards) {
            throw new IllegalArgumentException(
                    ("the clock showed %s s at %s s of film and %s s at %s s,"
                                    + " must run the same way as the film")
                            .formatted(
                                    first.clockS(),
                                    first.filmS(),
                                    second.clockS(),
                                    second.filmS()));
        }
    }

    /** Returns the clock of a film that runs as fast as time. */
    public static FilmClock asFilmed(double frameS) {
        return new FilmClock(frameS, new Seen(0, 0, 0), new Seen(1, 1, 0));
    }

    /** Returns how many seconds pass on the clock in one of the film. */
    public double rate() {
        return (second.clockS() - first.clockS()) / (second.filmS() - first.filmS());
    }

    /** Returns when a frame was taken. */
    public Time at(double filmS) {
        double share = (filmS - first.filmS()) / (second.filmS() - first.filmS());
        double frame = rate() * frameS * STEP_TO_STANDARD;
        boolean twoSeen = first.stepS() > 0 || second.stepS() > 0;
        double one = twoSeen ? (1 - share) * of(first, frame) : 0;
        double other = twoSeen ? share * of(second, frame) : 0;
        return new Time(
                first.clockS() + share * (second.clockS() - first.clockS()),
                Math.sqrt(one * one + other * other + frame * frame));
    }

    private static double of(Seen seen, double frame) {
        double step = seen.stepS() * STEP_TO_STANDARD;
        return Math.sqrt(step * step + frame * frame);
    }
}
