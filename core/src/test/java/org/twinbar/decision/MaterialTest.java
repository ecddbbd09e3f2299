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
                Optional.of(new SectionGain(expected, u)));
    }

    @Test
    void showsNoGainOfTheMaterialWhereTheSectionExplainsIt() {
        Material material = material(ratio(1.11, 1.08, 1.14), 1.12, 0);
        assertThat(material.words())
                .isEqualTo(
                        "Per part: 11\u2009% more (+8 to +14\u2009%). The added section alone explains"
                                + " 12\u2009% more (+12 to +12\u2009%). Beyond it there are −4 to +1.8\u2009%: no"
                                + " gain of the material is shown.");
    }

    @Test
    void showsTheMaterialWhereTheGainGoesBeyond() {
        Material material = material(ratio(1.40, 1.34, 1.46), 1.12, 0.01);
        Material.Gain excess = material.excess().orElseThrow();
        assertThat(excess.ratio()).isCloseTo(1.25, within(1e-12));
        assertThat(excess.low().orElse(0)).isGreaterThan(1);
        assertThat(material.words()).contains("the material does more than its section");
        assertThat(material(ratio(1.02, 1.00, 1.04), 1.30, 0.02).words()).contains("falls short");
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
