package org.twinbar.method.peak;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class PeelClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "sticks better",
                    List.of("adher", "adhes", "stick", "peel", "flak", "bond"),
                    "a strip of the film is peeled off",
                    Peel.STRENGTH,
                    Better.HIGHER)
            .scattering(0.2)
            .on("plate-60x60x2", WayUp.ANY));

    private PeelClaims() {}
}
