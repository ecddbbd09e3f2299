package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast as WCAG 2.2 defines it: relative luminance, success criteria 1.4.3 and 1.4.11. */
class ThemeTest {

    private static final List<Theme> GROUNDS = List.of(Theme.PAPER, Theme.SHEET, Theme.WASH);

    @ParameterizedTest
    @EnumSource(
            value = Theme.class,
            names = {"INK", "SOFT", "TREATED", "CONTROL", "WARN"})
    void canBeReadOnEveryGround(Theme text) {
        for (Theme ground : GROUNDS) {
            assertThat(contrast(text.light(), ground.light())).isGreaterThanOrEqualTo(4.5);
            assertThat(contrast(text.dark(), ground.dark())).isGreaterThanOrEqualTo(4.5);
        }
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void isFoundAgainFromWhatItIsDrawnWith(Theme token) {
        assertThat(Theme.of(token.ink())).contains(token);
        assertThat(Theme.of(token.thinInk())).contains(token);
    }

    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String hex) {
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
