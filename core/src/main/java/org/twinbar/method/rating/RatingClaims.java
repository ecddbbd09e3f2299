package org.twinbar.method.rating;

import java.util.List;
import org.twinbar.method.Answering;
import org.twinbar.method.Answering.Better;
import org.twinbar.method.Answering.WayUp;

/** Which claims are answered so; the usual scatters are common practice, without a source. */
final class RatingClaims {

    static final List<Answering> ANSWERING = List.of(Answering.of(
                    "looks better",
                    List.of("look", "appear", "beaut", "layer line", "smooth", "clear"),
                    "judged by several people who don't know the groups",
                    Rating.MEDIAN,
                    Better.HIGHER)
            .on("plate-60x60x2", WayUp.ANY));

    private RatingClaims() {}
}
