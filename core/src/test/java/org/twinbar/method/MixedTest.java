package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MixedTest {

    private static final Words BREAK =
            new Words("break_type", "Type of break", List.of("C", "H", "N")).apart();
    private static final Words LOAD =
            new Words("oven_load", "Which were together", List.of()).block();
    private static final Words COLOUR = new Words("colour", "Colour", List.of());

    private static final Description DESCRIPTION = new Description(
            "tried",
            1,
            "Tried",
            "none",
            List.of(
                    Ask.optional("How?", List.of(BREAK)),
                    Ask.optional("Which?", List.of(COLOUR)),
                    Ask.optional("Where?", List.of(LOAD))),
            List.of(),
            List.of(),
            List.of(Property.of("energy", "Energy", "J", Property.Scale.RATIO)),
            List.of());

    private static List<Mixed.Noted> broken(String... types) {
        return Arrays.stream(types)
                .map(type -> new Mixed.Noted(
                        "plain", Map.of("break_type", type, "colour", "red of " + type)))
                .toList();
    }

    private static Mixed.Noted heated(String group, String load) {
        return new Mixed.Noted(group, Map.of("oven_load", load));
    }

    @Test
    void typesOfBreakAreNotMixedInOneMean() {
        assertThat(Mixed.among(DESCRIPTION, broken("C", "H", "C", "C")))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("mixed-specimens");
                    assertThat(finding.text())
                            .startsWith("Type of break differs between the specimens (C 3, H 1)");
                });
    }

    @Test
    void alikeOrNotNotedIsNothingToSay() {
        assertThat(Mixed.among(DESCRIPTION, broken("C", "C"))).isEmpty();
        assertThat(Mixed.among(DESCRIPTION, List.of(new Mixed.Noted("plain", Map.of()))))
                .isEmpty();
    }

    @Test
    void groupsThatShareNoLoadCannotBeToldFromTheirLoads() {
        assertThat(Mixed.among(
                        DESCRIPTION,
                        List.of(
                                heated("coated", "A"),
                                heated("coated", "A"),
                                heated("plain", "B"))))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.code()).isEqualTo("group-is-block");
                    assertThat(finding.text())
                            .startsWith(
                                    "No two groups have one oven load in common (A: coated, B: plain)");
                });
        assertThat(Mixed.among(
                        DESCRIPTION,
                        List.of(heated("coated", "A"), heated("plain", "A"), heated("plain", "B"))))
                .isEmpty();
        assertThat(Mixed.among(DESCRIPTION, List.of(heated("coated", "A"), heated("coated", "B"))))
                .isEmpty();
    }
}
