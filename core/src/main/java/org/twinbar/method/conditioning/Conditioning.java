package org.twinbar.method.conditioning;

import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Ask;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Limits;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;

/** How long a specimen lay in the climate of the room that it is tested in. */
public final class Conditioning {

    public static final Input HOURS = Input.of(
                    "conditioned", "Time in the climate of the test room", "h", Kind.NONE)
            .within(Limits.ZERO_OR_MORE)
            .plausibly(0, 2000);

    public static final Ask ASK = Ask.optional(
                    "How long did it lie in the climate of the test room?", List.of(HOURS))
            .once();

    static final Finding.Kind UNKNOWN = Finding.Kind.note(
            "conditioning-unknown",
            "How long the specimens lay in the climate of the test room was not noted; ISO 291 asks"
                    + " for 88 hours at 23 °C and 50 %% of humidity. Moisture softens a print: let"
                    + " all groups lie together.");
    static final Finding.Kind BRIEF = Finding.Kind.note(
            "conditioned-briefly",
            "It lay in the climate of the test room for %s h; ISO 291 asks for 88 hours, or 4 where"
                    + " only the temperature matters.");

    /** At 23 °C and 50 % of humidity: ISO 291 (METHODS L). */
    private static final double ENOUGH_HOURS = 88;

    private Conditioning() {}

    /** Says that a specimen was conditioned for less than ISO 291 asks for. */
    public static void find(Readings readings, Outcome.Builder out) {
        if (readings.atRest() && readings.has(HOURS)) {
            double hours = readings.number(HOURS);
            if (hours < ENOUGH_HOURS) {
                out.found(BRIEF.with(Figures.two(hours)));
            }
        }
    }

    /**
     * Returns what is to be said of all specimens of a test where nobody noted how they were
     * conditioned, though the method asks; once for all rather than of each.
     */
    public static Optional<Finding> unknown(Description description) {
        return description.inputs().contains(HOURS)
                ? Optional.of(UNKNOWN.with())
                : Optional.empty();
    }
}
