package org.twinbar.method.leak;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.Typical;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class LeakClaims {

    private static final List<String> WORDS = List.of(
            "watertight",
            "water-tight",
            "waterproof",
            "water-proof",
            "leak",
            "tight",
            "dry",
            "seal");
    private static final String HEAD = "Under which head, the height of liquid above the wall?";
    private static final Typical DEEP = new Typical("500 mm", "half a metre");
    private static final Typical SHALLOW = new Typical("100 mm", "a cup");
    private static final String LIQUID = "Which liquid?";
    private static final Typical WATER = new Typical("water", "tap water");

    static final List<Answering> ANSWERING = List.of(
            Answering.of(
                            "watertight",
                            WORDS,
                            "filled and looked at: whether it stays dry for a stated time",
                            LeakForm.LEAK_FREE,
                            Better.HIGHER)
                    .stating(LeakForm.HEAD, HEAD, DEEP, SHALLOW)
                    .stating(
                            LeakForm.CLAIM_TIME,
                            "How long must it stay dry?",
                            new Typical("24 h", "a day"),
                            new Typical("168 h", "a week"))
                    .stating(LeakForm.LIQUID, LIQUID, WATER)
                    .on("cup-one-wall", WayUp.ANY),
            Answering.of(
                            "watertight",
                            WORDS,
                            "filled and looked at: how soon it leaks",
                            LeakForm.TIME_TO_LEAK,
                            Better.LOWER)
                    .stating(LeakForm.HEAD, HEAD, DEEP, SHALLOW)
                    .stating(LeakForm.LIQUID, LIQUID, WATER)
                    .on("cup-one-wall", WayUp.ANY),
            Answering.of(
                            "watertight",
                            WORDS,
                            "filled and weighed: how much it loses in an hour",
                            LeakForm.LEAK_RATE,
                            Better.LOWER)
                    .scattering(0.4)
                    .stating(LeakForm.HEAD, HEAD, DEEP, SHALLOW)
                    .stating(LeakForm.LIQUID, LIQUID, WATER)
                    .on("cup-one-wall", WayUp.ANY));

    private LeakClaims() {}
}
