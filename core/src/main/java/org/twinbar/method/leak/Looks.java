package org.twinbar.method.leak;

import java.util.Optional;
import org.twinbar.finding.Figures;
import org.twinbar.method.Readings;
import org.twinbar.method.Yield;

/** When a vessel was seen dry and wet, in hours from filling; infinite where it never was. */
record Looks(double lastDry, double firstWet) {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** Returns what was seen; empty where nothing was noted. */
    static Optional<Looks> of(Readings readings) {
        boolean dry = readings.has(LeakForm.DRY_UNTIL);
        boolean wet = readings.has(LeakForm.WET_AT);
        if (dry || wet) {
            return Optional.of(new Looks(
                    dry ? readings.number(LeakForm.DRY_UNTIL) : 0,
                    wet ? readings.number(LeakForm.WET_AT) : NEVER));
        }
        if (readings.has(LeakForm.LEAKED) && readings.has(LeakForm.TIME)) {
            double time = readings.number(LeakForm.TIME);
            boolean leaked = readings.word(LeakForm.LEAKED).equals(LeakForm.YES);
            return Optional.of(new Looks(time, leaked ? time : NEVER));
        }
        return Optional.empty();
    }

    boolean leaked() {
        return firstWet < NEVER;
    }

    /** Returns why the looks can't be, if so. */
    Optional<String> impossible() {
        return firstWet < lastDry
                ? Optional.of("it was first seen wet at %s, before it was last seen dry at %s"
                        .formatted(hours(firstWet), hours(lastDry)))
                : Optional.empty();
    }

    Yield timeToLeak() {
        if (!leaked()) {
            return new Yield.AtLeast(lastDry, "it was dry when the test ended");
        }
        if (firstWet < lastDry) {
            return new Yield.Missing(impossible().orElseThrow());
        }
        return firstWet == lastDry
                ? new Yield.Value(firstWet)
                : new Yield.Between(
                        lastDry,
                        firstWet,
                        "last seen dry at %s, first seen wet at %s"
                                .formatted(hours(lastDry), hours(firstWet)));
    }

    /** Returns whether it stayed dry for a time; the reason where that can't be said. */
    Yield dryFor(double hours) {
        if (lastDry >= hours && !(firstWet <= hours)) {
            return new Yield.Word(LeakForm.YES);
        }
        if (firstWet <= hours) {
            return new Yield.Word(LeakForm.NO);
        }
        return new Yield.Missing(
                leaked()
                        ? "it was last seen dry at %s and first seen wet at %s, with the %s of the claim between"
                                .formatted(hours(lastDry), hours(firstWet), hours(hours))
                        : "the test ended at %s, before the %s that the claim names"
                                .formatted(hours(lastDry), hours(hours)));
    }

    static String hours(double hours) {
        return (hours == Math.rint(hours) && hours < 1e9
                        ? Long.toString((long) hours)
                        : Figures.three(hours))
                + " h";
    }
}
