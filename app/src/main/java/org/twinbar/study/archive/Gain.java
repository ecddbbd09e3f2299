package org.twinbar.study.archive;

import java.util.Map;
import java.util.OptionalDouble;
import org.twinbar.decision.Amount;
import org.twinbar.decision.Comparison;
import org.twinbar.decision.Effect;
import org.twinbar.method.Property;
import org.twinbar.statistics.Normal;
import org.twinbar.statistics.StudentT;
import org.twinbar.study.judged.StudyName;

/**
 * What one treatment did to one property in one study.
 *
 * @param claim the words that it was asked for
 * @param method the test that measured it
 * @param version of that method
 * @param settings what was set in that test, as it was written
 * @param alike the factors that all its specimens share, such as {@code material = PLA}
 */
public record Gain(
        StudyName study,
        String claim,
        String method,
        int version,
        Map<String, String> settings,
        Property property,
        Map<String, String> alike,
        Comparison comparison) {

    public Gain {
        settings = Map.copyOf(settings);
        alike = Map.copyOf(alike);
    }

    public Effect kind() {
        return comparison.found().kind();
    }

    public String treated() {
        return comparison.treated().name();
    }

    public String control() {
        return comparison.control().map(it -> it.name()).orElse("");
    }

    /** Returns the estimate; empty where there is none. */
    public OptionalDouble estimate() {
        return comparison.found().estimate() instanceof Amount.Known known
                ? OptionalDouble.of(known.value())
                : OptionalDouble.empty();
    }

    /** Returns how many specimens it rests on. */
    public int specimens() {
        return comparison.treated().n() + comparison.control().map(it -> it.n()).orElse(0);
    }

    boolean isOnLogarithms() {
        return kind() == Effect.RATIO || kind() == Effect.RATE;
    }

    /**
     * Returns the standard uncertainty of the effect, of its logarithm for a ratio; empty where it
     * has no finite interval.
     *
     * <pre>u = (high − low) / (2 t),  t = Student's t of its level and degrees of freedom</pre>
     */
    OptionalDouble standardError() {
        double low = comparison.found().low().orElse(Double.NaN);
        double high = comparison.found().high().orElse(Double.NaN);
        if (isOnLogarithms()) {
            low = low > 0 ? StrictMath.log(low) : Double.NaN;
            high = high > 0 ? StrictMath.log(high) : Double.NaN;
        }
        double level = comparison.found().level();
        double times = comparison.found().df() instanceof Amount.Known df && df.value() > 0
                ? new StudentT(df.value()).twoSided(level)
                : Normal.STANDARD.quantile((1 + level) / 2);
        double u = (high - low) / (2 * times);
        return u > 0 && Double.isFinite(u) ? OptionalDouble.of(u) : OptionalDouble.empty();
    }
}
