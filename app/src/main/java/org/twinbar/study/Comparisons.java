package org.twinbar.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.twinbar.decision.Comparing;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Question;
import org.twinbar.decision.QuestionException;
import org.twinbar.decision.Subject;
import org.twinbar.exchange.Table;
import org.twinbar.study.Asked.Term;

/** Comparisons of groups from a table of results, without a store. */
public final class Comparisons {

    private Comparisons() {}

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
     * Compares the groups of a table of results.
     *
     * @param asked what is asked; its property names a column
     * @param groups the column that holds the groups
     * @param by columns that part the table, each of whose values gets a comparison of its own
     * @return in the order in which the table names groups and values
     * @throws org.twinbar.exchange.InputException where a column or a value can't be read
     * @throws QuestionException where it can't be asked so
     */
    public static List<Parted> of(Table table, Asked asked, String groups, List<String> by) {
        return of(ResultTable.of(table), asked, groups, by);
    }

    /** As {@link #of(Table, Asked, String, List)}, from what {@code calculate --json} wrote. */
    public static List<Parted> ofJson(
            String name, String json, Asked asked, String groups, List<String> by) {
        return of(ResultTable.ofJson(name, json), asked, groups, by);
    }

    private static List<Parted> of(
            ResultTable results, Asked asked, String groups, List<String> by) {
        ResultTable.Values values = results.values(asked, groups, by);
        Subject subject = Subject.of(values.label(), values.unit());
        Question question = Asking.question(asked, subject, values.scale());
        List<Parted> parted = new ArrayList<>();
        for (ResultTable.Part part : values.parts()) {
            for (Comparison comparison : compare(question, part.observations(), asked)) {
                parted.add(new Parted(values.header(), part.by(), comparison));
            }
        }
        return parted;
    }

    /** Compares each treated group with the control; a level is asked of each group by itself. */
    static List<Comparison> compare(
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
        return treated.stream()
                .map(group -> Comparing.of(question, observations, against, group))
                .toList();
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
