package org.twinbar.method.peak;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class ThreadStripClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "holds screws better",
                    List.of("thread", "screw", "bolt", "torque"),
                    "a screw is turned until its thread strips",
                    ThreadStrip.STRIP_TORQUE,
                    Better.HIGHER)
            .scattering(0.1)
            .on("own", WayUp.MATTERS));

    private ThreadStripClaims() {}
}
