package org.twinbar.study.archive;

import java.util.List;
import java.util.Optional;

/**
 * How much specimens made alike scatter on this bench.
 *
 * @param material empty where none was named
 * @param coefficientOfVariation pooled over groups
 * @param degreesOfFreedom that it rests on
 * @param studies how many
 */
public record UsualScatter(
        String method,
        String property,
        String material,
        double coefficientOfVariation,
        int degreesOfFreedom,
        int studies) {

    /**
     * Pools coefficients of variation.
     *
     * <pre>cv = √(Σ (nᵢ − 1) (sᵢ/x̄ᵢ)² / Σ (nᵢ − 1))</pre>
     *
     * <p>Groups whose mean is not above zero have none and are left aside.
     */
    static Optional<UsualScatter> of(List<GroupMean> means) {
        double squares = 0;
        int freedom = 0;
        for (GroupMean mean : means) {
            if (mean.mean() > 0) {
                double cv = mean.sd() / mean.mean();
                squares += (mean.n() - 1) * cv * cv;
                freedom += mean.n() - 1;
            }
        }
        if (freedom == 0) {
            return Optional.empty();
        }
        GroupMean first = means.get(0);
        return Optional.of(new UsualScatter(
                first.method(),
                first.property().column(),
                first.alike().getOrDefault("material", ""),
                Math.sqrt(squares / freedom),
                freedom,
                (int) means.stream().map(it -> it.study().id()).distinct().count()));
    }
}
