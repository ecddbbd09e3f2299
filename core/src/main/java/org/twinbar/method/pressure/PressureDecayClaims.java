package org.twinbar.method.pressure;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class PressureDecayClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "airtight",
                    List.of("airtight", "air-tight", "pressure", "tight", "seal"),
                    "pumped up and closed: how much air it loses",
                    PressureForm.LEAK_RATE,
                    Better.LOWER)
            .scattering(0.3)
            .on("own", WayUp.ANY));

    private PressureDecayClaims() {}
}
