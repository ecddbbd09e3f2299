package org.twinbar.method.uptake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UptakeLawsTest {

    @Test
    void waterComesInAndNeverOut() {
        double before = -1;
        for (double x = 0; x < 3; x += 0.001) {
            double share = Fick.share(x);
            assertThat(share).isBetween(0.0, 1.0).isGreaterThanOrEqualTo(before);
            before = share;
        }
        assertThat(Fick.share(5)).isCloseTo(1, within(1e-15));
    }

    @Test
    void earlyLawAndSeriesMeet() {
        assertThat(Fick.share(0.01 - 1e-12)).isCloseTo(Fick.share(0.01), within(1e-9));
    }

    @Test
    void aShareIsReachedWhenItIsReached() {
        for (double share = 0.001; share < 0.999; share += 0.007) {
            assertThat(Fick.share(Fick.at(share))).isCloseTo(share, within(1e-12));
        }
        assertThat(Fick.at(0)).isNaN();
        assertThat(Fick.at(1)).isNaN();
        assertThat(Fick.at(Double.NaN)).isNaN();
    }
}
