package org.twinbar.decision;

/**
 * Effects as people read them: ratios as per cent more or less, shares as points of per cent,
 * differences in their unit.
 *
 * @param none no change
 * @param scale what one on the effect's scale is on the scale that is read
 * @param unit behind a number, with its thin space
 * @param more word for a change upwards
 * @param less word for a change downwards
 * @param decimals of every number in the sentence
 */
record ScaleWords(double none, double scale, String unit, String more, String less, int decimals) {

    private static final int MOST_EXTRA_DECIMALS = 2;

    static ScaleWords of(Question question, Found found) {
        boolean percent = question.effect().sizedInPercent();
        double scale = percent ? 100 : 1;
        String unit = percent
                ? Written.THIN + (question.effect() == Effect.SHARE ? "points" : "%")
                : differenceUnit(question);
        double half = scale * half(found);
        int decimals = percent ? Written.decimalsOfPercent(half) : Written.decimalsOf(half);
        boolean slower = question.effect() == Effect.RATE;
        ScaleWords words = new ScaleWords(
                question.none(),
                scale,
                unit,
                slower ? "faster" : "higher",
                slower ? "slower" : "lower",
                decimals);
        return words.tellingApart(question, found);
    }

    /**
     * Returns the words of how far two effects lie apart: ratios and rates by their ratio, all else
     * by their difference.
     */
    static ScaleWords ofContrast(Question question, Found contrast) {
        boolean relative = question.effect() == Effect.RATIO || question.effect() == Effect.RATE;
        boolean percent = question.effect().sizedInPercent();
        double scale = percent ? 100 : 1;
        double half = scale * half(contrast);
        return new ScaleWords(
                relative ? 1 : 0,
                scale,
                relative
                        ? Written.THIN + "%"
                        : percent ? Written.THIN + "points" : differenceUnit(question),
                "higher",
                "lower",
                percent ? Written.decimalsOfPercent(half) : Written.decimalsOf(half));
    }

    /** Returns the words of a difference in a unit of its own. */
    static ScaleWords ofDifference(Found found, String unit) {
        return new ScaleWords(0, 1, unit, "higher", "lower", Written.decimalsOf(half(found)));
    }

    /** Returns {@code −0.5 to +1.2 MPa}, with signs throughout. */
    String ends(Found found) {
        return signed(found.lowest() - none) + " to " + signed(found.highest() - none) + unit;
    }

    /** Returns {@code 18 %}, whichever of two is the larger. */
    String apart(double effect) {
        return number(Math.abs(effect - none)) + unit;
    }

    /** Returns {@code 18 % higher}. */
    String change(double effect) {
        return number(Math.abs(effect - none)) + unit + " " + (effect < none ? less : more);
    }

    /** Returns {@code 11 to 26 %}, {@code 5 to 19 % lower} or {@code −4 to +12 %}. */
    String interval(Found found) {
        if (!found.low().isKnown() && !found.high().isKnown()) {
            return "without ends";
        }
        double low = found.lowest() - none;
        double high = found.highest() - none;
        if (!found.high().isKnown()) {
            return "from " + signed(low) + unit + " upwards";
        }
        if (!found.low().isKnown()) {
            return "up to " + signed(high) + unit;
        }
        if (low >= 0) {
            return number(low) + " to " + number(high) + unit;
        }
        if (high <= 0) {
            return number(-high) + " to " + number(-low) + unit + " " + less;
        }
        return signed(low) + " to " + signed(high) + unit;
    }

    /** Returns a size that somebody typed, with its unit. */
    String size(double size) {
        return Written.exact(size * scale) + unit;
    }

    private String number(double size) {
        return Written.fixed(size * scale, decimals);
    }

    String signed(double change) {
        String number = number(change);
        return change > 0 ? "+" + number : number;
    }

    /**
     * Gives further decimals where rounding would put an end of the interval on the line that it
     * keeps clear of, so that a sentence never reads as if another row of the rule fitted.
     */
    private ScaleWords tellingApart(Question question, Found found) {
        ScaleWords words = this;
        for (int extra = 0; extra < MOST_EXTRA_DECIMALS; extra++) {
            if (words.apart(found.lowest(), question) && words.apart(found.highest(), question)) {
                break;
            }
            words = new ScaleWords(none, scale, unit, more, less, words.decimals + 1);
        }
        return words;
    }

    private boolean apart(double end, Question question) {
        if (!Double.isFinite(end)) {
            return true;
        }
        for (double line : new double[] {question.none(), question.worth()}) {
            boolean looksEqual = number(end - none).equals(number(line - none));
            if (looksEqual && end != line && line != none) {
                return false;
            }
        }
        return true;
    }

    private static double half(Found found) {
        double width = found.highest() - found.lowest();
        return Double.isFinite(width) && width > 0
                ? width / 2
                : Math.abs(found.estimate().orElse(1)) / 10;
    }

    /** A difference of temperatures in °C is one in K; the trade writes both. */
    private static String differenceUnit(Question question) {
        return Written.unit(question.subject().unit());
    }
}
