package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.twinbar.decision.Alike;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Crossing;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Several;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Trend;
import org.twinbar.decision.Trending;
import org.twinbar.exchange.Table;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Ordered;

/** Comparisons of groups from a table of results, without a store. */
public final class Comparisons {

    private Comparisons() {}

    /**
     * What became of a question.
     *
     * @param comparisons in the order in which the table names groups and values
     * @param lines over amounts, where they were asked for
     * @param seed of everything that was drawn at random
     */
    public record Outcome(List<Parted> comparisons, List<Lined> lines, long seed) {
        public Outcome {
            comparisons = List.copyOf(comparisons);
            lines = List.copyOf(lines);
        }
    }

    /**
     * A comparison for one value of the columns that a table was parted by.
     *
     * @param value header of the column that was compared
     * @param by column and value, in the order asked for
     */
    public record Parted(String value, Map<String, String> by, Comparison comparison) {
        public Parted {
            by = Ordered.copy(by);
        }
    }

    /**
     * A line for one value of the columns that a table was parted by.
     *
     * @param value header of the column that was fitted
     * @param by column and value, in the order asked for
     */
    public record Lined(String value, Map<String, String> by, Trend trend) {
        public Lined {
            by = Ordered.copy(by);
        }
    }

    /**
     * Compares the groups of a table of results.
     *
     * @param asked what is asked; its property names a column
     * @param groups the column that holds the groups
     * @throws org.twinbar.exchange.InputException where a column or a value can't be read
     * @throws QuestionException where it can't be asked so
     */
    public static Outcome of(Table table, Asked asked, String groups) {
        return of(ResultTable.of(table), asked, groups);
    }

    /** As {@link #of(Table, Asked, String)}, from what {@code calculate --json} wrote. */
    public static Outcome ofJson(String name, String json, Asked asked, String groups) {
        return of(ResultTable.ofJson(name, json), asked, groups);
    }

    private static Outcome of(ResultTable results, Asked asked, String groups) {
        ResultTable.Values values = results.values(asked, groups);
        Subject subject = Subject.of(values.label(), values.unit());
        Question question = Asking.question(asked, subject, values.scale());
        return of(question, values.header(), values.parts(), asked);
    }

    /** Answers a question of parts, each with its own comparisons and its own line. */
    public static Outcome of(Question question, String value, List<Part> parts, Asked asked) {
        boolean lineAlone = asked.said(Term.TREND).isPresent()
                && asked.said(Term.CONTROL).isEmpty()
                && question.level().isEmpty();
        List<Parted> parted = lineAlone ? List.of() : compare(question, value, parts, asked);
        List<Lined> lines = new ArrayList<>();
        for (Part part : parts) {
            part.amounts()
                    .ifPresent(amounts -> lines.add(new Lined(
                            value,
                            part.by(),
                            Trending.of(
                                    question,
                                    amounts.amount(),
                                    amounts.given(),
                                    amounts.without()))));
        }
        return new Outcome(parted, lines, question.seed());
    }

    private static List<Parted> compare(
            Question question, String value, List<Part> parts, Asked asked) {
        List<Parted> parted = new ArrayList<>();
        for (Part part : parts) {
            for (Comparison comparison : compare(question, part.observations(), asked)) {
                parted.add(new Parted(value, part.by(), comparison));
            }
        }
        return parts.size() < 2 || question.level().isPresent()
                ? parted
                : crossed(question, parts, parted);
    }

    /** Puts beside each comparison whether the treatment acts alike in the other parts. */
    private static List<Parted> crossed(Question question, List<Part> parts, List<Parted> parted) {
        List<Crossing.Part> places = parts.stream()
                .map(part -> new Crossing.Part(part.words(), part.observations()))
                .toList();
        Map<String, List<Alike>> alike = new TreeMap<>();
        List<Parted> all = new ArrayList<>();
        for (Parted one : parted) {
            Comparison comparison = one.comparison();
            String words = String.join(", ", one.by().values());
            List<Alike> elsewhere = alike.computeIfAbsent(
                    comparison.treated().name(),
                    treated -> Crossing.of(
                            question, places, comparison.control().orElseThrow().name(), treated));
            all.add(new Parted(
                    one.value(),
                    one.by(),
                    comparison.with(elsewhere.stream()
                            .filter(it -> it.here().equals(words) || it.there().equals(words))
                            .toList())));
        }
        return all;
    }

    /** Compares each treated group with the control; a level is asked of each group by itself. */
    private static List<Comparison> compare(
            Question question, List<Observation> observations, Asked asked) {
        Optional<String> control = asked.said(Term.CONTROL);
        List<String> treated = treated(observations, asked, control);
        if (question.level().isPresent()) {
            return treated.stream()
                    .map(group -> Comparing.level(question, observations, group))
                    .toList();
        }
        String against = control.orElseThrow(
                () -> new QuestionException("A comparison needs the name of the control group."));
        return Several.of(question, observations, against, treated);
    }

    private static List<String> treated(
            List<Observation> observations, Asked asked, Optional<String> control) {
        if (!asked.treated().isEmpty()) {
            return asked.treated();
        }
        Set<String> groups = new LinkedHashSet<>();
        observations.forEach(observation -> groups.add(observation.group()));
        control.ifPresent(groups::remove);
        if (groups.isEmpty()) {
            throw new QuestionException(control.map(
                            name -> "There is no group beside the control '%s'.".formatted(name))
                    .orElse("There is no specimen to be asked about."));
        }
        return List.copyOf(groups);
    }
}
