package org.twinbar.method.impact;

import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Readings of blows for tests, and short ways to what came out. */
final class Struck {

    private Struck() {}

    /** A notched bar of 4 by 8 mm. */
    static Readings.Builder bar(Bench bench) {
        return Readings.of("A1", "plain", bench)
                .number(ImpactForm.THICKNESS, 4)
                .number(ImpactForm.WIDTH, 8);
    }

    /** The same, struck by a hammer of a known moment between two angles. */
    static Readings.Builder blow(double momentNm, double release, double rise) {
        return bar(Exactly.bench())
                .number(ImpactForm.MOMENT, momentNm)
                .number(ImpactForm.RELEASE_ANGLE, release)
                .number(ImpactForm.RISE_ANGLE, rise);
    }

    static Result strike(Readings.Builder readings) {
        return Result.of(new Impact(), readings.build());
    }
}
