package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.List;
import org.twinbar.instrument.Calibration.Point;

/** Invented calibrations; core/src/test/R/instrument.R has the same numbers. */
final class Cells {

    private Cells() {}

    static Calibration upAndDown() {
        return of(0.01, new double[] {0, 50, 100, 150, 200, 150, 100, 50, 0}, new double[] {
            0.31, 50.62, 101.17, 151.55, 201.68, 151.98, 101.52, 50.93, 0.42
        });
    }

    static Calibration bent() {
        return of(0.1, new double[] {20, 30, 40, 50, 60, 70}, new double[] {
            20.4, 30.2, 39.9, 50.1, 60.5, 71.3
        });
    }

    static Calibration of(double resolution, double[] reference, double[] reading) {
        return of(resolution, reference, reading, Reference.exact("weights"));
    }

    static Calibration of(
            double resolution, double[] reference, double[] reading, Reference against) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < reference.length; i++) {
            points.add(new Point(reference[i], reading[i]));
        }
        return Calibration.of(points, resolution, against);
    }
}
