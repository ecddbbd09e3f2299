package org.twinbar.method.creep;

import java.util.Arrays;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Records of creep for tests, and short ways to what came out. */
final class Crept {

    private Crept() {}

    /** A bar at 5 MPa in a room of 23 °C, with strains (%) at hours. */
    static Readings.Builder bar(double[] hours, double[] strains) {
        return bar(Exactly.bench(), hours, strains);
    }

    static Readings.Builder bar(Bench bench, double[] hours, double[] strains) {
        double[] room = new double[hours.length];
        Arrays.fill(room, 23);
        return Readings.of("K1", "plain", bench)
                .number(CreepForm.STRESS, 5)
                .channel(CreepForm.TIME, hours)
                .channel(CreepForm.STRAIN, strains)
                .channel(CreepForm.TEMPERATURE, room);
    }

    static Result result(Readings.Builder readings) {
        return Result.of(new Creep(), readings.build());
    }
}
