package org.twinbar.study.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;

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

    /** @param studies what specimens that were made alike gave, by the name of their study */
    public static Optional<EarlierScatter> of(
            Map<String, List<AlikeValues>> studies, String method, Property property) {
        double sum = 0;
        int df = 0;
        List<String> names = new ArrayList<>();
        for (Map.Entry<String, List<AlikeValues>> study : studies.entrySet()) {
            int before = df;
            for (AlikeValues alike : study.getValue()) {
                double mean = mean(alike.values());
                if (!alike.method().equals(method)
                        || !alike.property().equals(property)
                        || alike.values().size() < 2
                        || property.scale() == Scale.RATIO && !(mean > 0)) {
                    continue;
                }
                double unit = property.scale() == Scale.RATIO ? mean : 1;
                for (double value : alike.values()) {
                    sum += (value - mean) * (value - mean) / (unit * unit);
                }
                df += alike.values().size() - 1;
            }
            if (df > before) {
                names.add(study.getKey());
            }
        }
        return df > 0 && sum > 0
                ? Optional.of(new EarlierScatter(Math.sqrt(sum / df), df, names))
                : Optional.empty();
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }
}
