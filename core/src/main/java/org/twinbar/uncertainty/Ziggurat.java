package org.twinbar.uncertainty;

import org.apache.commons.rng.UniformRandomProvider;

/**
 * Draws standard normal deviates from a pile of 256 layers of the same area under the bell.
 *
 * <p>Of 100 draws 99 fall where their layer lies wholly under the bell and cost a multiplication
 * and a look into a table; the others take an exponential or, beyond 3.65, a logarithm. Layers and
 * those few come from StrictMath, and everything else is exact by IEEE 754, so that a seed draws
 * the same on every machine. Layer and place within it are taken from different bits of one number.
 *
 * <p>Sources: G. Marsaglia and W. W. Tsang, The ziggurat method for generating random variables,
 * Journal of Statistical Software 5 (2000), 8, doi:10.18637/jss.v005.i08, where the outermost edge
 * and the area stand as 3.6541528853610088 and 0.00492867323399; J. A. Doornik, An improved
 * ziggurat method to generate normal random samples (2005), for bits that are not used twice.
 */
final class Ziggurat {

    /** r: the outermost layer's edge, where 256 layers close at the top; the tail lies beyond. */
    static final double EDGE = 3.6541528853610088;

    /** v: what each layer holds, the outermost with the tail. */
    static final double AREA = 0.004928673233974655;

    private static final int LAYERS = 256;

    /** Layer i reaches from 0 to EDGES[i]; the first is as wide as one with the tail's area. */
    private static final double[] EDGES = edges();

    /** The bell at each edge. */
    private static final double[] HEIGHTS = heights();

    private Ziggurat() {}

    static double draw(UniformRandomProvider random) {
        while (true) {
            long bits = random.nextLong();
            int layer = (int) bits & (LAYERS - 1);
            // The upper 54 bits are a number of either sign in [−1, 1).
            double place = (bits >> 10) * 0x1.0p-53;
            double x = place * EDGES[layer];
            if (Math.abs(x) < EDGES[layer + 1]) {
                return x;
            }
            if (layer == 0) {
                return place < 0 ? -beyond(random) : beyond(random);
            }
            double height =
                    HEIGHTS[layer] + random.nextDouble() * (HEIGHTS[layer + 1] - HEIGHTS[layer]);
            if (height < bell(x)) {
                return x;
            }
        }
    }

    /** Draws from the tail beyond the edge: Marsaglia's exponentials, kept where they fit. */
    private static double beyond(UniformRandomProvider random) {
        while (true) {
            double x = -StrictMath.log(1 - random.nextDouble()) / EDGE;
            double y = -StrictMath.log(1 - random.nextDouble());
            if (2 * y > x * x) {
                return EDGE + x;
            }
        }
    }

    static double[] edges() {
        double[] edges = new double[LAYERS + 1];
        edges[0] = AREA / bell(EDGE);
        edges[1] = EDGE;
        for (int i = 2; i < LAYERS; i++) {
            edges[i] = Math.sqrt(-2 * StrictMath.log(AREA / edges[i - 1] + bell(edges[i - 1])));
        }
        return edges;
    }

    private static double[] heights() {
        double[] heights = new double[LAYERS + 1];
        for (int i = 0; i <= LAYERS; i++) {
            heights[i] = bell(EDGES[i]);
        }
        return heights;
    }

    private static double bell(double x) {
        return StrictMath.exp(-x * x / 2);
    }
}
