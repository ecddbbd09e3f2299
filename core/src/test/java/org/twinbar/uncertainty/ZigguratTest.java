package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class ZigguratTest {

    private static final long SEED = 20261125;
    private static final int DRAWS = 4_000_000;
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    private static UniformRandomProvider random(long seed) {
        return RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    }

    /** The area of the last layer, with the tail beyond the edge, is what every other one holds. */
    @Test
    void layersCloseAtTheTopOfTheBell() {
        double[] edges = Ziggurat.edges();
        double tail = Math.sqrt(2 * Math.PI) * NORMAL.survivalProbability(Ziggurat.EDGE);
        double bell = StrictMath.exp(-Ziggurat.EDGE * Ziggurat.EDGE / 2);
        assertThat(Ziggurat.EDGE * bell + tail).isCloseTo(Ziggurat.AREA, within(1e-16));
        double top = edges[255];
        assertThat(Ziggurat.AREA / top + StrictMath.exp(-top * top / 2))
                .isCloseTo(1, within(1e-12));
        assertThat(edges[256]).isZero();
        for (int i = 1; i < edges.length; i++) {
            assertThat(edges[i]).isLessThan(edges[i - 1]);
        }
    }

    /**
     * Cells of 0.1 from −5 to 5 and both ends, against Commons Statistics' distribution function:
     * χ² would exceed its limit once in a million right generators.
     */
    @Test
    void drawsAreNormalInEveryCell() {
        long[] counts = new long[102];
        UniformRandomProvider random = random(SEED);
        for (int i = 0; i < DRAWS; i++) {
            double x = Ziggurat.draw(random);
            counts[(int) Math.min(101, Math.max(0, Math.floor(10 * (x + 5)) + 1))]++;
        }
        double chiSquared = 0;
        int cells = 0;
        for (int i = 0; i < counts.length; i++) {
            double from = i == 0 ? Double.NEGATIVE_INFINITY : -5 + (i - 1) / 10.0;
            double to = i == 101 ? Double.POSITIVE_INFINITY : -5 + i / 10.0;
            double expected = DRAWS * NORMAL.probability(from, to);
            if (expected >= 5) {
                chiSquared += (counts[i] - expected) * (counts[i] - expected) / expected;
                cells++;
            }
        }
        assertThat(cells).isGreaterThan(90);
        assertThat(ChiSquaredDistribution.of(cells - 1.0).survivalProbability(chiSquared))
                .as("seed %s", SEED)
                .isGreaterThan(1e-6);
    }

    /** The tail has a way of its own: as many there as there should be, as far out on average. */
    @Test
    void theTailIsAsHeavyAsItShouldBe() {
        UniformRandomProvider random = random(SEED + 1);
        long beyond = 0;
        long above = 0;
        double sum = 0;
        for (int i = 0; i < 10 * DRAWS; i++) {
            double x = Ziggurat.draw(random);
            if (Math.abs(x) > Ziggurat.EDGE) {
                beyond++;
                above += x > 0 ? 1 : 0;
                sum += Math.abs(x);
            }
        }
        double share = 2 * NORMAL.survivalProbability(Ziggurat.EDGE);
        double expected = 10.0 * DRAWS * share;
        assertThat((double) beyond).isCloseTo(expected, within(5 * Math.sqrt(expected)));
        assertThat((double) above).isCloseTo(beyond / 2.0, within(2.5 * Math.sqrt(beyond)));
        double mean = 2 * NORMAL.density(Ziggurat.EDGE) / share;
        assertThat(sum / beyond).isCloseTo(mean, within(5 * 0.26 / Math.sqrt(beyond)));
    }

    @Test
    void mirroredBitsGiveMirroredDraws() {
        long layer = 17;
        for (long place : new long[] {1, 1L << 40, (1L << 52) + 3}) {
            double x = Ziggurat.draw(fixed((place << 10) | layer));
            assertThat(Ziggurat.draw(fixed((-place << 10) | layer))).isEqualTo(-x);
        }
    }

    private static UniformRandomProvider fixed(long bits) {
        return () -> bits;
    }
}
