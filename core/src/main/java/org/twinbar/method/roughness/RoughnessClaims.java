package org.twinbar.method.roughness;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class RoughnessClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "less rough",
                    List.of("rough", "smooth", "layer line"),
                    "a stylus or a light drawn across its layer lines",
                    RoughnessForm.RA,
                    Better.LOWER)
            .scattering(0.15)
            .on("plate-60x60x2", WayUp.MATTERS));

    private RoughnessClaims() {}
}
