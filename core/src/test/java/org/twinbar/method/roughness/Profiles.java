package org.twinbar.method.roughness;

import java.util.function.DoubleUnaryOperator;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;

/** Profiles for tests. */
final class Profiles {

    static final double STEP = 0.0025;
    static final double LENGTH = 15;

    private Profiles() {}

    static Readings.Builder part(Bench bench) {
        return Readings.of("R1", "plain", bench).word(RoughnessForm.TRACED, RoughnessForm.ACROSS);
    }

    /** A profile of 15 mm in rows of 2.5 µm: five sampling lengths of 2.5 mm and the ends. */
    static Readings.Builder of(DoubleUnaryOperator height) {
        return of(part(Exactly.bench()), STEP, LENGTH, height);
    }

    static Readings.Builder of(
            Readings.Builder part, double step, double length, DoubleUnaryOperator height) {
        int rows = (int) Math.round(length / step) + 1;
        double[] position = new double[rows];
        double[] heights = new double[rows];
        for (int row = 0; row < rows; row++) {
            position[row] = row * step;
            heights[row] = height.applyAsDouble(row * step);
        }
        return part.channel(RoughnessForm.POSITION, position)
                .channel(RoughnessForm.HEIGHT, heights);
    }

    /** A wave of a height (µm) and a length (mm). */
    static DoubleUnaryOperator sine(double height, double length) {
        return x -> height * StrictMath.sin(2 * Math.PI * x / length);
    }

    static DoubleUnaryOperator triangle(double height, double length) {
        return x -> {
            double phase = x / length - Math.floor(x / length);
            return height * (4 * Math.abs(phase - 0.5) - 1);
        };
    }

    static Result trace(Readings.Builder readings) {
        return Result.of(new Roughness(), readings.build());
    }
}
