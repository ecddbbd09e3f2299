package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;

class MixedTest {

    private static final Words BREAK =
            new Words("break_type", "Type of break", List.of("C", "H", "N")).apart();
    private static final Words COLOUR = new Words("colour", "Colour", List.of());

    private static final Description DESCRIPTION = new Description(
            "tried",
            1,
            "Tried",
            "none",
            List.of(Ask.optional("How?", List.of(BREAK)), Ask.optional("Which?", List.of(COLOUR))),
            List.of(),
            List.of(),
            List.of(Property.of("energy", "Energy", "J", Property.Scale.RATIO)),
            List.of());

    private static List<Readings> broken(String... types) {
        return Arrays.stream(types)
                .map(type -> Readings.of(type, "plain", Bench.usual())
                        .word(BREAK, type)
                        .word(COLOUR, "red of " + type)
                        .build())
                .toList();
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
        List<Readings> silent = List.of(Readings.of("A", "plain", Bench.usual()).build());
        assertThat(Mixed.among(DESCRIPTION, silent)).isEmpty();
    }
}
