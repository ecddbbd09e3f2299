package org.twinbar.method.roughness;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Outcome;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;

/** Ra, Rq, Rz and Rt of a profile, in the manner of ISO 21920. */
public final class Roughness implements TestMethod {

    @Override
    public Description description() {
        return RoughnessForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return RoughnessClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(RoughnessForm.DESCRIPTION);
        if (!readings.has(RoughnessForm.POSITION) || !readings.has(RoughnessForm.HEIGHT)) {
            return out.restMissing("no profile was traced").build();
        }
        // A gain multiplies every height and a zero goes with the form, so that no world filters
        // the profile again.
        double gain = readings.trace(RoughnessForm.HEIGHT).scale();
        Traced traced = readings.once("traced", Traced.class, () -> Traced.of(readings));
        Parameters found =
                readings.once("parameters", Parameters.class, () -> traced.parameters(readings));
        if (readings.atRest()) {
            RoughnessFindings.of(readings, traced, found, out);
        }
        if (!found.missing().isEmpty()) {
            return out.restMissing(found.missing()).build();
        }
        double ends = readings.resolutionAt(RoughnessForm.HEIGHT, "highest peak")
                - readings.resolutionAt(RoughnessForm.HEIGHT, "deepest valley");
        int sections = found.sections();
        out.put(RoughnessForm.RA, found.ra().yield(gain, 0, sections));
        out.put(RoughnessForm.RQ, found.rq().yield(gain, 0, sections));
        out.put(RoughnessForm.RZ, found.rz().yield(gain, 0, sections));
        out.put(RoughnessForm.RT, found.rt().yield(gain, ends, sections));
        return out.build();
    }
}
