package org.twinbar.study.judged;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Trend;
import org.twinbar.decision.Verdict;
import org.twinbar.method.Property;

/** What became of one question of a claim. */
public sealed interface Answer {

    /** Returns the question in a few words, such as {@code tensile strength, flat}. */
    String question();

    /** Returns its verdict; none where nothing was asked of readings yet. */
    default Optional<Verdict> verdict() {
        if (this instanceof Compared compared) {
            return Optional.of(compared.comparison().verdict());
        } else if (this instanceof Lined lined) {
            return Optional.of(lined.trend().verdict());
        }
        return this instanceof OffBench
                ? Optional.of(Verdict.NOT_FOR_THIS_BENCH)
                : Optional.empty();
    }

    /** Returns what was found, how sure, on what; else why there is no verdict. */
    default String sentence() {
        if (this instanceof Compared compared) {
            Comparison comparison = compared.comparison();
            return comparison.headline()
                    + comparison.material().map(it -> " " + it.words()).orElse("");
        } else if (this instanceof Lined lined) {
            return String.join(" ", lined.trend().reasons());
        } else if (this instanceof OffBench off) {
            return "No test on this bench can settle it. Who decides: %s"
                    .formatted(off.whoDecides());
        }
        return ((Unanswered) this).reason();
    }

    /**
     * A question that groups of specimens answered.
     *
     * @param method the test that gave the values
     * @param property what was compared
     * @param where factors that a specimen had to have to take part, such as {@code orientation =
     *     flat}
     */
    record Compared(
            String question,
            String method,
            Property property,
            Map<String, String> where,
            Comparison comparison)
            implements Answer {
        public Compared {
            where = Ordered.copy(where);
        }

        /** Returns whether a specimen was among those compared, left out or not. */
        public boolean about(JudgedSpecimen specimen) {
            boolean grouped = specimen.group().equals(comparison.treated().name())
                    || comparison
                            .control()
                            .filter(control -> control.name().equals(specimen.group()))
                            .isPresent();
            return grouped
                    && specimen.method().equals(method)
                    && specimen.factors().entrySet().containsAll(where.entrySet());
        }
    }

    /**
     * How a property goes with an amount.
     *
     * @param method the test that gave the values
     * @param property what was fitted
     * @param where factors that a specimen had to have to take part
     * @param control the untreated group, where there is one
     */
    record Lined(
            String question,
            String method,
            Property property,
            Map<String, String> where,
            Optional<String> control,
            Trend trend)
            implements Answer {
        public Lined {
            where = Ordered.copy(where);
        }
    }

    /**
     * A question that no test on a home bench can settle, such as contact with food or a certified
     * load: what would have to hold, what is known of it, and who decides.
     */
    record OffBench(String question, List<Condition> conditions, String whoDecides)
            implements Answer {
        public OffBench {
            if (whoDecides.isBlank()) {
                throw new IllegalArgumentException("'%s' must say who decides".formatted(question));
            }
            conditions = List.copyOf(conditions);
        }
    }

    /**
     * What would have to hold.
     *
     * @param evidence what is known of it here; may say that nothing is
     */
    record Condition(String text, String evidence) {}

    /** A question that has no verdict yet. */
    record Unanswered(String question, String reason) implements Answer {
        public Unanswered {
            if (reason.isBlank()) {
                throw new IllegalArgumentException(
                        "'%s' has no verdict and no reason".formatted(question));
            }
        }
    }
}
