package org.twinbar.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

    private static final List<String> NAMES =
            List.of("width_mm", "thickness_mm", "peak_force_N", "group", "specimen");

    @ParameterizedTest
    @CsvSource({
        "widht_mm, width_mm",
        "Widthmm, width_mm",
        "thicknes_mm, thickness_mm",
        "peak force n, peak_force_N",
        "goup, group",
        "specimens, specimen",
    })
    void findsWhatWasMeant(String misspelt, String meant) {
        assertThat(Spelling.nearest(misspelt, NAMES)).contains(meant);
        assertThat(Spelling.hint(misspelt, NAMES)).isEqualTo("; did you mean '%s'?", meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "mass_g"})
    void keepsSilentWhereNothingIsNear(String misspelt) {
        assertThat(Spelling.nearest(misspelt, NAMES)).isEmpty();
        assertThat(Spelling.hint(misspelt, NAMES)).isEmpty();
    }

    /** Worked by hand: one swap; three changes; one letter put in; all letters put in. */
    @ParameterizedTest
    @CsvSource({"ab, ba, 1", "kitten, sitting, 3", "widh, width, 1", "'', abc, 3", "same, same, 0"})
    void countsSingleMistakes(String a, String b, int mistakes) {
        assertThat(Spelling.distance(a, b)).isEqualTo(mistakes);
        assertThat(Spelling.distance(b, a)).isEqualTo(mistakes);
    }

    @Test
    void takesTheNearerOfTwo() {
        assertThat(Spelling.nearest("width_2", List.of("width_1_mm", "width_2_", "depth_2")))
                .contains("width_2_");
    }
}
