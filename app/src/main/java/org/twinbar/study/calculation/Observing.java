package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Property;
import org.twinbar.method.Words;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Numbers;
import org.twinbar.quantity.QuantityException;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.table.HowMade;
import org.twinbar.study.table.SpecimenRow;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** Turns what specimens gave into what a comparison sees. */
public final class Observing {

    private static final String YES = "yes";
    private static final String NO = "no";

    private Observing() {}

    /**
     * Returns the specimens that a question is about, left-out ones included, parted as it asks.
     *
     * @throws QuestionException where no specimen has a factor that the question names
     */
    public static List<Part> parts(List<JudgedSpecimen> specimens, Property property, Asked asked) {
        List<String> by =
                asked.by().stream().map(factor -> factor(specimens, factor)).toList();
        Optional<String> amount = asked.said(Term.TREND).map(column -> column(specimens, column));
        HowMade made = made(specimens, asked);
        Optional<String> event = event(specimens, asked);
        Map<Map<String, String>, List<JudgedSpecimen>> parted = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : about(specimens, asked)) {
            Map<String, String> part = new LinkedHashMap<>();
            by.forEach(factor -> part.put(factor, cell(specimen, factor)));
            parted.computeIfAbsent(part, it -> new ArrayList<>()).add(specimen);
        }
        List<Part> parts = new ArrayList<>();
        parted.forEach((levels, its) -> {
            List<Observation> observations = its.stream()
                    .map(specimen -> observation(specimen, property, made, event))
                    .toList();
            parts.add(new Part(
                    levels,
                    observations,
                    amount.map(column -> Amounts.of(
                            column,
                            observations,
                            its.stream().map(it -> amount(it, column)).toList()))));
        });
        return parts.isEmpty() ? List.of(new Part(Map.of(), List.of(), Optional.empty())) : parts;
    }

    /**
     * Returns what keeps the specimens of a question out of one mean; those that were left out are
     * in none.
     */
    public static Apart apart(
            List<Words> candidates,
            List<JudgedSpecimen> specimens,
            Property property,
            Asked asked) {
        return Apart.among(
                candidates,
                about(specimens, asked).stream()
                        .filter(JudgedSpecimen::counts)
                        .map(it -> new Apart.Specimen(
                                it.factors(), observed(it, property, event(specimens, asked))))
                        .toList(),
                asked);
    }

    /**
     * Returns the specimens that a question is about, left-out ones included.
     *
     * @throws QuestionException where no specimen has a factor that the question names
     */
    static List<Observation> of(List<JudgedSpecimen> specimens, Property property, Asked asked) {
        HowMade made = made(specimens, asked);
        Optional<String> event = event(specimens, asked);
        return about(specimens, asked).stream()
                .map(specimen -> observation(specimen, property, made, event))
                .toList();
    }

    private static List<JudgedSpecimen> about(List<JudgedSpecimen> specimens, Asked asked) {
        asked.where().keySet().forEach(factor -> factor(specimens, factor));
        return specimens.stream()
                .filter(specimen ->
                        specimen.factors().entrySet().containsAll(asked.where().entrySet()))
                .toList();
    }

    private static HowMade made(List<JudgedSpecimen> specimens, Asked asked) {
        return HowMade.of(asked, factors(specimens), (wanted, what) -> factor(specimens, wanted));
    }

    private static List<String> factors(List<JudgedSpecimen> specimens) {
        return specimens.stream()
                .flatMap(specimen -> specimen.factors().keySet().stream())
                .distinct()
                .toList();
    }

    private static String factor(List<JudgedSpecimen> specimens, String factor) {
        List<String> factors = factors(specimens);
        if (!factors.contains(factor)) {
            throw new QuestionException("No specimen has a '%s'; their factors are %s%s."
                    .formatted(
                            factor,
                            factors.isEmpty() ? "none" : String.join(", ", factors),
                            Spelling.hint(factor, factors).replace("?", "")));
        }
        return factor;
    }

    /** Returns a column of factors or of readings; amounts stand in either. */
    private static String column(List<JudgedSpecimen> specimens, String column) {
        boolean read = specimens.stream()
                .flatMap(specimen -> specimen.readings().stream())
                .anyMatch(reading -> reading.column().equals(column));
        return read ? column : factor(specimens, column);
    }

    private static String cell(JudgedSpecimen specimen, String column) {
        return specimen.readings().stream()
                .filter(reading -> reading.column().equals(column))
                .map(Reading::counting)
                .findFirst()
                .orElseGet(() -> specimen.factors().getOrDefault(column, ""));
    }

    private static OptionalDouble amount(JudgedSpecimen specimen, String column) {
        String text = cell(specimen, column).strip();
        if (SpecimenRow.isNothing(text)) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(Numbers.parse(text));
        } catch (QuantityException e) {
            throw new QuestionException("%s of %s is no amount: %s."
                    .formatted(column, specimen.code(), e.getMessage()));
        }
    }

    private static Observation observation(
            JudgedSpecimen specimen, Property property, HowMade made, Optional<String> event) {
        Map<String, Double> moves = new LinkedHashMap<>();
        OptionalDouble own = OptionalDouble.empty();
        Budget budget = specimen.result().budgets().get(property);
        if (budget != null) {
            own = OptionalDouble.of(budget.u(Source.Reach.OWN));
            budget.shifts().forEach((source, shift) -> {
                if (source.reach() == Source.Reach.SHARED) {
                    moves.put(source.identity(), shift);
                }
            });
        }
        return new Observation(
                specimen.code(),
                specimen.group(),
                observed(specimen, property, event),
                made.of(column -> cell(specimen, column)),
                own,
                moves,
                specimen.leftOut());
    }

    private static Optional<String> event(List<JudgedSpecimen> specimens, Asked asked) {
        return asked.said(Term.EVENT).map(column -> column(specimens, column));
    }

    /** What had not happened when the test ended is "at least". */
    private static Observed observed(
            JudgedSpecimen specimen, Property property, Optional<String> event) {
        Observed observed = observed(specimen, property);
        return observed instanceof Observed.Number number
                        && !event.map(column -> happened(specimen, column)).orElse(true)
                ? new Observed.AtLeast(number.value())
                : observed;
    }

    private static boolean happened(JudgedSpecimen specimen, String column) {
        String text = cell(specimen, column).strip();
        return ResultRow.happened(text)
                .orElseThrow(() -> new QuestionException(
                        "%s of %s is '%s', neither 1 (it happened) nor 0 (the test ended first)."
                                .formatted(column, specimen.code(), text)));
    }

    private static Observed observed(JudgedSpecimen specimen, Property property) {
        Yield yield = specimen.result().yields().get(property);
        if (yield instanceof Yield.Value value) {
            return new Observed.Number(value.value());
        } else if (yield instanceof Yield.Fitted fitted) {
            return new Observed.Number(fitted.value());
        } else if (yield instanceof Yield.AtLeast bound) {
            return new Observed.AtLeast(bound.bound());
        } else if (yield instanceof Yield.Below bound) {
            return new Observed.Below(bound.bound());
        } else if (yield instanceof Yield.Between between) {
            return new Observed.Between(between.from(), between.to());
        } else if (yield instanceof Yield.Word word) {
            return word(word.word());
        } else if (yield instanceof Yield.Missing missing) {
            return new Observed.Unknown(missing.reason());
        }
        throw new IllegalStateException(
                "%s says nothing of %s".formatted(specimen.code(), property.name()));
    }

    static Observed word(String word) {
        return switch (word) {
            case YES -> new Observed.YesNo(true);
            case NO -> new Observed.YesNo(false);
            default -> new Observed.Unknown("'%s' is neither yes nor no".formatted(word));
        };
    }
}
