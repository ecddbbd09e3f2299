package org.twinbar.method.density;

import java.util.List;
import java.util.Optional;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;

/** Weighed in air and hanging in a liquid, in the manner of ISO 1183-1, method A. */
public final class Density implements TestMethod {

    @Override
    public Description description() {
        return DensityForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return DensityClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(DensityForm.DESCRIPTION);
        Optional<String> missing = Weighing.missing(readings);
        if (missing.isPresent()) {
            return out.restMissing(missing.get()).build();
        }
        Weighing weighing = Weighing.of(readings);
        // Only what was read can be impossible; an error of another world may turn two close
        // masses.
        Optional<String> impossible = readings.atRest() ? weighing.impossible() : Optional.empty();
        if (impossible.isPresent()) {
            return out.restMissing(impossible.get()).build();
        }
        double density = weighing.density();
        out.value(DensityForm.DENSITY, density);
        out.value(DensityForm.VOLUME, weighing.volume());
        if (readings.has(DensityForm.SOLID_DENSITY)) {
            double solid = readings.number(DensityForm.SOLID_DENSITY);
            out.value(DensityForm.POROSITY, 100 * (1 - density / solid));
        } else {
            out.missing(DensityForm.POROSITY, "the density of the solid material was not given");
        }
        if (readings.atRest()) {
            DensityFindings.of(readings, weighing, out);
        }
        return out.build();
    }
}
