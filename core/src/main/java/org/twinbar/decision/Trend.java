package org.twinbar.decision;

import java.util.List;
import org.twinbar.finding.Finding;

/**
 * How a property goes with an amount: film thickness, time in the oven; a straight line.
 *
 * @param question what is compared, and which way the claim points
 * @param amount what the amount is, with its unit
 * @param points every specimen that has a value and an amount, in the order of amounts
 * @param line what was fitted, where there is one
 * @param slope change of the property for one unit of the amount, with its interval
 * @param overAll change from the smallest to the largest amount, with its interval
 * @param verdict what the slope's interval says of a change in the claimed direction; no size is
 *     asked of a slope
 * @param reasons what was found and what it answers, in sentences
 * @param findings what limits it
 */
public record Trend(
        Question question,
        Subject amount,
        List<Point> points,
        List<Band> line,
        Found slope,
        Found overAll,
        Verdict verdict,
        List<String> reasons,
        List<Finding> findings) {

    /** One specimen. */
    public record Point(String specimen, String group, double amount, double value) {}

    /**
     * The line at one amount.
     *
     * @param middle the line's value
     * @param low lower end of the interval of the mean there
     * @param high its upper end
     */
    public record Band(double amount, double middle, double low, double high) {}

    public Trend {
        points = List.copyOf(points);
        line = List.copyOf(line);
        reasons = List.copyOf(reasons);
        findings = List.copyOf(findings);
    }
}
