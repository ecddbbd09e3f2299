package org.twinbar.report;

import java.util.Optional;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.planning.Numbers;
import org.twinbar.study.NumbersTold;
import org.twinbar.study.NumbersTold.Sizes;

/** The table of numbers of specimens as people read it, on a terminal and on a page. */
public final class WrittenNumbers {

    private static final String NONE = "–";

    private WrittenNumbers() {}

    /** Returns the scatter and where it comes from, where one was reckoned with. */
    public static Optional<String> scatter(NumbersTold told) {
        return told.scatter()
                .map(it -> "scatter %s, %s"
                        .formatted(
                                told.sizes() == Sizes.RELATIVE
                                        ? Written.percent(it.value())
                                        : amount(told, it.value()),
                                it.words()));
    }

    /**
     * Returns the smallest effect that a number of specimens finds with 80 %: {@code +13 %}; for a
     * claim of no change {@code ±9 %}, for a level the smallest margin, for parts that must all
     * pass the true share that does; a dash where there is none.
     */
    public static String smallest(NumbersTold told, Numbers.Row row) {
        if (row.smallest().isEmpty()) {
            return NONE;
        }
        double size = row.smallest().getAsDouble();
        boolean shares = told.sizes() == Sizes.RELATIVE || told.scatter().isEmpty();
        if (told.expectation() == Expectation.SAME) {
            return "±" + (shares ? Written.percent(size) : amount(told, size));
        }
        if (told.effect() == Effect.LEVEL) {
            return shares ? Written.percent(size) : amount(told, size);
        }
        return told.effect() == Effect.DIFFERENCE
                ? amount(told, size)
                : Written.effect(told.effect(), told.unit(), size);
    }

    private static String amount(NumbersTold told, double value) {
        return Written.number(value, 3) + Written.behind(told.unit());
    }

    /** Returns what the smallest effect is called over its column. */
    public static String smallestHeader(NumbersTold told) {
        if (told.expectation() == Expectation.SAME) {
            return "shows within";
        }
        return told.effect() == Effect.LEVEL
                ? told.scatter().isPresent() ? "margin from" : "shares from"
                : "finds from";
    }
}
