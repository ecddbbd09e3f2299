package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.twinbar.decision.Alike;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Crossing;
import org.twinbar.decision.Effect;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Several;
import org.twinbar.decision.Subject;
import org.twinbar.decision.Trend;
import org.twinbar.decision.Trending;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
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
     * @param unmade what could not be compared, since it shares a mean with nothing
     * @param seed of everything that was drawn at random
     */
    public record Outcome(
            List<Parted> comparisons, List<Lined> lines, List<Unmade> unmade, long seed) {
        public Outcome {
            comparisons = List.copyOf(comparisons);
            lines = List.copyOf(lines);
            unmade = List.copyOf(unmade);
        }
    }

    /**
     * Specimens that nothing could be compared of.
     *
     * @param by column and value, in the order asked for
     */
    public record Unmade(Map<String, String> by, String reason) {
        public Unmade {
            by = Ordered.copy(by);
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
     * @param methods tell what of the table must not share a mean, such as types of break
     * @throws org.twinbar.exchange.InputException where a column or a value can't be read
     * @throws QuestionException where it can't be asked so
     */
    public static Outcome of(Table table, Asked asked, String groups, Methods methods) {
        return of(ResultTable.of(table), asked, groups, methods);
    }

    /** As for a table, from what {@code calculate --json} wrote. */
    public static Outcome ofJson(
            String name, String json, Asked asked, String groups, Methods methods) {
        return of(ResultTable.ofJson(name, json), asked, groups, methods);
    }

    private static Outcome of(ResultTable results, Asked asked, String groups, Methods methods) {
        ResultTable.Values whole = results.values(asked, groups);
        Subject subject = Subject.of(whole.label(), whole.unit());
        Question question = Asking.question(asked, subject, whole.scale());
        Apart apart = averages(question)
                ? results.apart(Apart.ofColumn(methods, whole.header()), whole.header(), asked)
                : Apart.NOTHING;
        Asked parted = apart.part(asked);
        List<Part> parts = apart.isNothing()
                ? whole.parts()
                : results.values(parted, groups).parts();
        return of(question, whole.header(), parts, parted, apart);
    }

    /** Returns whether a question is answered by means. */
    public static boolean averages(Question question) {
        return question.effect() == Effect.RATIO || question.effect() == Effect.DIFFERENCE;
    }

    /**
     * Answers a question of parts, each with its own comparisons and its own line.
     *
     * @param apart what keeps the parts out of one mean, beside what the question parts by
     */
    public static Outcome of(
            Question question, String value, List<Part> all, Asked asked, Apart apart) {
        boolean lineAlone = asked.said(Term.TREND).isPresent()
                && asked.said(Term.CONTROL).isEmpty()
                && question.level().isEmpty();
        List<Unmade> unmade = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        for (Part part : all) {
            Optional<String> reason = apart.unanswered(part, asked.said(Term.CONTROL));
            reason.ifPresent(why -> unmade.add(new Unmade(part.by(), why)));
            if (reason.isEmpty()) {
                parts.add(part);
            }
        }
        if (parts.isEmpty()) {
            throw new QuestionException(
                    unmade.stream().map(Unmade::reason).collect(Collectors.joining(" ")));
        }
        List<Parted> parted = lineAlone
                ? List.of()
                : apart.isNothing()
                        ? compare(question, value, parts, asked)
                        : compareApart(question, value, parts, asked, apart, apart.findings(all));
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
        return new Outcome(parted, lines, unmade, question.seed());
    }

    /** Compares within each level of what keeps specimens apart, and says so with each. */
    private static List<Parted> compareApart(
            Question question,
            String value,
            List<Part> parts,
            Asked asked,
            Apart apart,
            List<Finding> said) {
        List<Parted> parted = new ArrayList<>();
        for (Part part : parts) {
            Asked here = asked.treated(apart.treated(part, asked, asked.said(Term.CONTROL)));
            for (Comparison comparison : compare(question, part.observations(), here)) {
                parted.add(new Parted(value, part.by(), comparison.doubted(said)));
            }
        }
        return parted;
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
