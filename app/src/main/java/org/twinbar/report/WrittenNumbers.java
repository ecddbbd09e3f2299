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
                .map(it -> "scatter %s, %s".formatted(size(told, it.value()), it.words()));
    }

    /** Returns a scatter or a change as people read it: a share, or an amount with its unit. */
    public static String size(NumbersTold told, double value) {
        return told.sizes() == Sizes.RELATIVE ? Written.percent(value) : amount(told, value);
    }

    /**
     * Returns how large a smallest effect is on a picture: per cent of a change or a share, times
     * of a rate, else as it is.
     */
    public static double onPicture(NumbersTold told, double smallest) {
        if (told.expectation() == Expectation.SAME || told.effect() == Effect.LEVEL) {
            boolean shares = told.sizes() == Sizes.RELATIVE || told.scatter().isEmpty();
            return shares ? 100 * smallest : smallest;
        }
        return switch (told.effect()) {
            case RATIO -> Math.abs(100 * (smallest - 1));
            case SHARE -> Math.abs(100 * smallest);
            case DIFFERENCE, LEVEL -> Math.abs(smallest);
            case RATE, RANK -> smallest;
        };
    }

    /** Returns the unit of {@link #onPicture}; empty where there is none. */
    public static String unitOnPicture(NumbersTold told) {
        boolean shares = told.sizes() == Sizes.RELATIVE || told.scatter().isEmpty();
        return switch (told.effect()) {
            case RATIO -> "%";
            case SHARE -> told.expectation() == Expectation.SAME ? "%" : "points";
            case DIFFERENCE -> told.unit();
            case LEVEL -> shares ? "%" : told.unit();
            case RATE -> told.expectation() == Expectation.SAME ? "%" : "times";
            case RANK -> "";
        };
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
