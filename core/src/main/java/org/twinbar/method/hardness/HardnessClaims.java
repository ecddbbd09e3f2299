package org.twinbar.method.hardness;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class HardnessClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "harder",
                    List.of("hard", "scratch", "dent", "wear"),
                    "a durometer's cone pressed into its surface",
                    HardnessForm.MEAN,
                    Better.HIGHER)
            .scattering(2)
            .on("disc-50x3", WayUp.ANY));

    private HardnessClaims() {}
}
