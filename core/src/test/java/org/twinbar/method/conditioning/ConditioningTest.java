package org.twinbar.method.conditioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;

class ConditioningTest {

    private static Optional<Finding> unknown(String method) {
        return Conditioning.unknown(
                Methods.builtIn().named(method).orElseThrow().description());
    }

    @Test
    void isAskedWhereMoistureSoftens() {
        for (String method : List.of("tensile", "flexure", "impact", "hardness")) {
            assertThat(unknown(method)).as(method).get().satisfies(finding -> {
                assertThat(finding.code()).isEqualTo("conditioning-unknown");
                assertThat(finding.text()).contains("88 hours at 23 °C and 50 % of humidity");
            });
        }
        assertThat(unknown("leak")).isEmpty();
    }
}
