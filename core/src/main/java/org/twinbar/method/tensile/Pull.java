package org.twinbar.method.tensile;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Trace;
import org.twinbar.method.Yield;
import org.twinbar.method.curve.CurveFindings;
import org.twinbar.method.curve.Line;
import org.twinbar.method.curve.LoadCurve;
import org.twinbar.method.curve.OffsetLine;
import org.twinbar.method.curve.SlopeWindow;
import org.twinbar.method.curve.Toe;

/** One specimen's curve in one world, from the force that it reached to where it broke. */
final class Pull {

    /**
     * A fall of the force is real above this many standard deviations of its noise: METHODS A.1.
     */
    private static final double REAL_IN_NOISE = 3;

    /** And above this share of the force: METHODS A.1. */
    private static final double REAL_IN_FORCE = 0.005;

    /** A fall that lasts fewer rows is the break itself, spread by the logger's filter; our own. */
    private static final int ROWS_OF_A_FALL = 3;

    private static final int FEWEST_POINTS = 3;

    private final Readings readings;
    private final Outcome.Builder out;
    private final Trace force;

    Pull(Readings readings, Outcome.Builder out) {
        this.readings = readings;
        this.out = out;
        this.force = readings.trace(PullForm.FORCE);
    }

    void calculate() {
        if (force.size() == 0) {
            out.restMissing("the curve has no rows");
            return;
        }
        int peak = readings.mark(PullForm.PEAK, () -> OptionalInt.of(force.rowOfLargest()))
                .getAsInt();
        if (CurveFindings.isUpsideDown(readings, PullForm.FORCE)) {
            out.found(CurveFindings.upsideDown(readings, PullForm.FORCE));
            out.restMissing(CurveFindings.wrongSign(PullForm.FORCE));
            return;
        }
        if (!(force.get(peak) > 0)) {
            out.restMissing("the force never rises above zero");
            return;
        }
        double noise = CurveFindings.noise(readings, PullForm.FORCE, peak);
        Bound bound = Bound.ofBreak(readings)
                .or(CurveFindings.bound(readings, PullForm.FORCE, peak)
                        .map(Bound::new)
                        .orElse(Bound.NONE));
        if (readings.atRest()) {
            CurveFindings.of(readings, PullForm.FORCE, peak).forEach(out::found);
            PullFindings.ofBreak(readings, out);
        }
        stretch(peak, noise, bound);
    }

    private void stretch(int peak, double noise, Bound bound) {
        Stretching stretching = Stretching.of(readings);
        OptionalInt collapse =
                readings.mark(PullForm.BREAK, () -> LoadCurve.of(force).lastBeforeCollapse(peak));
        int end = Math.max(peak, collapse.orElse(force.size() - 1));
        if (readings.atRest()) {
            PullFindings.ofTime(readings, out, peak, end);
        }
        if (stretching.channel() == null || peak < FEWEST_POINTS) {
            strengthAt(peak, bound);
            out.restMissing(
                    stretching.channel() == null
                            ? "no extension, strain or displacement was recorded"
                            : "the curve has too few rows before its peak");
            return;
        }
        LoadCurve curve = stretching.curve(force, readings);
        double zero = Toe.zero(readings, curve, peak);
        OptionalInt yield = readings.mark(
                PullForm.YIELD, () -> searchYield(curve, stretching, zero, peak, end, noise));
        boolean atFirst = readings.choice(PullForm.STRENGTH_AT).equals(PullForm.FIRST_MAXIMUM)
                && readings.choice(PullForm.YIELD_BY).equals(PullForm.BY_DECREASE);
        int strongest = atFirst ? yield.orElse(peak) : peak;
        strengthAt(strongest, bound);

        boolean seenBreaking = collapse.isPresent() || readings.has(PullForm.BROKE_AT);
        Bound ended =
                seenBreaking ? Bound.NONE : new Bound("the record ends before the load collapses");
        strains(curve, stretching, zero, strongest, end, bound, ended);
        modulus(curve, stretching, zero, peak);
        OptionalInt fell = readings.choice(PullForm.YIELD_BY).equals(PullForm.BY_DECREASE)
                ? yield
                : OptionalInt.empty();
        out.put(
                PullForm.NOMINAL_STRAIN,
                new NominalStrain(readings, stretching, curve, zero)
                        .at(fell, end, bound.or(ended), out));
        out.put(
                PullForm.POISSON_RATIO,
                Narrowing.poissonRatio(
                        readings,
                        stretching,
                        stretching.strainPerWay().isPresent()
                                ? Optional.of(window(curve, stretching, zero, peak))
                                : Optional.empty()));
        yieldStrength(curve, stretching, zero, yield);
        energy(stretching, end, bound.or(ended));
        if (readings.atRest()) {
            PullFindings.ofStretching(readings, out, curve, stretching, zero, strongest);
            fell.ifPresent(first -> PullFindings.ofMaxima(out, force, first, peak, atFirst));
        }
    }

    private void strengthAt(int row, Bound bound) {
        double largest = force.get(row) + readings.resolutionAt(PullForm.FORCE, "peak");
        Tensile.strengths(readings, out, largest, bound);
    }

