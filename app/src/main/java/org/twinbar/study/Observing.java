package org.twinbar.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.twinbar.decision.Block;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.Spelling;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.Asked.Term;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

/** Turns what specimens gave into what a comparison sees. */
final class Observing {

    private static final String YES = "yes";
    private static final String NO = "no";

    private Observing() {}

    /**
     * Returns the specimens that a question is about, left-out ones included.
     *
     * @throws QuestionException where no specimen has a factor that the question names
     */
    static List<Observation> of(List<JudgedSpecimen> specimens, Property property, Asked asked) {
        asked.where().keySet().forEach(factor -> requireFactor(specimens, factor));
        asked.said(Term.BLOCK).ifPresent(factor -> requireFactor(specimens, factor));
        asked.said(Term.UNIT).ifPresent(factor -> requireFactor(specimens, factor));
        return specimens.stream()
                .filter(specimen ->
                        specimen.factors().entrySet().containsAll(asked.where().entrySet()))
                .map(specimen -> observation(specimen, property, asked))
                .toList();
    }

    private static void requireFactor(List<JudgedSpecimen> specimens, String factor) {
        List<String> factors = specimens.stream()
                .flatMap(specimen -> specimen.factors().keySet().stream())
                .distinct()
                .toList();
        if (!factors.contains(factor)) {
            throw new QuestionException("No specimen has a '%s'; their factors are %s%s."
                    .formatted(
                            factor,
                            factors.isEmpty() ? "none" : String.join(", ", factors),
                            Spelling.hint(factor, factors).replace("?", "")));
        }
    }

    private static Observation observation(
            JudgedSpecimen specimen, Property property, Asked asked) {
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
                observed(specimen, property),
                asked.said(Term.BLOCK)
                        .flatMap(kind -> block(kind, specimen.factors().getOrDefault(kind, ""))),
                factor(specimen, asked, Term.UNIT),
                own,
                moves,
                specimen.leftOut());
    }

    /** Returns the block of a specimen; one that belongs to none has an empty cell there. */
    static Optional<Block> block(String kind, String name) {
        return name.isBlank()
                ? Optional.empty()
                : Optional.of(new Block(kind.replace('_', ' ').strip(), name));
    }

    private static Optional<String> factor(JudgedSpecimen specimen, Asked asked, Term term) {
        return asked.said(term).map(specimen.factors()::get).filter(level -> !level.isBlank());
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
