package org.twinbar.benchmarks;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** A table of the calibration page, with what it promises and why cells are off their rate. */
enum Section {
    SHARE(
            "Share (Agresti–Caffo, held by Fisher's exact test)",
            2.5,
            "At the edge both groups have the share that is named; beyond, the treated have 45 points more (35"
                    + " where the control has 50 % and nothing is named as worth having).",
            "Counts move in steps, and the exact test holds the interval back: with few specimens \"supported\" is"
                    + " rarer than promised, and the interval holds the truth more often."),
    RATE(
            "Rate (hazard ratio, score inverted)",
            2.5,
            "Times to the event are exponential; tests end when 75 % of the control have had it. \"Slower\" is"
                    + " claimed; at the edge the ratio is 1 (or the 0.7 that a worth of 30 % asks for), beyond it"
                    + " is 0.15.",
            "The normal point of the score is an approximation that gets better with the number "
                    + "of events: with 9 to 30 of them \"supported\" is false in %s studies of 100, "
                    + "and a finding (`few-events`) says so. With looks only, the interval is the widest "
                    + "over the times between them, and hardly ever wrong.",
            new Seen(
                    kind -> kind.words().equals("moments seen") && kind.dot() >= 6,
                    Kind.Tally::supportedShare,
                    "%.1f")),
    RANK(
            "Rank (Brunner–Munzel, held by the exact test)",
            2.5,
            "At the edge a treated one is the higher in half of all cases, beyond in 95 of 100.",
            "Three in each can tell nothing. Up to ten the exact test holds the interval back; "
                    + "from there on it is what it says, with ties and with unequal scatter too."),
    LEVEL(
            "Level (the worse of the normal and the Weibull bound)",
            5,
            "Nine in ten of all parts clear the level at the edge, 99.9 % beyond. Each limit is one-sided at 95 %, so"
                    + " that 5 % is what is promised of each; \"coverage\" is that of both together, 90 %.",
            "The worse of two bounds is wrong less often than either. Where parts never fall "
                    + "below a threshold, both bounds look for weak parts that are not there: nothing is "
                    + "supported, and with 20 specimens the level was called missed in %s studies of 100, "
                    + "though nine in ten clear it; count the parts that clear it instead. Counted parts "
                    + "move in steps.",
            new Seen(
                    kind -> kind.words().startsWith("skewed") && kind.dot() == 20,
                    Kind.Tally::contradictedShare,
                    "%.0f")),
    BLOCKS(
            "Print runs that differ in the effect, units and mixes",
            2.5,
            "Differences of means, normal scatter of 8 % of the mean within a run and 10 % between runs; the effect"
                    + " itself differs from run to run by 5 %. Beyond, the effect is 30 % of the mean.",
            "Two runs cannot show how the effect differs from run to run, and the model for two "
                    + "has no such term: where it does differ, \"supported\" is false twice as often as "
                    + "promised, and a finding says so. From three on the term is there, and the rate is "
                    + "kept; with unequal numbers the interval of three runs is wider than it need be. "
                    + "Mixes that differ twice as much as their specimens scatter are seen with too many "
                    + "degrees of freedom (%s %%); two mixes raise the finding `two-blocks`.",
            new Seen(
                    kind -> kind.words().endsWith("mixes of 3 that differ by 16 %"),
                    Kind.Tally::supportedShare,
                    "%.1f"));

    private final String title;
    private final double promise;
    private final String worlds;
    private final String why;
    private final Seen[] seen;

    /**
     * A share that an explanation names, taken from the rows that it speaks of.
     *
     * @param format of one share, in per cent
     */
    private record Seen(Predicate<Kind> of, ToDoubleFunction<Kind.Tally> share, String format) {

        /** Returns {@code 3.0 to 3.5}, or one number where all rows have it. */
        String among(List<Kind.Tally> rows) {
            double[] shares = rows.stream()
                    .filter(row -> of.test(row.kind()))
                    .mapToDouble(row -> 100 * share.applyAsDouble(row))
                    .sorted()
                    .toArray();
            if (shares.length == 0) {
                throw new IllegalStateException("an explanation speaks of rows that are not there");
            }
            String least = String.format(Locale.ROOT, format, shares[0]);
            String most = String.format(Locale.ROOT, format, shares[shares.length - 1]);
            return least.equals(most) ? least : least + " to " + most;
        }
    }

    Section(String title, double promise, String worlds, String why, Seen... seen) {
        this.title = title;
        this.promise = promise;
        this.worlds = worlds;
        this.why = why;
        this.seen = seen;
    }

    String title() {
        return title;
    }

    /** Nominal share of false "supported", in per cent. */
    double promise() {
        return promise;
    }

    String worlds() {
        return worlds;
    }

    /** Returns why cells are off their rate, with the shares of these rows that it names. */
    String why(List<Kind.Tally> rows) {
        Object[] shares = new Object[seen.length];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = seen[i].among(rows);
        }
        return String.format(Locale.ROOT, why, shares);
    }
}