    private void strains(
            LoadCurve curve,
            Stretching stretching,
            double zero,
            int strongest,
            int end,
            Bound bound,
            Bound ended) {
        OptionalDouble perWay = stretching.strainPerWay();
        if (perWay.isEmpty()) {
            out.missing(PullForm.STRAIN_AT_STRENGTH, stretching.reason());
            out.missing(PullForm.STRAIN_AT_BREAK, stretching.reason());
            return;
        }
        double start = !Toe.isCompensated(readings)
                ? readings.resolutionAt(stretching.needChannel(), "start")
                : 0;
        double percent = 100 * perWay.getAsDouble();
        double peakWay =
                curve.way(strongest) + readings.resolutionAt(stretching.needChannel(), "peak");
        double breakWay = curve.way(end) + readings.resolutionAt(stretching.needChannel(), "break");
        out.put(PullForm.STRAIN_AT_STRENGTH, bound.of(percent * (peakWay - zero - start)));
        out.put(PullForm.STRAIN_AT_BREAK, bound.or(ended).of(percent * (breakWay - zero - start)));
    }

    private void modulus(LoadCurve curve, Stretching stretching, double zero, int peak) {
        OptionalDouble area = Section.PULLED.areaOf(readings);
        OptionalDouble perWay = stretching.strainPerWay();
        if (area.isEmpty() || perWay.isEmpty()) {
            out.missing(
                    PullForm.MODULUS,
                    area.isEmpty() ? Section.PULLED.missing() : stretching.reason());
            return;
        }
        SlopeWindow window = window(curve, stretching, zero, peak);
        if (window.missing().isPresent()) {
            out.missing(PullForm.MODULUS, window.missing().get());
            return;
        }
        if (readings.atRest()) {
            window.coarseSteps("ISO 527-1, 5.1.5,").ifPresent(out::found);
        }
        double toStress = 1 / (area.getAsDouble() * perWay.getAsDouble());
        if (window.byChord()) {
            out.value(PullForm.MODULUS, window.chordSlope() * toStress);
            return;
        }
        Line line = window.line();
        out.put(
                PullForm.MODULUS,
                new Yield.Fitted(
                        line.slope() * toStress,
                        line.slopeUncertainty() * toStress,
                        line.degreesOfFreedom()));
    }

    private SlopeWindow window(LoadCurve curve, Stretching stretching, double zero, int peak) {
        return SlopeWindow.of(
                readings,
                curve,
                new SlopeWindow.Channels(PullForm.FORCE, stretching.needChannel()),
                zero,
                1 / stretching.strainPerWay().orElseThrow(),
                peak);
    }

    private OptionalInt searchYield(
            LoadCurve curve, Stretching stretching, double zero, int peak, int end, double noise) {
        if (readings.choice(PullForm.YIELD_BY).equals(PullForm.BY_DECREASE)) {
            double real = Math.max(REAL_IN_NOISE * noise, REAL_IN_FORCE * force.get(peak));
            return curve.firstMaximum(real, zero, end - ROWS_OF_A_FALL + 1);
        }
        OffsetLine line = offsetLine(curve, stretching, zero, peak);
        return line == null ? OptionalInt.empty() : line.firstBelow(end);
    }

    private @Nullable OffsetLine offsetLine(
            LoadCurve curve, Stretching stretching, double zero, int peak) {
        OptionalDouble perWay = stretching.strainPerWay();
        if (perWay.isEmpty()) {
            return null;
        }
        SlopeWindow window = window(curve, stretching, zero, peak);
        if (window.missing().isPresent()) {
            return null;
        }
        double offset = readings.setting(PullForm.YIELD_OFFSET) / 100 / perWay.getAsDouble();
        return new OffsetLine(curve, window.slope(), zero + offset, window.to());
    }

    private void yieldStrength(
            LoadCurve curve, Stretching stretching, double zero, OptionalInt yield) {
        boolean byOffset = readings.choice(PullForm.YIELD_BY).equals(PullForm.BY_OFFSET);
        OptionalDouble area = Section.PULLED.areaOf(readings);
        if (area.isEmpty()) {
            out.missing(PullForm.YIELD_STRENGTH, Section.PULLED.missing());
        } else if (yield.isEmpty()) {
            out.missing(
                    PullForm.YIELD_STRENGTH,
                    byOffset
                            ? "the curve never leaves the offset line, or has no modulus to draw it by"
                            : "no yield: the force never fell before it broke");
        } else {
            int row = yield.getAsInt();
            double at = force.get(row);
            if (byOffset) {
                OffsetLine line = offsetLine(curve, stretching, zero, force.size() - 1);
                at = line == null ? Double.NaN : line.forceAt(row);
            }
            if (Double.isFinite(at)) {
                at += readings.resolutionAt(PullForm.FORCE, "yield");
                out.value(PullForm.YIELD_STRENGTH, at / area.getAsDouble());
            } else {
                out.missing(PullForm.YIELD_STRENGTH, "there is no modulus to draw the line by");
            }
        }
    }

    /** Gives the work done on the specimen up to the break: W = ∫F ds, N·mm in J. */
    private void energy(Stretching stretching, int end, Bound bound) {
        Property energy = PullForm.ENERGY;
        int start = Toe.start(readings);
        OptionalDouble work = stretching.work(force, readings, start, end);
        if (work.isPresent()) {
            out.put(energy, bound.of(work.getAsDouble() / 1000));
        } else {
            out.missing(energy, "without a gauge length a strain has no length to do work over");
        }
    }
}
