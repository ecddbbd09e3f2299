package org.twinbar.method.curve;

import org.twinbar.method.Trace;

/**
 * Sums over a run of rows of force and travel, as they were recorded.
 *
 * <p>In any world the channels are the recorded ones times a scale plus an offset, so that lines
 * and areas there follow from these sums alone.
 *
 * @param from first row
 * @param to last row, included
 * @param points rows that hold numbers
 * @param travel mean of the travel
 * @param force mean of the force
 * @param travelTravel sum of squares of travel about its mean
 * @param travelForce sum of products about the means
 * @param forceForce sum of squares of force about its mean
 * @param work ∫ F dd by the trapezoid rule; rows without numbers are bridged
 */
public record Window(
        int from,
        int to,
        int points,
        double travel,
        double force,
        double travelTravel,
        double travelForce,
        double forceForce,
        double work) {

    static Window of(Trace force, Trace travel, int from, int to) {
        Line.Sums sums = new Line.Sums();
        double work = 0;
        double lastForce = force.get(from);
        double lastTravel = travel.get(from);
        for (int row = from; row <= to; row++) {
            double nextForce = force.get(row);
            double nextTravel = travel.get(row);
            if (Double.isFinite(nextForce) && Double.isFinite(nextTravel)) {
                sums.add(nextTravel, nextForce);
                double step = (lastForce + nextForce) / 2 * (nextTravel - lastTravel);
                work += Double.isFinite(step) ? step : 0;
                lastForce = nextForce;
                lastTravel = nextTravel;
            }
        }
        return sums.window(from, to, work);
    }

    /** Returns the line of force on travel less what the machine gave, in one world. */
    Line in(Trace forceHere, Trace travelHere, double compliance) {
        double f = forceHere.scale();
        double d = travelHere.scale();
        double give = compliance * f;
        double xx = d * d * travelTravel - 2 * d * give * travelForce + give * give * forceForce;
        double xy = f * (d * travelForce - give * forceForce);
        double yy = f * f * forceForce;
        double meanForce = f * force + forceHere.offset();
        double meanWay = d * travel + travelHere.offset() - compliance * meanForce;
        return Line.of(points, meanWay, meanForce, xx, xy, yy);
    }
}
