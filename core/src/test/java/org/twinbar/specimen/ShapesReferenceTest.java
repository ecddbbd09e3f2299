package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

/** METHODS.md A.3, rows 170 and 174 of section M. */
class ShapesReferenceTest {

    private static final Map<String, String> MEASURES = Map.of(
            "l1", "parallel length",
            "l2", "distance between the tabs",
            "l3", "overall length",
            "b1", "width of the middle",
            "l0", "gauge length");

    private final Checks checks = Checks.of(getClass());

    @Test
    void agreesOnTheSizesOfTensileBars() {
        for (String type : List.of("1a", "1b", "1ba", "5a")) {
            MEASURES.forEach((symbol, name) -> checks.row("174-%s-%s".formatted(type, symbol))
                    .expects(measure("iso527-" + type, name)));
        }
        checks.row("a3-d638-iv-tabs").expects(measure("d638-iv", "distance between the tabs"));
        checks.row("a3-d638-i-w").expects(measure("d638-i", "width of the middle"));
        checks.row("a3-d638-v-w").expects(measure("d638-v", "width of the middle"));
    }

    /** Row 170: longest along z, second along x, shortest along y is ZXY. */
    @Test
    void namesOrientationsAsTheStandardDoes() {
        Mesh lying = StandardShapes.named("bar-80x10x4").orElseThrow().solid().mesh(0.01);
        assertThat(PrintOrientation.name(PrintOrientation.FLAT.turn(lying))).isEqualTo("XYZ");
        assertThat(PrintOrientation.name(PrintOrientation.EDGE.turn(lying))).isEqualTo("XZY");
        assertThat(PrintOrientation.name(PrintOrientation.UPRIGHT.turn(lying))).isEqualTo("ZXY");
    }

    private static double measure(String shape, String name) {
        return StandardShapes.named(shape).orElseThrow().measures().stream()
                .filter(it -> it.name().equals(name))
                .findFirst()
                .orElseThrow()
                .millimetres();
    }
}
