package org.twinbar.method.density;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class DensityClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "denser",
                    List.of("dens", "light", "heav", "void", "poro", "solid"),
                    "weighed in air and hanging in water",
                    DensityForm.DENSITY,
                    Better.HIGHER)
            .scattering(0.005)
            .on("plate-60x60x2", WayUp.ANY));

    private DensityClaims() {}
}
