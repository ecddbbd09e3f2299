package org.twinbar.study.judged;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Placed;
import org.twinbar.planning.Series;

/**
 * How a study is to be made: what is dealt to which run, mix and place, and what was settled before
 * anything broke.
 *
 * <p>A code is drawn once for a study and stands for one specimen in it for good.
 *
 * @param allocation groups, kinds of specimens, and every specimen with its place
 * @param blinding whether groups are kept from whoever reads the instruments
 * @param leavingOut when a specimen may be left out
 * @param reasons why so many, by kind of specimen
 */
public record Plan(
        Allocation allocation,
        Blinding blinding,
        LeavingOut leavingOut,
        List<NumberReason> reasons) {

    /** Whether groups are kept from whoever reads the instruments. */
    public enum Blinding {
        /** Until the key is opened, which is an entry. */
        BLIND,
        OPEN;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * The rule for leaving a specimen out, fixed before there was a result.
     *
     * @param reasons that allow it, such as {@code broke in handling}; none where nothing does
     * @param sight the latest moment
     */
    public record LeavingOut(List<String> reasons, Sight sight) {

        /** The latest moment at which a specimen may be left out. */
        public enum Sight {
            BEFORE("before"),
            AFTER("after");

            private final String word;

            Sight(String word) {
                this.word = word;
            }

            public String word() {
                return word;
            }
        }

        /** What nobody who saw the value could misuse; common practice, no source. */
        public static final LeavingOut USUAL = new LeavingOut(
                List.of("broken in handling", "misprinted", "instrument failed"), Sight.BEFORE);

        public LeavingOut {
            reasons = List.copyOf(reasons);
            if (reasons.stream().anyMatch(String::isBlank)) {
                throw new InputException("a reason for leaving a specimen out needs its words");
            }
        }

        /** Returns the rule as a sentence. */
        public String sentence() {
            String when = sight == Sight.BEFORE ? "before its value is seen" : "at any time";
            return reasons.isEmpty()
                    ? "No specimen is left out."
                    : "A specimen is left out only %s, and only as one of: %s."
                            .formatted(when, String.join(", ", reasons));
        }

        /** Returns whether a reason that somebody gave is one that the rule names. */
        public boolean allows(String why) {
            String small = why.toLowerCase(Locale.ROOT);
            return reasons.stream()
                    .anyMatch(reason -> small.contains(reason.toLowerCase(Locale.ROOT)));
        }
    }

    /**
     * Why a kind of specimens is as many as it is.
     *
     * @param series its name
     * @param scatter as it was said, such as {@code 6%}
     * @param from where the scatter comes from, such as {@code common practice}
     * @param expected as it was said
     * @param worth as it was said; empty where any change will do
     * @param power chance of a verdict "supported", as a share
     */
    public record NumberReason(
            String series,
            String scatter,
            String from,
            String expected,
            Optional<String> worth,
            double power) {}

    public Plan {
        reasons = List.copyOf(reasons);
        for (NumberReason reason : reasons) {
            allocation.design().series(reason.series());
        }
    }

    public boolean blind() {
        return blinding == Blinding.BLIND;
    }

    /** Returns the same plan with other codes, places and orders. */
    public Plan dealtAnew() {
        return new Plan(
                Allocation.of(allocation.design(), allocation.seed() + 1),
                blinding,
                leavingOut,
                reasons);
    }

    /** Returns the specimen of this code. */
    public Optional<Placed> specimen(String code) {
        return allocation.specimens().stream()
                .filter(each -> each.code().equals(code))
                .findFirst();
    }

    public List<Series> series() {
        return allocation.design().series();
    }

    /**
     * Returns the text that a seal is taken of: what was dealt, the rule, and what every question
     * asks, worth included.
     *
     * @param claims of the study
     */
    public String canonicalText(List<Claim> claims) {
        StringBuilder text = new StringBuilder(allocation.canonicalText());
        text.append("blinding\t").append(blinding.word()).append('\n');
        text.append("leaving out\t").append(leavingOut.sight().word());
        leavingOut.reasons().forEach(reason -> text.append('\t').append(oneLine(reason)));
        text.append('\n');
        for (Claim claim : claims) {
            text.append("claim\t").append(oneLine(claim.words())).append('\n');
            for (Claim.Question question : claim.questions()) {
                text.append("question\t")
                        .append(oneLine(question.name()))
                        .append('\t')
                        .append(question.method())
                        .append('\t')
                        .append(question.asked().json())
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\t\\r\\n]+", " ");
    }
}
