package org.twinbar.instrument;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.twinbar.finding.Finding;
import org.twinbar.statistics.StraightLine;
import org.twinbar.statistics.StudentT;
import org.twinbar.uncertainty.Shape;
import org.twinbar.uncertainty.Source;

/**
 * An instrument held against a reference: the straight line of its readings on the reference.
 *
 * <pre>reading = offset + slope · reference,  s² = max(Σ residual²/(n − 2), d²/12)</pre>
 *
 * <p>The reading carries the scatter, the reference does not, so that the line is fitted by least
 * squares of reading on reference and turned round to correct readings. A display's step d that is
 * coarser than the scatter hides it: s is never believed below d/√12. Reference and reading are in
 * one unit. Sources: N. R. Draper, H. Smith, Applied regression analysis (1998), 1.4 and 3.2
 * (inverse regression); JCGM 100:2008, H.3, which fits the correction on the reading and agrees
 * where the points lie close to the line.
 *
 * @param points in the order in which they were read
 * @param resolution step of the display, zero or more
 * @param reference what it was held against
 * @param line least squares of reading on reference
 */
public record Calibration(
        List<Point> points, double resolution, Reference reference, StraightLine line) {

    /** Level of the intervals that it gives. */
    public static final double LEVEL = 0.95;

    /** Fewest points that leave anything to see the scatter by. */
    public static final int FEWEST_POINTS = 3;

    /** One look: what the reference was, and what the instrument showed. */
    public record Point(double reference, double reading) {}

    public Calibration {
        points = List.copyOf(points);
    }

    /**
     * Fits the line.
     *
     * @throws IllegalArgumentException if there are fewer than 3 points, a number isn't finite, all
     *     references are equal, the resolution is negative, or the reading does not grow with the
     *     reference
     */
    public static Calibration of(List<Point> points, double resolution, Reference reference) {
        if (!(resolution >= 0)) {
            throw new IllegalArgumentException(
                    "the resolution is %s, must be zero or more".formatted(resolution));
        }
        if (points.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException("a line with its uncertainty needs %s points, not %s"
                    .formatted(FEWEST_POINTS, points.size()));
        }
        StraightLine line = StraightLine.of(
                points.stream().mapToDouble(Point::reference).toArray(),
                points.stream().mapToDouble(Point::reading).toArray());
        if (!(line.slope() > 0)) {
            throw new IllegalArgumentException(
                    "the readings do not grow with the reference: their line falls by %s per unit"
                            .formatted(-line.slope()));
        }
        return new Calibration(points, resolution, reference, line);
    }

    /** Returns the standard deviation of one reading about the line, s. */
    public double scatter() {
        return Math.max(line.residualSd(), roundingScatter());
    }

    private double roundingScatter() {
        return resolution / Math.sqrt(12);
    }

    /** Returns what each reading lies above the line, in the order of the points. */
    public double[] residuals() {
        return points.stream()
                .mapToDouble(point -> point.reading() - line.at(point.reference()))
                .toArray();
    }

    /** Returns the point that lies farthest from the line. */
    public int worst() {
        double[] residuals = residuals();
        int worst = 0;
        for (int i = 1; i < residuals.length; i++) {
            if (Math.abs(residuals[i]) > Math.abs(residuals[worst])) {
                worst = i;
            }
        }
        return worst;
    }

    public double lowest() {
        return points.stream().mapToDouble(Point::reference).min().orElseThrow();
    }

    public double highest() {
        return points.stream().mapToDouble(Point::reference).max().orElseThrow();
    }

    /** Returns how many values of the reference there are. */
    public int levels() {
        return new LinkedHashSet<>(points.stream().map(Point::reference).toList()).size();
    }

    /** Returns the standard uncertainty of the slope. */
    public double slopeUncertainty() {
        return Math.sqrt(inflated(line.slopeVariance(), squaresOfReference()));
    }

    /** Returns the standard uncertainty of the line's height at the middle of its points. */
    public double heightUncertainty() {
        return Math.sqrt(inflated(line.varianceAtMean(), line.n()));
    }

    /** Returns the standard uncertainty of the offset, the line's height at a reference of 0. */
    public double offsetUncertainty() {
        double atMean = heightUncertainty();
        double tilt = line.meanX() * slopeUncertainty();
        return Math.sqrt(atMean * atMean + tilt * tilt);
    }

    /** A variance of the line is s² over something; s may be that of rounding. */
    private double inflated(double variance, double over) {
        return Math.max(variance, roundingScatter() * roundingScatter() / over);
    }

    private double squaresOfReference() {
        double sum = 0;
        for (Point point : points) {
            double from = point.reference() - line.meanX();
            sum += from * from;
        }
        return sum;
    }

    /** Returns what makes an interval of {@link #LEVEL} of a standard uncertainty of the line. */
    public double factor() {
        return new StudentT(line.df()).twoSided(LEVEL);
    }

    /** Returns whether the points lie along a line, where there are enough of them to tell. */
    public Optional<Straightness> straightness() {
        return Straightness.of(this);
    }

    /** Returns the difference between going down and going up, where it did both. */
    public Optional<Reversal> reversal() {
        return Reversal.of(points);
    }

    /** Returns what a person should know of it. */
    public List<Finding> findings() {
        return CalibrationFindings.of(this);
    }

    /** Returns a finding where a reading lies farther from the line than is allowed. */
    public Optional<Finding> against(Allowed allowed) {
        return CalibrationFindings.against(this, allowed);
    }

    /**
     * Returns what it does to readings.
     *
     * <pre>value = (reading − offset)/slope;  height error h: value + h/slope;
     * slope error e: value + e · (value − mean of the references)</pre>
     *
     * <p>Height at the middle and slope are independent, so that their covariance never has to be
     * carried. The reference's own errors move all values alike.
     *
     * @param name of the instrument, by which its errors are shared
     * @param standsOn which calibration it is, in the words of a report
     */
    public Correction correction(String name, String standsOn) {
        double df = line.df();
        List<Fault> faults = new ArrayList<>();
        faults.add(Fault.gain(
                fitted(name + " gain", slopeUncertainty() / line.slope(), df), line.meanX()));
        faults.add(Fault.zero(fitted(name + " zero", heightUncertainty() / line.slope(), df)));
        if (reference.uncertainty() > 0) {
            faults.add(Fault.zero(
                    Source.shared(name + " reference", Shape.NORMAL, reference.uncertainty())));
        }
        if (reference.shareUncertainty() > 0) {
            faults.add(Fault.gain(
                    Source.shared(
                            name + " reference gain", Shape.NORMAL, reference.shareUncertainty()),
                    0));
        }
        return new Correction(
                line.intercept(),
                line.slope(),
                scatter() / line.slope(),
                df,
                faults,
                lowest(),
                highest(),
                standsOn);
    }

    private static Source fitted(String identity, double u, double df) {
        return new Source(identity, Source.Reach.SHARED, Shape.STUDENT, u, df);
    }
}
