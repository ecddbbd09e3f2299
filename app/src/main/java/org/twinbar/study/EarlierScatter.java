package org.twinbar.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.Yield;

/**
 * The scatter of a property on this bench, as earlier studies show it.
 *
 * <p>Pooled over specimens that were made alike: √(Σ(n−1)s²/Σ(n−1)), s over the mean for a ratio.
 *
 * @param scatter over the mean for a ratio, else in the property's unit
 * @param df degrees of freedom Σ(n−1)
 * @param studies whose specimens it comes from
 */
public record EarlierScatter(double scatter, int df, List<String> studies) {

    public EarlierScatter {
        studies = List.copyOf(studies);
    }

    static Optional<EarlierScatter> of(
            List<JudgedStudy> studies, String method, Property property) {
        double sum = 0;
        int df = 0;
        List<String> names = new ArrayList<>();
        for (JudgedStudy study : studies) {
            int before = df;
            for (List<Double> alike : groups(study, method, property).values()) {
                double mean = mean(alike);
                if (alike.size() < 2 || property.scale() == Scale.RATIO && !(mean > 0)) {
                    continue;
                }
                double unit = property.scale() == Scale.RATIO ? mean : 1;
                for (double value : alike) {
                    sum += (value - mean) * (value - mean) / (unit * unit);
                }
                df += alike.size() - 1;
            }
            if (df > before) {
                names.add(study.name());
            }
        }
        return df > 0 && sum > 0
                ? Optional.of(new EarlierScatter(Math.sqrt(sum / df), df, names))
                : Optional.empty();
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    /** Specimens are alike that share their group and how they stood on the bed. */
    private static Map<List<String>, List<Double>> groups(
            JudgedStudy study, String method, Property property) {
        Map<List<String>, List<Double>> groups = new LinkedHashMap<>();
        for (JudgedSpecimen specimen : study.specimensOf(method)) {
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
        return groups;
    }
}
