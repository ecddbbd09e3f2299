package org.twinbar.decision;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleUnaryOperator;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Numbers;
import org.twinbar.planning.PlanException;
import org.twinbar.planning.Threshold;

/**
 * What a study of counted, timed or ranked outcomes is to show, its chance by the rule that will
 * judge it.
 */
public final class Aims {

    private Aims() {}

    /**
     * A difference of two shares of "yes": exact, every outcome listed.
     *
     * @param question of the effect {@link Effect#SHARE}
     * @param control true share of the control, from 0 to 1
     * @param difference of the treated's true share, with its sign; 0 for a claim of no change
     * @throws PlanException unless both shares lie from 0 to 1, and the difference beyond what is
     *     worth having
     */
    public static Aim shares(Question question, double control, double difference) {
        double treated = control + difference;
        requireWithin(control, "share of the control");
        requireWithin(treated, "share of the treated, %s and %s,".formatted(control, difference));
        requireBeyondWorth(question, difference);
        double room = switch (question.expectation()) {
            case HIGHER -> 1 - control;
            case LOWER -> control;
            case SAME -> 1;
        };
        return new OfProspect(
                question,
                difference,
                (asked, truth) -> SharesProspect.of(asked, control, truth),
                new Reached(SharesProspect.EVERY_ONE, room, 1e-6));
    }

    /**
     * A ratio of hazards, proportional at every time.
     *
     * @param question of the effect {@link Effect#RATE}
     * @param ratio true hazard ratio; 1 for a claim of no change
     * @param seen share of the control to which it happens before the test ends
     * @throws PlanException unless the ratio lies above 0 and beyond what is worth having, and 0 <
     *     seen ≤ 1
     */
    public static Aim rate(Question question, double ratio, double seen) {
        if (!(ratio > 0 && ratio < Double.POSITIVE_INFINITY)) {
            throw new PlanException("The expected ratio of rates must lie above 0, not at %s."
                    .formatted(Written.exact(ratio)));
        }
        if (!(seen > 0 && seen <= 1)) {
            throw new PlanException(
                    "The share of the control to which it happens must lie above 0 and up to 100 %%, not at %s %%."
                            .formatted(Written.exact(100 * seen)));
        }
        requireBeyondWorth(question, ratio);
        return new OfProspect(
                question,
                ratio,
                orders(question, truth -> truth, seen),
                new Reached(OrdersProspect.LISTED, 0.999, 0.004));
    }

    /**
     * The chance that a treated specimen lies above one of the control.
     *
     * @param question of the effect {@link Effect#RANK}
     * @param chance that is true; a half for a claim of no change
     * @throws PlanException unless 0 < chance < 1, beyond what is worth having
     */
    public static Aim rank(Question question, double chance) {
        if (!(chance > 0 && chance < 1)) {
            throw new PlanException(
                    "The chance that a treated specimen lies above one of the control must lie between 0 and 100 %%, not at %s %%."
                            .formatted(Written.exact(100 * chance)));
        }
        requireBeyondWorth(question, chance);
        return new OfProspect(
                question,
                chance,
                orders(question, truth -> truth / (1 - truth), 1),
                new Reached(OrdersProspect.LISTED, 0.4999, 0.002));
    }

    /** Orders are judged once for each question, however many chances are asked of it. */
    private static Prospects orders(Question question, DoubleUnaryOperator odds, double seen) {
        ListedOrders listed = OrdersProspect.orders(question);
        return (asked, truth) -> new OrdersProspect(
                asked,
                odds.applyAsDouble(truth),
                seen,
                asked.equals(question) ? listed : OrdersProspect.orders(asked));
    }

    private static void requireWithin(double share, String what) {
        if (!(share >= 0 && share <= 1)) {
            throw new PlanException(
                    "The %s must lie from 0 to 1, not at %s.".formatted(what, share));
        }
    }

    private static void requireBeyondWorth(Question question, double truth) {
        boolean beyond = switch (question.expectation()) {
            case HIGHER -> truth > question.worth();
            case LOWER -> truth < question.worth();
            case SAME -> true;
        };
        if (!beyond) {
            throw new PlanException(
                    "The expected change must be larger than the one worth having, or no number of specimens shows it.");
        }
    }

    /** The chance of "supported" if the effect were a certain one. */
    private interface Prospects {
        Prospect of(Question question, double truth);
    }

    /**
     * How far numbers and sizes are tried.
     *
     * @param everyOne numbers up to this are tried one by one
     * @param most largest size
     * @param near distance to which a size is wanted
     */
    private record Reached(int everyOne, double most, double near) {}

    private record OfProspect(Question question, double truth, Prospects prospects, Reached reached)
            implements Aim {

        @Override
        public double power(int perGroup) {
            return prospects.of(question, truth).supported(perGroup);
        }

        @Override
        public String method() {
            return prospects.of(question, truth).method();
        }

        @Override
        public int groups() {
            return 2;
        }

        /** Beyond the numbers that are tried one by one the chance is taken to grow. */
        @Override
        public OptionalInt fewest(double power) {
            for (int number = Numbers.FEWEST; number <= reached.everyOne(); number++) {
                if (power(number) >= power) {
                    return OptionalInt.of(number);
                }
            }
            int few = reached.everyOne();
            int enough = few;
            while (power(enough) < power) {
                if (enough == Numbers.MOST) {
                    return OptionalInt.empty();
                }
                few = enough;
                enough = Math.min(Numbers.MOST, 2 * enough);
            }
            while (enough - few > 1) {
                int middle = few + (enough - few) / 2;
                if (power(middle) < power) {
                    few = middle;
                } else {
                    enough = middle;
                }
            }
            return OptionalInt.of(enough);
        }

        @Override
        public OptionalDouble smallest(int perGroup) {
            if (question.expectation() == Expectation.SAME) {
                return threshold(
                        0,
                        size -> prospects
                                .of(question.withWorth(size), question.none())
                                .supported(perGroup));
            }
            double worth = Math.abs(question.worth() - question.none());
            OptionalDouble size = threshold(
                    question.effect() == Effect.RATE ? rateSize(question.worth()) : worth,
                    it -> prospects.of(question, effect(it)).supported(perGroup));
            return size.isPresent()
                    ? OptionalDouble.of(effect(size.getAsDouble()))
                    : OptionalDouble.empty();
        }

        private OptionalDouble threshold(double from, DoubleUnaryOperator chance) {
            return Threshold.of(chance, new Threshold.Range(from, reached.most(), reached.near()));
        }

        /** A rate that is so many times higher is looked for as one that is as many times lower. */
        private double effect(double size) {
            return question.effect() == Effect.RATE && question.expectation() == Expectation.HIGHER
                    ? 1 / (1 - size)
                    : question.effect().of(size, question.expectation());
        }

        private double rateSize(double ratio) {
            return 1 - (question.expectation() == Expectation.HIGHER ? 1 / ratio : ratio);
        }
    }
}
