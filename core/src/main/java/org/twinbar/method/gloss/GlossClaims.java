package org.twinbar.method.gloss;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class GlossClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "glossier",
                    List.of("gloss", "shin", "polish", "sheen", "dull"),
                    "a gloss meter set on several places of it",
                    Geometry.AT_60.alongYielded(),
                    Better.HIGHER)
            .scattering(0.06)
            .on("plate-60x60x2", WayUp.MATTERS));

    private GlossClaims() {}
}
