package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Expectation;
import org.twinbar.decision.Found;
import org.twinbar.decision.Question;

/**
 * The scale on which people read an effect: a ratio as per cent more or less, a difference in its
 * unit, a chance in per cent.
 */
final class Shown {

    private final Question question;
    private final Effect effect;
    private final boolean countedLevel;

    Shown(Comparison comparison) {
        this.question = comparison.question();
        this.effect = question.effect();
        // Where parts were counted, the scale is the share of them, not the level itself.
        this.countedLevel =
                effect == Effect.LEVEL && comparison.treated().tally().isPresent();
    }

    /** Returns where an effect lies on the scale; infinite stays infinite. */
    double at(double value) {
        return switch (effect) {
            case RATIO, RATE -> 100 * (value - 1);
            case SHARE, RANK -> 100 * value;
            case DIFFERENCE -> value;
            case LEVEL -> countedLevel ? 100 * value : value;
        };
    }

    String unit() {
        return switch (effect) {
            case RATIO, RATE, RANK -> "%";
            case SHARE -> "points";
            case DIFFERENCE -> property();
            case LEVEL -> countedLevel ? "%" : property();
        };
    }

    private String property() {
        return question.subject().unit().symbol();
    }

    /** Returns the unit behind each number of an axis; points are told once, by its label. */
    String axisUnit() {
        return effect == Effect.SHARE ? "" : unit();
    }

    boolean signed() {
        return effect != Effect.RANK && effect != Effect.LEVEL;
    }

    /** Returns what the scale shows. */
    String label() {
        String subject = question.subject().label().toLowerCase(Locale.ROOT);
        return switch (effect) {
            case RATIO, DIFFERENCE -> "Change of " + subject;
            case SHARE -> "Change of the share in points of per cent";
            case RATE -> "Change of how fast it happens";
            case RANK -> "Chance to lie above the control";
            case LEVEL -> countedLevel ? "Share of parts that clear it" : Answers.capital(subject);
        };
    }

    /** Returns what the interval is held against first: no change, or the level. */
    double noneValue() {
        return countedLevel ? question.level().orElseThrow().share() : question.none();
    }

    org.twinbar.report.Effect.Level none() {
        String words = effect == Effect.LEVEL ? levelWords() : "no change";
        return new org.twinbar.report.Effect.Level(at(noneValue()), words);
    }

    private String levelWords() {
        String share = Written.percent(question.level().orElseThrow().share());
        return countedLevel ? "asked " + share : "level " + one(noneValue()) + " for " + share;
    }

    /** Returns the smallest change worth having, on both sides where no change was claimed. */
    List<org.twinbar.report.Effect.Level> worth() {
        List<Double> values = worthValues();
        List<org.twinbar.report.Effect.Level> levels = new ArrayList<>();
        for (double value : values) {
            String before = question.expectation() == Expectation.SAME ? "within " : "worth ";
            levels.add(new org.twinbar.report.Effect.Level(at(value), before + one(value)));
        }
        return levels;
    }

    /** Returns the same on the effect's own scale; nothing where no size was asked for. */
    List<Double> worthValues() {
        if (question.worthSize().isEmpty() && question.claimedSize().isEmpty()) {
            return List.of();
        }
        return question.expectation() == Expectation.SAME
                ? List.of(2 * question.none() - question.worth(), question.worth())
                : List.of(question.worth());
    }

    Optional<org.twinbar.report.Effect.Level> claimed() {
        return question.claimed().isPresent()
                ? Optional.of(new org.twinbar.report.Effect.Level(
                        at(question.claimed().getAsDouble()),
                        "claimed " + one(question.claimed().getAsDouble())))
                : Optional.empty();
    }

    /** Returns one value of the effect with sign and unit, such as {@code +13 %}. */
    String one(double value) {
        double shown = at(value);
        return sign(shown, number(shown)) + Written.behind(unit());
    }

    /** Returns {@code +13 % (8 to 18 %)}, or the estimate and why it has no interval. */
    String found(Found found) {
        return found(found.estimate(), found.low(), found.high());
    }

    String found(Amount estimate, Amount low, Amount high) {
        if (!(estimate instanceof Amount.Known known)) {
            return reason(estimate);
        }
        if (!low.isKnown() && !high.isKnown()) {
            return one(known.value()) + ", no interval: " + reason(low);
        }
        double half = half(low, high);
        double shown = at(known.value());
        return sign(shown, number(shown, half))
                + Written.behind(unit())
                + " ("
                + range(low, high)
                + ")";
    }

    /** Returns {@code 8 to 18 %}, with signs where it lies on both sides of no change. */
    String range(Amount low, Amount high) {
        if (!low.isKnown() || !high.isKnown()) {
            return low.isKnown()
                    ? "at least " + one(low.orElse(0))
                    : high.isKnown() ? "at most " + one(high.orElse(0)) : reason(low);
        }
        double from = at(low.orElse(0));
        double to = at(high.orElse(0));
        double half = half(low, high);
        String written = number(to, half);
        boolean bothSides = signed() && from < 0 && to > 0;
        return number(from, half)
                + " to "
                + (bothSides ? sign(to, written) : written)
                + Written.behind(unit());
    }

    private double half(Amount low, Amount high) {
        return low.isKnown() && high.isKnown()
                ? Math.abs(at(high.orElse(0)) - at(low.orElse(0))) / 2
                : 0;
    }

    private String sign(double shown, String written) {
        return signed() ? Written.withSign(shown, written) : written;
    }

    private String number(double shown) {
        return percent() ? Written.change(shown) : Written.number(shown, 3);
    }

    /** Per cent to whole ones where the half-width is three or more, as sentences write it. */
    private String number(double shown, double half) {
        if (percent()) {
            return Written.fixed(shown, half >= 3 || half == 0 ? 0 : half >= 0.3 ? 1 : 2);
        }
        return Written.rounded(shown, half);
    }

    private boolean percent() {
        return effect != Effect.DIFFERENCE && (effect != Effect.LEVEL || countedLevel);
    }

    private static String reason(Amount amount) {
        return amount instanceof Amount.None none ? none.reason() : "";
    }
}
