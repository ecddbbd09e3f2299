package org.twinbar.method.oven;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.Typical;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class OvenClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "heat-resistant",
                    List.of("heat", "hot", "temperature", "warp", "soften", "sag", "sun", "°c"),
                    "held at one end in an oven, a small mass at its tip: when it begins to sag",
                    OvenForm.ONSET,
                    Better.HIGHER)
            .scattering(2)
            .stating(
                    OvenForm.TIP_MASS,
                    "At what load: which mass hangs at the tip?",
                    new Typical("20 g", "hardly more than its own weight"),
                    new Typical("100 g", "a small part hanging on it"))
            .on("bar-80x10x4", WayUp.MATTERS));

    private OvenClaims() {}
}
