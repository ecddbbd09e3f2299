package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.instrument.Calibration.Point;
import org.twinbar.statistics.LinearFit;
import org.twinbar.statistics.StraightLine;
import org.twinbar.statistics.groups.FTest;

/**
 * Whether points lie along a line: what a line leaves over against what readings at one reference
 * scatter, or, where no reference was read twice, against what a parabola leaves over.
 *
 * <pre>lack of fit: F = [(SS_line − SS_repeats)/(m − 2)] / [SS_repeats/(n − m)]
 * curvature:   F = (SS_line − SS_parabola) / [SS_parabola/(n − 3)]</pre>
 *
 * <p>n points at m references. The denominator is not believed below d²/12, d being the display's
 * step: five equal readings on a coarse display do not make a bend of a rounding. Source: N. R.
 * Draper, H. Smith, Applied regression analysis (1998), 2.1 (lack of fit) and 12.1.
 *
 * @param kind what was asked
 * @param test the ratio with its degrees of freedom and p
 */
public record Straightness(Kind kind, FTest test) {

    /** A bend that chance alone makes less often than this is told. */
    private static final double TOLD_BELOW_P = 0.05;

    /** What a line was held against. */
    public enum Kind {
        /** What readings at one reference scatter. */
        LACK_OF_FIT("lack of fit"),
        /** What a parabola leaves over. */
        CURVATURE("curvature");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Returns whether the line was found to bend. */
    public boolean bends() {
        return test.p() < TOLD_BELOW_P;
    }

    static Optional<Straightness> of(Calibration calibration) {
        int levels = calibration.levels();
        int n = calibration.points().size();
        if (levels < 3) {
            return Optional.empty();
        }
        if (n > levels) {
            return Optional.of(lackOfFit(calibration, levels));
        }
        return n > 3 ? Optional.of(curvature(calibration)) : Optional.empty();
    }

    private static Straightness lackOfFit(Calibration calibration, int levels) {
        Map<Double, List<Point>> byReference = new LinkedHashMap<>();
        for (Point point : calibration.points()) {
            byReference
                    .computeIfAbsent(point.reference(), it -> new ArrayList<>())
                    .add(point);
        }
        double repeats = 0;
        double fromLine = 0;
        for (Map.Entry<Double, List<Point>> level : byReference.entrySet()) {
            double mean = level.getValue().stream()
                    .mapToDouble(Point::reading)
                    .average()
                    .orElseThrow();
            double off = mean - calibration.line().at(level.getKey());
            for (Point point : level.getValue()) {
                repeats += (point.reading() - mean) * (point.reading() - mean);
                fromLine += off * off;
            }
        }
        double df = calibration.points().size() - levels;
        return new Straightness(
                Kind.LACK_OF_FIT,
                FTest.of(
                        fromLine,
                        levels - 2.0,
                        believed(calibration, repeats, df),
                        df,
                        Kind.LACK_OF_FIT.word()));
    }

    private static Straightness curvature(Calibration calibration) {
        StraightLine line = calibration.line();
        double half = (calibration.highest() - calibration.lowest()) / 2;
        double[][] rows = calibration.points().stream()
                .map(point -> (point.reference() - line.meanX()) / half)
                .map(x -> new double[] {1, x, x * x})
                .toArray(double[][]::new);
        double[] readings =
                calibration.points().stream().mapToDouble(Point::reading).toArray();
        LinearFit parabola = LinearFit.of(rows, readings);
        double left = parabola.residualSd() * parabola.residualSd() * parabola.df();
        double ofLine = Arrays.stream(calibration.residuals()).map(r -> r * r).sum();
        return new Straightness(
                Kind.CURVATURE,
                FTest.of(
                        Math.max(0, ofLine - left),
                        1,
                        believed(calibration, left, parabola.df()),
                        parabola.df(),
                        Kind.CURVATURE.word()));
    }

    private static double believed(Calibration calibration, double squares, double df) {
        double step = calibration.resolution();
        return Math.max(squares, step * step / 12 * df);
    }
}
