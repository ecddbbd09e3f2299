package org.twinbar.method.peak;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class InsertPulloutClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "holds inserts better",
                    List.of("insert", "pull-out", "pullout"),
                    "a threaded insert is pulled straight out of it",
                    InsertPullout.PULLOUT,
                    Better.HIGHER)
            .scattering(0.1)
            .on("own", WayUp.MATTERS));

    private InsertPulloutClaims() {}
}
