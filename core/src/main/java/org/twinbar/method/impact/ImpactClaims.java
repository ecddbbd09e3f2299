package org.twinbar.method.impact;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class ImpactClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "tougher",
                    List.of("tough", "impact", "shatter", "shock", "brittle", "drop", "fall"),
                    "struck by a pendulum: the energy that it takes",
                    ImpactForm.STRENGTH,
                    Better.HIGHER)
            .scattering(0.15)
            .on("bar-80x10x4-notch", WayUp.MATTERS));

    private ImpactClaims() {}
}
