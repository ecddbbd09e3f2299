package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DetectionTest {

    private static final Detection DETECTION = new Detection(2);

    @Test
    void seesFromThreeStandardUncertaintiesOn() {
        assertThat(DETECTION.limit()).isEqualTo(6);
        assertThat(DETECTION.detects(5.99)).isFalse();
        assertThat(DETECTION.detects(6)).isTrue();
        assertThat(new Detection(0).detects(0)).isTrue();
    }

    /** What reads nearly as much as the limit may well be more. */
    @Test
    void whatIsNotSeenMayStillLieAboveTheLimit() {
        assertThat(DETECTION.below(0)).isEqualTo(6);
        assertThat(DETECTION.below(-10)).isEqualTo(6);
        assertThat(DETECTION.below(5)).isCloseTo(5 + 1.645 * 2, within(1e-3));
    }
}
