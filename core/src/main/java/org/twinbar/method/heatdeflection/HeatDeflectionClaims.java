package org.twinbar.method.heatdeflection;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.Typical;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class HeatDeflectionClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "heat-resistant",
                    List.of("heat", "hot", "temperature", "warp", "soften", "sag", "sun", "°c"),
                    "a bar on two supports under a stated stress, heated slowly: when it gives way",
                    HeatForm.TEMPERATURE,
                    Better.HIGHER)
            .scattering(1.5)
            .stating(
                    HeatForm.STRESS,
                    "At what load: which stress at its surface?",
                    new Typical("0.45 MPa", "a light load, method B of ISO 75"),
                    new Typical("1.80 MPa", "a heavy load, method A of ISO 75"))
            .on("bar-80x10x4", WayUp.MATTERS));

    private HeatDeflectionClaims() {}
}
