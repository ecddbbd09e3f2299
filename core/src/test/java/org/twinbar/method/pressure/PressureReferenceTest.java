package org.twinbar.method.pressure;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

class PressureReferenceTest {

    private static final Checks CHECKS = Checks.of(PressureReferenceTest.class);

    private static Readings.Builder rows() {
        double[] time = new double[11];
        for (int row = 0; row < 11; row++) {
            time[row] = 60 * row;
        }
        return Readings.of("T1", "plain", Exactly.bench())
                .setting(PressureForm.SETTLE, 0)
                .number(PressureForm.AMBIENT, 100.2)
                .number(PressureForm.VOLUME, 250)
                .channel(PressureForm.TIME, time)
                .channel(PressureForm.PRESSURE, new double[] {
                    15.2, 14.9, 14.7, 14.3, 14.1, 13.8, 13.5, 13.3, 13.0, 12.7, 12.5
                });
    }

    @Test
    void lineThroughTheLogarithmOfThePressure() {
        Result result = Vessels.result(rows().channel(PressureForm.TEMPERATURE, new double[] {
            21.0, 20.9, 20.9, 20.8, 20.7, 20.7, 20.6, 20.5, 20.5, 20.4, 20.3
        }));
        Yield.Fitted loss = (Yield.Fitted) result.yields().get(PressureForm.PRESSURE_LOSS);
        CHECKS.row("loss").expects(loss.value());
        CHECKS.row("loss-u").expects(loss.standardUncertainty());
        CHECKS.row("leak").expects(Exactly.value(result, PressureForm.LEAK_RATE));
        CHECKS.row("half").expects(Exactly.value(result, PressureForm.HALF_TIME));
    }

    @Test
    void withoutATemperatureNothingIsCorrected() {
        Decay decay = new Decay(rows().build());
        CHECKS.row("raw-rate").expects(-decay.line(0, 10, 0).slope());
    }
}
