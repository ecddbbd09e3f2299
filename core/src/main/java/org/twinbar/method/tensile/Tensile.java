package org.twinbar.method.tensile;

import java.util.List;
import java.util.OptionalDouble;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

/** Pull to break, in the manner of ISO 527 and ASTM D638. */
public final class Tensile implements TestMethod {

    @Override
    public Description description() {
        return PullForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return TensileClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(PullForm.DESCRIPTION);
        if (readings.has(PullForm.FORCE)) {
            new Pull(readings, out).calculate();
        } else if (readings.has(PullForm.PEAK_FORCE)) {
            Bound bound = Bound.ofBreak(readings);
            strengths(readings, out, readings.number(PullForm.PEAK_FORCE), bound);
            PullFindings.ofBreak(readings, out);
            out.restMissing("only the largest force was read, no curve");
        } else {
            out.restMissing("no force was read");
        }
        return out.build();
    }

    /**
     * Gives the largest force on each basis: per part, per section as pulled and as it was before
     * treatment, and per gram.
     *
     * <pre>σ = F / A₀</pre>
     *
     * <p>Source: ISO 527-1:2019, 10.1.
     */
    static void strengths(Readings readings, Outcome.Builder out, double forceN, Bound bound) {
        PullForm.LARGEST_FORCE.give(readings, out, forceN, bound::of);
        perSection(readings, out, PullForm.STRENGTH, Section.PULLED, forceN, bound);
        perSection(readings, out, PullForm.STRENGTH_BEFORE, Section.BEFORE, forceN, bound);
    }

    private static void perSection(
            Readings readings,
            Outcome.Builder out,
            Property property,
            Section section,
            double forceN,
            Bound bound) {
        OptionalDouble area = section.areaOf(readings);
        out.put(
                property,
                area.isPresent()
                        ? bound.of(forceN / area.getAsDouble())
                        : new Yield.Missing(section.missing()));
    }
}
