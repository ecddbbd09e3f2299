package org.twinbar.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.twinbar.specimen.SectionGain;

class MaterialTest {

    private static Found ratio(double estimate, double low, double high) {
        return new Found(
                Effect.RATIO,
                Amount.of(estimate),
                Amount.of(low),
                Amount.of(high),
                0.95,
                Amount.of(8),
                "Fieller, unequal spread",
                Amount.of(0.01));
    }

    private static Material material(Found part, double expected, double u) {
        return Material.of(
                new Material.OnBasis("per part", part),
                List.of(),
                Optional.of(new SectionGain(expected, u, Double.POSITIVE_INFINITY)));
    }

    @Test
    void showsNoGainOfTheMaterialWhereTheSectionExplainsIt() {
        Material material = material(ratio(1.11, 1.079, 1.141), 1.12, 0);
        assertThat(material.words())
                .isEqualTo("Per part: 11\u2009% more (8 to 14\u2009%). The added section alone"
                        + " explains about 12\u2009% more, if it carries as the part does."
                        + " Beyond it there are −3.7 to +1.9\u2009%: no gain of the material is"
                        + " shown.");
    }

    @Test
    void showsTheMaterialWhereTheGainGoesBeyond() {
        Material material = material(ratio(1.40, 1.34, 1.46), 1.12, 0.01);
        Material.Gain excess = material.excess().orElseThrow();
        assertThat(excess.ratio()).isCloseTo(1.25, within(1e-12));
        assertThat(excess.low().orElse(0)).isGreaterThan(1);
        assertThat(material.words()).contains("the material does more than its section");
        assertThat(material(ratio(1.02, 1.00, 1.04), 1.30, 0).words())
                .contains("The gain falls short of it by 20.0 to 23.1\u2009%: ");
    }

    @Test
    void widensByWhatIsNotKnownOfTheSection() {
        Found part = ratio(1.11, 1.08, 1.14);
        Material.Gain sure = material(part, 1.12, 0).excess().orElseThrow();
        Material.Gain unsure = material(part, 1.12, 0.03).excess().orElseThrow();
        assertThat(unsure.low().orElse(0)).isLessThan(sure.low().orElse(0));
        assertThat(unsure.high().orElse(0)).isGreaterThan(sure.high().orElse(0));
        // Without an uncertainty of the section the excess is the measured interval over it.
        assertThat(sure.low().orElse(0)).isCloseTo(1.08 / 1.12, within(1e-12));
        assertThat(sure.high().orElse(0)).isCloseTo(1.14 / 1.12, within(1e-12));
    }

    @Test
    void showsDigitsThatDifferOrSaysAbout() {
        assertThat(material(ratio(1.08, 1.079, 1.081), 1.0803, 0.0002).words())
                .startsWith("Per part: 8.00\u2009% more (7.90 to 8.10\u2009%). The added section"
                        + " alone explains 8.03\u2009% more (7.99 to 8.07\u2009%)");
        assertThat(material(ratio(1.08, 1.079, 1.081), 1.08, 1e-6).words())
                .contains("explains about 8\u2009% more,");
        assertThat(material(ratio(1.11, 1.08, 1.14), 1.0795, 0).words())
                .contains("The gain goes beyond it by 0.05 to 5.60\u2009%");
        assertThat(material(ratio(0.9, 0.85, 0.95), 0.97, 0.01).words())
                .startsWith("Per part: 10\u2009% less (5 to 15\u2009% less). The added section"
                        + " alone explains 3.0\u2009% less (1.0 to 5.0\u2009% less)");
    }

    /** t of 4 degrees of freedom is 2.776 where the normal distribution has 1.960. */
    @Test
    void widensByFewSpecimensOfTheSection() {
        Found part = ratio(1.11, 1.08, 1.14);
        SectionGain few = new SectionGain(1.12, 0.01, 4);
        Material.Gain gain = Material.of(
                        new Material.OnBasis("per part", part), List.of(), Optional.of(few))
                .expected()
                .orElseThrow();
        assertThat(gain.high().orElse(0)).isCloseTo(1.12 + 2.7764451051977934e-2, within(1e-12));
        assertThatThrownBy(() -> new SectionGain(1.1, 0.1, 0))
                .hasMessageContaining("degrees of freedom");
    }

    @Test
    void needsRatios() {
        Found difference = new Found(
                Effect.DIFFERENCE,
                Amount.of(1),
                Amount.of(0),
                Amount.of(2),
                0.95,
                Amount.of(8),
                "Welch",
                Amount.of(0.05));
        assertThatThrownBy(() -> material(difference, 1.1, 0))
                .isInstanceOf(QuestionException.class);
    }
}
