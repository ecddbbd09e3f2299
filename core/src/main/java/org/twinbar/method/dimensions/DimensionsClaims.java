package org.twinbar.method.dimensions;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class DimensionsClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "keeps its size",
                    List.of("size", "shrink", "dimension", "accura", "swell"),
                    "measured before and after the treatment",
                    Axis.LENGTH.change(),
                    Better.UNCHANGED)
            .scattering(0.2)
            .on("bar-80x10x4", WayUp.MATTERS));

    private DimensionsClaims() {}
}
