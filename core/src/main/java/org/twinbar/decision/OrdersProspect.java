package org.twinbar.decision;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.twinbar.statistics.Lifetime;
import org.twinbar.statistics.Stratum;

/**
 * The chance of "supported" for a rate or for ranks before anything was measured.
 *
 * <p>Both verdicts read nothing but the order in which specimens come. Where the hazards of the two
 * groups are proportional, the next of so many treated and control is a treated one with the chance
 * θ·a/(θ·a + c), a and c being those that are left; so every order has its probability, whatever
 * the times or values are. For a rate θ is the hazard ratio and orders run from the first time; for
 * ranks it is p/(1 − p), p the chance that a treated specimen lies above one of the control, and
 * orders run from the highest value. Up to eight per group every order is listed and judged by the
 * real rule, which is exact; beyond, and where the test ends before it happened to all, studies are
 * simulated. Source: E. L. Lehmann, The power of rank tests (1953), doi:10.1214/aoms/1177729080.
 *
 * @param odds θ, above zero
 * @param seen share of the control to which it happens before the test ends; 1 where all are
 *     watched until then
 * @param orders that support the question
 */
record OrdersProspect(Question question, double odds, double seen, ListedOrders orders)
        implements Prospect {

    /** Of 8 and 8 there are 12 870 orders; of 9 and 9 nearly four times as many. */
    static final int LISTED = 8;

    /** A chance of 80 % is then known to 1.3 points of per cent. */
    static final int STUDIES = 1000;

    static ListedOrders orders(Question question) {
        return new ListedOrders(order -> supports(question, order));
    }

    @Override
    public String method() {
        String simulated = STUDIES + " simulated studies";
        return seen == 1
                ? "exact up to %s per group, every order listed; beyond, %s"
                        .formatted(LISTED, simulated)
                : simulated;
    }

    @Override
    public double supported(int n) {
        return seen == 1 && n <= LISTED
                ? orders.chance(n, odds)
                : simulated(n, RandomSource.XO_SHI_RO_256_PP.create(question.seed()));
    }

    private static boolean supports(Question question, boolean[] order) {
        double[] ours = new double[order.length / 2];
        double[] others = new double[order.length / 2];
        int treated = 0;
        for (int place = 0; place < order.length; place++) {
            if (order[place]) {
                ours[treated++] = place + 1.0;
            } else {
                others[place - treated] = place + 1.0;
            }
        }
        return supports(question, ours, others, Double.POSITIVE_INFINITY);
    }

    private double simulated(int n, UniformRandomProvider random) {
        double end = seen == 1 ? Double.POSITIVE_INFINITY : -StrictMath.log1p(-seen);
        int supported = 0;
        for (int study = 0; study < STUDIES; study++) {
            supported += supports(question, moments(odds, n, random), moments(1, n, random), end)
                    ? 1
                    : 0;
        }
        return (double) supported / STUDIES;
    }

    /** Moments of a constant hazard; only their order is read. */
    private static double[] moments(double hazard, int n, UniformRandomProvider random) {
        double[] moments = new double[n];
        for (int i = 0; i < n; i++) {
            moments[i] = -StrictMath.log1p(-random.nextDouble()) / hazard;
        }
        return moments;
    }

    /** Ranks count from the highest value, which came first here. */
    private static boolean supports(Question question, double[] ours, double[] others, double end) {
        return question.effect() == Effect.RATE
                ? RatesProspect.supports(
                        question, List.of(new Stratum(lives(ours, end), lives(others, end))))
                : RanksProspect.supports(question, turned(ours), turned(others));
    }

    private static List<Lifetime> lives(double[] moments, double end) {
        List<Lifetime> lives = new ArrayList<>(moments.length);
        for (double moment : moments) {
            lives.add(moment <= end ? Lifetime.event(moment) : Lifetime.censored(end));
        }
        return lives;
    }

    private static double[] turned(double[] moments) {
        double[] turned = new double[moments.length];
        for (int i = 0; i < moments.length; i++) {
            turned[i] = -moments[i];
        }
        return turned;
    }
}
