package org.twinbar.method.creep;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class CreepClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "holds a load for long",
                    List.of("creep", "long-term", "for long", "relax", "years"),
                    "loaded and left: how far it stretches in a day",
                    CreepForm.MODULUS_LATE,
                    Better.HIGHER)
            .scattering(0.08)
            .on("iso527-1b", WayUp.MATTERS));

    private CreepClaims() {}
}
