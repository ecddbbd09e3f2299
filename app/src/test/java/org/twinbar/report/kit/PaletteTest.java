package org.twinbar.report.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.report.Theme;

class PaletteTest {

    /** W3C, Understanding WCAG 2.2, 1.4.3: black on white, and the lightest grey that passes. */
    @Test
    void contrastIsThatOfTheGuidelines() {
        assertThat(Palette.contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
        assertThat(Palette.contrast("#767676", "#ffffff")).isCloseTo(4.54, within(0.005));
        assertThat(Palette.contrast("#777777", "#ffffff")).isCloseTo(4.48, within(0.005));
    }

    @Test
    void changesTheColoursThatAreNamed() {
        Palette changed = Palette.LIGHT.with(Map.of("treated", "#5b2a86"));
        assertThat(changed.of(Theme.TREATED)).isEqualTo("#5b2a86");
        assertThat(changed.of(Theme.INK)).isEqualTo(Theme.INK.light());
        assertThat(changed.resolved("fill=\"var(--treated)\"")).isEqualTo("fill=\"#5b2a86\"");
    }

    @Test
    void refusesWhatCannotBeReadOrIsNoColour() {
        assertThatThrownBy(() -> Palette.LIGHT.with(Map.of("treated", "#dddddd")))
                .hasMessageContaining("treated on paper has a contrast of 1.3 : 1 in the light");
        assertThatThrownBy(() -> Palette.DARK.with(Map.of("treeted", "#dddddd")))
                .hasMessageContaining("'treeted' is none of the colours paper, sheet");
        assertThatThrownBy(() -> Palette.DARK.with(Map.of("ink", "green")))
                .hasMessageContaining("ink is 'green', must be a colour such as #0b5d66");
    }
}
