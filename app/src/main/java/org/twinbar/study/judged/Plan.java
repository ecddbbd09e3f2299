package org.twinbar.study.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.exchange.InputException;
import org.twinbar.planning.Allocation;
import org.twinbar.planning.Canonical;
import org.twinbar.planning.Placed;
import org.twinbar.planning.Series;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Waiting;

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
     * @param scatter as it was said, such as {@code 6%}; empty where parts are counted or put in
     *     order
     * @param from where the scatter comes from, such as {@code common practice}; without a scatter
     *     what is taken for true instead
     * @param expected as it was said; empty where no change is expected
     * @param worth as it was said; empty where any change will do
     * @param power chance of a verdict "supported", as a share
     */
    public record NumberReason(
            String series,
            String scatter,
            String from,
            String expected,
            Optional<String> worth,
            double power) {

        /** Returns the same with the origin of its scatter in somebody's own words. */
        public NumberReason from(String words) {
            return new NumberReason(series, scatter, words, expected, worth, power);
        }

        /** Returns what the chance was reckoned with. */
        public String words() {
            String taken = scatter.isEmpty() ? from : "scatter %s (%s)".formatted(scatter, from);
            String change = expected.isEmpty() ? "no change expected" : expected + " expected";
            return Stream.of(taken, change, worth.map("worth "::concat).orElse(""))
                    .filter(it -> !it.isBlank())
                    .collect(Collectors.joining(", "));
        }
    }

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

    /** Returns the specimen of this code, of those that are compared. */
    public Optional<Placed> specimen(String code) {
        return of(code, allocation.specimens());
    }

    /** Returns the pilot of this code. */
    public Optional<Placed> pilot(String code) {
        return of(code, allocation.pilots());
    }

    private static Optional<Placed> of(String code, List<Placed> specimens) {
        return specimens.stream().filter(each -> each.code().equals(code)).findFirst();
    }

    public List<Series> series() {
        return allocation.design().series();
    }

    /**
     * Returns the text that a seal is taken of: what was dealt, the rule, why so many, what every
     * question asks, worth included, how each group is treated and how long it waits.
     *
     * @param claims of the study
     * @param procedures how groups are treated, as far as that is settled, by their names
     */
    public String canonicalText(
            List<Claim> claims, Map<String, Procedure> procedures, Waiting waiting) {
        StringBuilder text = new StringBuilder(allocation.canonicalText());
        Canonical.line(text, "blinding", blinding.word());
        List<Object> rule =
                new ArrayList<>(List.of("leaving out", leavingOut.sight().word()));
        rule.addAll(leavingOut.reasons());
        Canonical.line(text, rule.toArray());
        reasons.forEach(it -> Canonical.line(text, "number", it.series(), it.words(), it.power()));
        for (Claim claim : claims) {
            Canonical.line(text, "claim", claim.words());
            for (Claim.Question question : claim.questions()) {
                Canonical.line(
                        text,
                        "question",
                        question.name(),
                        question.method(),
                        question.asked().json());
            }
        }
        procedures.forEach((group, procedure) -> {
            Canonical.line(text, "treatment", group, procedure.sort().word());
            procedure
                    .steps()
                    .forEach(step -> Canonical.line(
                            text,
                            "step",
                            group,
                            step.what(),
                            number(step.minutes(), "min"),
                            number(step.mostMinutes(), "min"),
                            number(step.celsius(), "°C")));
        });
        Canonical.line(text, "cure", waiting.cure());
        Canonical.line(text, "condition", waiting.condition());
        return text.toString();
    }

    private static String number(OptionalDouble number, String unit) {
        return number.isPresent() ? Exact.of(number.getAsDouble()) + " " + unit : "-";
    }
}
