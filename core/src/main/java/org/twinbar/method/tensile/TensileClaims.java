package org.twinbar.method.tensile;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class TensileClaims {

    static final List<Answering> ANSWERING = List.of(
            Answering.of(
                            "stronger",
                            List.of("strong", "strength", "break", "carries", "carry", "bear"),
                            "pulled along its length until it breaks",
                            PullForm.STRENGTH,
                            Better.HIGHER)
                    .scattering(0.06)
                    .on("iso527-1ba", WayUp.MATTERS),
            Answering.of(
                            "stiffer",
                            List.of("stiff", "rigid", "flexib"),
                            "pulled a little: how much force a stretch takes",
                            PullForm.MODULUS,
                            Better.HIGHER)
                    .scattering(0.05)
                    .on("iso527-1b", WayUp.MATTERS),
            Answering.of(
                            "stretches further",
                            List.of("stretch", "elongat", "ductil", "brittle"),
                            "pulled until it breaks: how far it went",
                            PullForm.STRAIN_AT_BREAK,
                            Better.HIGHER)
                    .scattering(0.25)
                    .on("iso527-1ba", WayUp.MATTERS));

    private TensileClaims() {}
}
