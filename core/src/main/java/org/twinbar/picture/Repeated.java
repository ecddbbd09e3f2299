package org.twinbar.picture;

import java.util.List;
import org.twinbar.statistics.Summary;

/**
 * The same thing measured again and again on a picture, by the same eyes.
 *
 * <pre>u = s/√n, but no less than the uncertainty of one look where s < √3 · that</pre>
 *
 * <p>The step of a place does not average out where every look fell on the same one, so that a
 * scatter of zero is not believed: the rule is the one that all repeated readings have (METHODS
 * J.1). Where the scatter shows, it holds the steps already. Source: JCGM 100:2008, 4.2.3.
 *
 * @param n how often
 * @param mean of the looks
 * @param sd what the looks scatter, the operator's standard deviation; 0 for one look
 * @param standardUncertainty of the mean
 * @param degreesOfFreedom n − 1 where the scatter shows, else infinite
 */
public record Repeated(
        int n, double mean, double sd, double standardUncertainty, double degreesOfFreedom) {

    private static final double SHOWS = Math.sqrt(3);

    /** @throws IllegalArgumentException where there is no look */
    public static Repeated of(List<Sighted> looks) {
        if (looks.isEmpty()) {
            throw new IllegalArgumentException("nothing was measured on the picture");
        }
        int n = looks.size();
        double one =
                looks.stream().mapToDouble(Sighted::standardUncertainty).max().orElseThrow();
        Summary summary = Summary.of(looks.stream().mapToDouble(Sighted::value).toArray());
        if (n == 1) {
            return new Repeated(1, summary.mean(), 0, one, Double.POSITIVE_INFINITY);
        }
        double sd = summary.sd();
        double ofMean = sd / Math.sqrt(n);
        boolean shows = sd > 0 && (sd >= SHOWS * one || ofMean > one);
        return shows
                ? new Repeated(n, summary.mean(), sd, ofMean, n - 1.0)
                : new Repeated(n, summary.mean(), sd, one, Double.POSITIVE_INFINITY);
    }
}
