package org.twinbar.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

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
        double[] times = Stream.concat(treated.stream(), control.stream())
                .filter(life -> !life.isCensored())
                .mapToDouble(Lifetime::until)
                .distinct()
                .sorted()
                .toArray();
        List<Row> rows = new ArrayList<>();
        for (double time : times) {
            rows.add(new Row(
                    time,
                    atRisk(treated, time),
                    atRisk(control, time),
                    events(treated, time),
                    events(control, time)));
        }
        return rows;
    }

    private static void requireMoments(List<Lifetime> lives) {
        for (Lifetime life : lives) {
            if (life.isBetweenLooks()) {
                throw new IllegalArgumentException("A time that is only known to lie between "
                        + life.after() + " and " + life.until() + " can't be used as a moment.");
            }
        }
    }

    private static int atRisk(List<Lifetime> lives, double time) {
        return (int) lives.stream().filter(life -> life.after() >= time).count();
    }

    private static int events(List<Lifetime> lives, double time) {
        return (int) lives.stream().filter(life -> life.until() == time).count();
    }
}
