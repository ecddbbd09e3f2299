package org.twinbar.method.uptake;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class UptakeClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "takes up less water",
                    List.of("absor", "moistur", "humid", "uptake", "soak", "takes up"),
                    "weighed dry, soaked and wiped",
                    UptakeForm.UPTAKE,
                    Better.LOWER)
            .scattering(0.1)
            .on("disc-50x3", WayUp.ANY));

    private UptakeClaims() {}
}
