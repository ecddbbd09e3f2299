package org.twinbar.method.flexure;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class FlexureClaims {

    static final List<Answering> ANSWERING = List.of(
            Answering.of(
                            "stronger",
                            List.of("strong", "strength", "break", "carries", "carry", "bear"),
                            "bent over two supports until it breaks or gives way",
                            BendForm.STRENGTH,
                            Better.HIGHER)
                    .scattering(0.06)
                    .on("bar-80x10x4", WayUp.MATTERS),
            Answering.of(
                            "stiffer",
                            List.of("stiff", "rigid", "flexib"),
                            "bent a little: how much force a deflection takes",
                            BendForm.MODULUS,
                            Better.HIGHER)
                    .scattering(0.05)
                    .on("bar-80x10x4", WayUp.MATTERS));

    private FlexureClaims() {}
}
