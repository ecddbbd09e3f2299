package org.twinbar.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Who was at risk, and to whom it happened, at each time at which it happened to anyone. */
final class RiskTable {

    /**
     * One time.
     *
     * @param atRisk treated specimens that were there just before
     * @param atRiskControl control specimens that were there just before
     * @param events treated specimens to which it happened
     * @param eventsControl control specimens to which it happened
     */
    record Row(double time, int atRisk, int atRiskControl, int events, int eventsControl) {
        int allAtRisk() {
            return atRisk + atRiskControl;
        }

        int allEvents() {
            return events + eventsControl;
        }
    }

    private RiskTable() {}

    /** One whose test ended at the time of an event was still at risk there. */
    static List<Row> of(List<Lifetime> treated, List<Lifetime> control) {
        requireMoments(treated);
        requireMoments(control);
        double[] times = eventTimes(treated, control);
        double[][] ours = watched(treated);
        double[][] others = watched(control);
        List<Row> rows = new ArrayList<>(times.length);
        for (double time : times) {
            rows.add(new Row(
                    time,
                    atRisk(ours[0], time),
                    atRisk(others[0], time),
                    events(ours[1], time),
                    events(others[1], time)));
        }
        return rows;
    }

    private static double[] eventTimes(List<Lifetime> treated, List<Lifetime> control) {
        double[] times = new double[treated.size() + control.size()];
        int events = 0;
        for (List<Lifetime> lives : List.of(treated, control)) {
            for (Lifetime life : lives) {
                if (!life.isCensored()) {
                    times[events++] = life.until();
                }
            }
        }
        Arrays.sort(times, 0, events);
        int distinct = 0;
        for (int i = 0; i < events; i++) {
            if (distinct == 0 || times[i] != times[distinct - 1]) {
                times[distinct++] = times[i];
            }
        }
        return Arrays.copyOf(times, distinct);
    }

    /** Until when each was there, and when it happened. */
    private static double[][] watched(List<Lifetime> lives) {
        double[][] watched = new double[2][lives.size()];
        for (int i = 0; i < lives.size(); i++) {
            watched[0][i] = lives.get(i).after();
            watched[1][i] = lives.get(i).until();
        }
        return watched;
    }

    private static void requireMoments(List<Lifetime> lives) {
        for (Lifetime life : lives) {
            if (life.isBetweenLooks()) {
                throw new IllegalArgumentException("A time that is only known to lie between "
                        + life.after() + " and " + life.until() + " can't be used as a moment.");
            }
        }
    }

    private static int atRisk(double[] after, double time) {
        int count = 0;
        for (double last : after) {
            count += last >= time ? 1 : 0;
        }
        return count;
    }

    private static int events(double[] until, double time) {
        int count = 0;
        for (double at : until) {
            count += at == time ? 1 : 0;
        }
        return count;
    }
}
