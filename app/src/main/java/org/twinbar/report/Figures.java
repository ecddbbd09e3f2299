package org.twinbar.report;

import java.util.Optional;
import org.twinbar.instrument.Allowed;
import org.twinbar.instrument.Calibration;

/**
 * Pictures as SVG text that stands inline in a page, in a file of its own, or in a PDF.
 *
 * <p>Colours are variables that {@link Theme#css()} declares; text is text in the page's own
 * typeface; each picture says in words what it shows.
 */
public final class Figures {

    private Figures() {}

    /** Returns specimens as points: a row for each group with its mean and 95 % interval. */
    public static String clusters(Clusters clusters) {
        return ClustersFigure.of(clusters);
    }

    /** Returns an effect with its interval against no change and what is worth having. */
    public static String effect(Effect effect) {
        return EffectFigure.of(effect);
    }

    /** Returns the small drawing that stands beside a verdict's word. */
    public static String mark(VerdictMark mark, String words) {
        return mark.svg(words);
    }

    /** Returns recorded curves laid over each other. */
    public static String curves(Curves curves) {
        return CurvesFigure.of(curves);
    }

    /** Returns specimens over an amount, with the straight line through them. */
    public static String line(Line line) {
        return LineFigure.of(line);
    }

    /** Returns what groups come to in several places, a line for each group. */
    public static String crossed(Crossed crossed) {
        return CrossedFigure.of(crossed);
    }

    /** Returns a point for each specimen that says yes or no. */
    public static String shares(Shares shares) {
        return SharesFigure.of(shares);
    }

    /** Returns step curves of the share to which something has not happened yet. */
    public static String survival(Survival survival) {
        return SurvivalFigure.of(survival);
    }

    /** Returns what so many specimens can tell. */
    public static String reach(Reach reach) {
        return ReachFigure.of(reach);
    }

    /** Returns shares of a whole as bars. */
    public static String parts(Parts parts) {
        return PartsFigure.of(parts);
    }

    /** Returns the readings of a calibration over their references, with the line. */
    public static String calibration(Calibration calibration, String unit) {
        return CalibrationFigure.line(calibration, unit);
    }

    /** Returns what lies between the readings of a calibration and its line. */
    public static String residuals(
            Calibration calibration, String unit, Optional<Allowed> allowed) {
        return CalibrationFigure.residuals(calibration, unit, allowed);
    }

    /** Returns a reference's values in their order against the limits of the bench. */
    public static String control(Control control) {
        return ControlFigure.of(control);
    }

    /** Returns one property against another, a point for each group. */
    public static String against(Against against) {
        return AgainstFigure.of(against);
    }

    /** Returns the style sheet that pictures need beside the theme. */
    public static String css() {
        return ".figure{display:block;width:100%;height:auto}.figure text{font-family:inherit}"
                + ".figure .tip{visibility:hidden;pointer-events:none}"
                + ".figure .point:hover .tip{visibility:visible}"
                + ".figure .curve:hover path{stroke-width:3}.mark{display:block;height:30px;width:132px}";
    }
}
