package org.twinbar.picture;

import java.util.List;
import java.util.Optional;

/**
 * What an instrument showed at a time between two at which it was read.
 *
 * <pre>y = y₁ + w (y₂ − y₁),  w = (t − t₁)/(t₂ − t₁)
 * u² = [(1 − w)² + w²] d²/12 + (y₂ − y₁)²/(t₂ − t₁)² u_t²</pre>
 *
 * <p>It is taken to run straight from one reading to the next; d is its display's step, u_t the
 * standard uncertainty of the time. What all its readings share is not in u. Source: JCGM 100:2008,
 * equation (10).
 *
 * @param value y
 * @param standardUncertainty u
 * @param before the reading before it, y₁
 * @param after the reading after it, y₂
 */
public record Between(double value, double standardUncertainty, double before, double after) {

    /** A reading at a time (s). */
    public record Noted(double seconds, double value) {}

    /**
     * Returns what was shown at a time; empty where it lies before the first reading or after the
     * last, since nothing says what was shown there.
     *
     * @param noted readings in any order
     * @param step d, zero or more
     * @throws IllegalArgumentException where two readings of one time differ
     */
    public static Optional<Between> at(FilmClock.Time time, List<Noted> noted, double step) {
        List<Noted> sorted = noted.stream()
                .sorted(java.util.Comparator.comparingDouble(Noted::seconds))
                .toList();
        for (int i = 1; i < sorted.size(); i++) {
            Noted one = sorted.get(i - 1);
            Noted two = sorted.get(i);
            if (one.seconds() == two.seconds() && one.value() != two.value()) {
                throw new IllegalArgumentException("at %s s both %s and %s were read, must be one"
                        .formatted(one.seconds(), one.value(), two.value()));
            }
            if (one.seconds() <= time.seconds() && time.seconds() <= two.seconds()) {
                return Optional.of(between(time, one, two, step));
            }
        }
        return sorted.stream()
                .filter(it -> it.seconds() == time.seconds())
                .findFirst()
                .map(it -> between(time, it, it, step));
    }

    private static Between between(FilmClock.Time time, Noted one, Noted two, double step) {
        double span = two.seconds() - one.seconds();
        double share = span == 0 ? 0 : (time.seconds() - one.seconds()) / span;
        double slope = span == 0 ? 0 : (two.value() - one.value()) / span;
        double shown = ((1 - share) * (1 - share) + share * share) * step * step / 12;
        double moved = slope * time.standardUncertainty();
        return new Between(
                one.value() + share * (two.value() - one.value()),
                Math.sqrt(shown + moved * moved),
                one.value(),
                two.value());
    }
}
