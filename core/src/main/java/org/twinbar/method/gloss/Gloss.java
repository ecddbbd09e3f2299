package org.twinbar.method.gloss;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Outcome;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.TestMethod;

/** Gloss at three angles, in the manner of ISO 2813 and ASTM D523. */
public final class Gloss implements TestMethod {

    @Override
    public Description description() {
        return GlossForm.DESCRIPTION;
    }

    @Override
    public List<Answering> answering() {
        return GlossClaims.ANSWERING;
    }

    @Override
    public Outcome calculate(Readings readings) {
        Outcome.Builder out = Outcome.of(GlossForm.DESCRIPTION);
        for (Geometry geometry : Geometry.ALL) {
            mean(readings, geometry.along(), geometry.alongYielded(), out);
            mean(readings, geometry.across(), geometry.acrossYielded(), out);
        }
        if (readings.atRest()) {
            new GlossFindings(readings, out).find();
        }
        return out.build();
    }

    private static void mean(Readings readings, Input read, Property yielded, Outcome.Builder out) {
        if (readings.has(read)) {
            out.value(yielded, readings.number(read));
        } else {
            out.missing(yielded, "it was not read at this angle and in this direction");
        }
    }
}
