package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;

/**
 * What counting specimens that were made alike gave: those that share their group and how they
 * stood on the bed.
 *
 * @param values in the property's unit
 */
public record AlikeValues(String method, Property property, List<Double> values) {

    public AlikeValues {
        values = List.copyOf(values);
    }

    /** Returns those of all tests; none while nobody may know who is in which group. */
    public static List<AlikeValues> of(JudgedStudy study) {
        List<AlikeValues> all = new ArrayList<>();
        if (study.making().keyClosed()) {
            return all;
        }
        for (MethodUsed used : study.methods()) {
            List<JudgedSpecimen> specimens = study.specimensOf(used.name());
            for (Property property : used.description().properties()) {
                groups(specimens, property)
                        .forEach(values -> all.add(new AlikeValues(used.name(), property, values)));
            }
        }
        return all;
    }

    private static Iterable<List<Double>> groups(
            List<JudgedSpecimen> specimens, Property property) {
        Map<List<String>, List<Double>> groups = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : specimens) {
            Yield yield = specimen.result().yields().get(property);
            if (specimen.counts() && yield instanceof Yield.Value value) {
                groups.computeIfAbsent(
                                List.of(
                                        specimen.group(),
                                        specimen.factors().getOrDefault("orientation", "")),
                                it -> new ArrayList<>())
                        .add(value.value());
            }
        }
        return groups.values();
    }
}
