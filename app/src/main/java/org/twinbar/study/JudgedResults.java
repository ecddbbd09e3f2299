package org.twinbar.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Observation;
import org.twinbar.decision.Observed;
import org.twinbar.decision.Question;
import org.twinbar.decision.Subject;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;

/** A table of results as a study of its own: one property, and an answer for each part. */
final class JudgedResults {

    /** Stands where a study of readings names the test. */
    private static final String METHOD = "results";

    private JudgedResults() {}

    static JudgedStudy of(
            Upload upload, Asked asked, String groups, List<String> by, String program) {
        ResultTable.Values values =
                ResultTable.of(TableFile.read(upload)).values(asked, groups, by);
        Property property = new Property(
                values.header(),
                values.label(),
                values.unit(),
                values.scale(),
                Property.Basis.NONE,
                values.header());
        Question question =
                Asking.question(asked, Subject.of(values.label(), values.unit()), values.scale());
        List<Answer> answers = new ArrayList<>();
        List<JudgedSpecimen> specimens = new ArrayList<>();
        for (ResultTable.Part part : values.parts()) {
            part.observations().forEach(it -> specimens.add(specimen(it, property, part.by())));
            List<Comparison> comparisons =
                    Comparisons.compare(question, part.observations(), asked);
            for (Comparison comparison : comparisons) {
                answers.add(new Answer.Compared(
                        name(values.label(), part.by(), comparison, comparisons.size()),
                        METHOD,
                        property,
                        part.by(),
                        comparison));
            }
        }
        return new JudgedStudy(
                upload.name(),
                "",
                "",
                JudgedStudy.Origin.MEASURED,
                List.of(new JudgedClaim(values.label(), "", answers)),
                List.of(),
                specimens,
                List.of(),
                List.of(upload.described()),
                List.of(),
                Making.NONE,
                new JudgedStudy.Maker(program, 1));
    }

    private static String name(
            String label, Map<String, String> part, Comparison comparison, int comparisons) {
        List<String> words = new ArrayList<>(List.of(label));
        words.addAll(part.values());
        if (comparisons > 1) {
            words.add(comparison.treated().name());
        }
        return String.join(", ", words);
    }

    private static JudgedSpecimen specimen(
            Observation observation, Property property, Map<String, String> part) {
        Result result = new Result(
                observation.specimen(),
                observation.group(),
                Map.of(property, gave(observation.observed())),
                Map.of(),
                List.of(),
                Map.of());
        return new JudgedSpecimen(
                observation.specimen(),
                METHOD,
                observation.group(),
                part,
                List.of(),
                result,
                Optional.empty(),
                observation.leftOut());
    }

    private static Yield gave(Observed observed) {
        if (observed instanceof Observed.Number number) {
            return new Yield.Value(number.value());
        } else if (observed instanceof Observed.AtLeast bound) {
            return new Yield.AtLeast(bound.bound(), "as the table says");
        } else if (observed instanceof Observed.Below bound) {
            return new Yield.Below(bound.bound(), "as the table says");
        } else if (observed instanceof Observed.Between between) {
            return new Yield.Between(between.from(), between.to(), "as the table says");
        } else if (observed instanceof Observed.YesNo word) {
            return new Yield.Word(word.yes() ? "yes" : "no");
        } else if (observed instanceof Observed.Unknown unknown) {
            return new Yield.Missing(unknown.reason());
        }
        throw new IllegalStateException(observed + " is no result");
    }
}
