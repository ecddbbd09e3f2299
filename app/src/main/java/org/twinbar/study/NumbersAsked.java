package org.twinbar.study;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.finding.Figures;
import org.twinbar.study.calculation.Asking;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.Ordered;

/**
 * What a person says who asks how many specimens to make, in their own words.
 *
 * @param said what was said; blank is nothing
 */
public record NumbersAsked(Map<Wish, String> said) {

    /** What may be said; all of it may be left away. */
    public enum Wish {
        /** The test, by its name. */
        METHOD,
        /** What is compared; the first thing that the test yields unless said. */
        PROPERTY,
        /**
         * {@code ratio}, {@code difference}, {@code share}, {@code rate}, {@code rank},
         * {@code level}.
         */
        EFFECT,
        /** Standard deviation of a specimen: {@code 6%} of the mean, or an amount. */
        SCATTER,
        /** {@code higher}, {@code lower} or {@code same}; by the sign of the change unless said. */
        EXPECT,
        /** True change with its sign: {@code 15%}, {@code -3 °C}; none where none is claimed. */
        EXPECTED,
        /** Smallest change worth having, or that would matter. */
        WORTH,
        /** Share of the control that says yes. */
        CONTROL_SHARE,
        /** Share of the control to which it happens before the test ends; all unless said. */
        SEEN,
        /** For a level: how far the mean lies past it; for a yes or no, the share that passes. */
        ABOVE,
        /** For a level: share of parts that must clear it; 90 % unless said. */
        OF,
        /** Chance of finding it; 80 % unless said. */
        POWER,
        /** Smallest step of the values, in the unit of the scatter. */
        RESOLUTION,
        /** A number per group that the table has in any case. */
        PER_GROUP,
        /** Groups; 2 unless said. */
        GROUPS,
        /** How many of them take resin; 1 unless said. */
        COATED,
        /** Filament of a specimen. */
        FILAMENT,
        /** Resin of a coated specimen. */
        RESIN,
        /** Printing time of a specimen. */
        PRINT_TIME,
        /** Working time of a specimen. */
        HAND_TIME,
        /** Price of a kilogram of filament, in any money. */
        FILAMENT_PRICE,
        /** Price of a kilogram of resin, in the same money. */
        RESIN_PRICE;

        /** Returns the field of a form, and the option of the command line. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public NumbersAsked {
        Map<Wish, String> kept = new EnumMap<>(Wish.class);
        said.forEach((wish, text) -> {
            if (!text.isBlank()) {
                kept.put(wish, text.strip());
            }
        });
        said = Ordered.copy(kept);
    }

    public static NumbersAsked nothing() {
        return new NumbersAsked(Map.of());
    }

    /**
     * Returns what a question of a claim says already: the claimed size as what is expected, its
     * direction, and the size worth having.
     */
    public static NumbersAsked of(Claim.Question question) {
        Asked asked = question.asked();
        NumbersAsked wanted = nothing()
                .with(Wish.METHOD, question.method())
                .with(Wish.PROPERTY, asked.property());
        String expect = asked.said(Term.EXPECT).orElse(HIGHER);
        wanted = wanted.with(
                Wish.EXPECT,
                expect.equals(Asking.SLOWER)
                        ? LOWER
                        : expect.equals(Asking.FASTER) ? HIGHER : expect);
        for (Map.Entry<Term, Wish> each : ALIKE.entrySet()) {
            Optional<String> text = asked.said(each.getKey());
            if (text.isPresent()) {
                wanted = wanted.with(each.getValue(), text.get());
            }
        }
        boolean level = asked.said(Term.AT).isPresent() || asked.said(Term.OF).isPresent();
        return level ? wanted.with(Wish.EFFECT, "level") : wanted;
    }

    static final String HIGHER = "higher";
    static final String LOWER = "lower";
    static final String SAME = "same";

    private static final Map<Term, Wish> ALIKE = Map.of(
            Term.CLAIMED, Wish.EXPECTED,
            Term.WORTH, Wish.WORTH,
            Term.EFFECT, Wish.EFFECT,
            Term.OF, Wish.OF,
            Term.RESOLUTION, Wish.RESOLUTION);

    public Optional<String> said(Wish wish) {
        return Optional.ofNullable(said.get(wish));
    }

    /** Returns the same with all that another says. */
    NumbersAsked and(NumbersAsked more) {
        NumbersAsked both = this;
        for (Map.Entry<Wish, String> each : more.said.entrySet()) {
            both = both.with(each.getKey(), each.getValue());
        }
        return both;
    }

    /** What a table of numbers shows of an aim, which stays the same aim. */
    private static final Set<Wish> OF_THE_TABLE =
            EnumSet.of(Wish.POWER, Wish.PER_GROUP, Wish.GROUPS, Wish.COATED);

    private static final Set<Wish> OF_THE_COST = EnumSet.of(
            Wish.FILAMENT,
            Wish.RESIN,
            Wish.PRINT_TIME,
            Wish.HAND_TIME,
            Wish.FILAMENT_PRICE,
            Wish.RESIN_PRICE);

    /** Returns what tells one aim from another. */
    NumbersAsked ofTheAim() {
        Map<Wish, String> kept = new EnumMap<>(Wish.class);
        kept.putAll(said);
        kept.keySet().removeAll(OF_THE_TABLE);
        kept.keySet().removeAll(OF_THE_COST);
        return new NumbersAsked(kept);
    }

    /** Returns whether it says what is expected, so that a chance can be reckoned. */
    boolean tellsTheAim() {
        boolean same = said.getOrDefault(Wish.EXPECT, SAME).equals(SAME);
        return said.containsKey(Wish.EXPECTED)
                || same && said.containsKey(Wish.WORTH)
                || said.containsKey(Wish.ABOVE)
                || said.containsKey(Wish.OF);
    }

    /** Returns the scatter as it was said, else as it was found. */
    String scatterSaid(NumbersTold told, double found) {
        return said(Wish.SCATTER)
                .orElseGet(() -> told.sizes() == NumbersTold.Sizes.RELATIVE
                        ? plain(100 * found) + "%"
                        : (plain(found) + " " + told.unit()).strip());
    }

    private static String plain(double value) {
        return new BigDecimal(Figures.two(value)).stripTrailingZeros().toPlainString();
    }

    /** Returns what is expected, in words; empty where no change is. */
    String expectation() {
        return said(Wish.EXPECTED)
                .or(() -> said(Wish.ABOVE).map("past the level by "::concat))
                .orElse(said(Wish.EFFECT).filter("level"::equals).isPresent() ? "all pass" : "");
    }

    /** Returns the same where something else is said; blank takes it back. */
    public NumbersAsked with(Wish wish, String text) {
        Map<Wish, String> more = new EnumMap<>(Wish.class);
        more.putAll(said);
        more.put(wish, text);
        return new NumbersAsked(more);
    }
}
