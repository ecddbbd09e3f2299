package org.twinbar.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LabelledTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "force_N|force|N",
                "force (N)|force|N",
                "force [N]|force|N",
                "force, N|force|N",
                "force,N|force|N",
                "force / N|force|N",
                "Force(kN)|Force|kN",
                "  force_N |force|N",
                "width_1_mm|width_1|mm",
                "width_2_mm|width_2|mm",
                "width 1 (mm)|width 1|mm",
                "strength_before_MPa|strength_before|MPa",
                "peak_force_N|peak_force|N",
                "force_per_mass_N_per_g|force_per_mass|N/g",
                "control_loss_g_per_h|control_loss|g/h",
                "compliance_mm_per_N|compliance|mm/N",
                "impact_strength_kJ_per_m2|impact_strength|kJ/m²",
                "impact_resistance_J_per_m|impact_resistance|J/m",
                "ramp_C_per_min|ramp|°C/min",
                "moment_Nm|moment|N·m",
                "strain_at_break_percent|strain_at_break|%",
                "release_angle_deg|release_angle|°",
                "area_mm2|area|mm²",
                "Temp. [°C]|Temp.|°C",
                "centre_of_mass_mm|centre_of_mass|mm",
                "Zeit (s)|Zeit|s",
                "stress (true) [MPa]|stress (true)|MPa",
                "slope (1/K)|slope|1/K"
            })
    void takesUnitFromTheHeader(String header, String name, String symbol) {
        Labelled labelled = Labelled.parse(header);
        assertThat(labelled.name()).isEqualTo(name);
        assertThat(labelled.unit()).contains(Unit.of(symbol));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "specimen",
                "curve_file",
                "print_run",
                "width_1",
                "Load cell 1",
                "force_",
                "broke_at",
                "note (left)",
                "group,",
                "strength_MPa_own_u",
                "leak_free",
                "_N",
                "(N)",
                "N",
                "force ()",
                "w / o"
            })
    void leavesHeaderWithoutUnitWhole(String header) {
        assertThat(Labelled.parse(header))
                .isEqualTo(new Labelled(header, java.util.Optional.empty()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"strain (-)", "strain [1]", "strain / 1"})
    void readsPlainNumbersAsSuch(String header) {
        assertThat(Labelled.parse(header))
                .isEqualTo(new Labelled("strain", java.util.Optional.of(Unit.ONE)));
    }
}
