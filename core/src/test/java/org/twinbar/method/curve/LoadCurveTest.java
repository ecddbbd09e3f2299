package org.twinbar.method.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.instrument.Kind;
import org.twinbar.method.Channel;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;

class LoadCurveTest {

    private static Trace trace(double... rows) {
        Channel channel = Channel.of("force", "Force", "N", Kind.NONE);
        return Readings.of("A1", "plain", Bench.usual())
                .channel(channel, rows)
                .build()
                .trace(channel);
    }

    private static double[] count(int rows, double step) {
        double[] values = new double[rows];
        for (int row = 0; row < rows; row++) {
            values[row] = row * step;
        }
        return values;
    }

    @Test
    void theBreakIsTheLastRowBeforeTheCollapse() {
        LoadCurve sharp = LoadCurve.of(trace(0, 50, 100, 99, 2, 1));
        assertThat(sharp.lastBeforeCollapse(2)).hasValue(3);
        LoadCurve spread = LoadCurve.of(trace(0, 50, 100, 99, 60, 30, 8, 1));
        assertThat(spread.lastBeforeCollapse(2)).hasValue(3);
        LoadCurve kept = LoadCurve.of(trace(0, 50, 100, 99, 60, 30));
        assertThat(kept.lastBeforeCollapse(2)).isEmpty();
    }

    @Test
    void theStraightStretchBeginsBehindTheToe() {
        double[] way = count(200, 0.01);
        double[] force = new double[200];
        for (int row = 0; row < 200; row++) {
            double pulled = Math.max(0, way[row] - 0.4);
            force[row] = 100 * pulled + (pulled == 0 ? 5 * way[row] : 2);
        }
        LoadCurve curve = LoadCurve.of(trace(force), trace(way), 0);
        LoadCurve.Stretch stretch = curve.steepest(199);
        assertThat(stretch.from()).isBetween(39, 60);
        Line line = curve.line(curve.window(stretch.from() + 2, stretch.to()));
        assertThat(line.slope()).isCloseTo(100, within(1e-9));
    }

    @Test
    void workIsTheAreaUnderTheCurve() {
        double[] way = count(11, 0.1);
        LoadCurve curve = LoadCurve.of(trace(count(11, 10)), trace(way), 0);
        assertThat(curve.work(curve.window(0, 10))).isCloseTo(50, within(1e-12));
        LoadCurve soft = LoadCurve.of(trace(count(11, 10)), trace(way), 0.002);
        assertThat(soft.work(soft.window(0, 10))).isCloseTo(50 - 0.002 * 10_000 / 2, within(1e-12));
    }

    @Test
    void aRowWithoutANumberIsBridged() {
        double[] force = count(11, 10);
        force[5] = Double.NaN;
        LoadCurve curve = LoadCurve.of(trace(force), trace(count(11, 0.1)), 0);
        assertThat(curve.work(curve.window(0, 10))).isCloseTo(50, within(1e-12));
        assertThat(curve.line(curve.window(0, 10)).slope()).isCloseTo(100, within(1e-9));
    }

    @Test
    void noiseIsThatOfTheRowsWhateverTheCurveDoes() {
        Random random = new Random(6);
        double[] force = new double[4000];
        for (int row = 0; row < 4000; row++) {
            double share = row / 4000.0;
            force[row] =
                    900 * share * (2 - share) + (row > 2000 ? 50 : 0) + 1.5 * random.nextGaussian();
        }
        assertThat(Noise.of(trace(force), 0, 3999)).isCloseTo(1.5, within(0.2));
        assertThat(Noise.of(trace(count(4000, 1)), 0, 3999)).isZero();
        assertThat(Noise.of(trace(1, 2, 3), 0, 2)).isZero();
    }
}
