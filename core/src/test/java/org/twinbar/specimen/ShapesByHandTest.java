package org.twinbar.specimen;

import static java.lang.Math.PI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Volume and area of every standard shape by school geometry, from the sizes of METHODS.md A.3 and
 * B typed again: nothing here knows how the shapes are drawn.
 */
class ShapesByHandTest {

    /** Half of the notch's angle of 45°. */
    private static final double FLANK = PI / 8;

    @ParameterizedTest
    @CsvSource({
        "iso527-1a, 170, 80, 20, 10, 24, 0, 4",
        "iso527-1b, 150, 60, 20, 10, 60, 0, 4",
        "iso527-5a, 75, 25, 12.5, 4, 12.5, 8, 2",
        "d638-i, 165, 57, 19, 13, 76, 0, 3.2",
        "d638-iv, 115, 33, 19, 6, 14, 25, 3.2",
        "d638-v, 63.5, 9.53, 9.53, 3.18, 12.7, 0, 3.2",
        // The radius of 1BA puts the tabs 58 mm apart: (14² + 2.5²)/5.
        "iso527-1ba, 75, 30, 10, 5, 40.45, 0, 2",
    })
    void measuresTensileBars(
            String name,
            double overall,
            double parallel,
            double wide,
            double narrow,
            double inner,
            double outer,
            double thick) {
        double step = (wide - narrow) / 2;
        double turn = Math.acos(1 - step / (inner + outer));
        double shoulder = (inner + outer) * Math.sin(turn);
        double bend = inner * Math.sin(turn);
        // The half width leaves the middle as a circle, and where there is an outer radius goes on
        // as another one up to the end.
        double half = narrow / 2 * bend
                + inner * bend
                - belowCircle(inner, bend)
                + (wide / 2 - outer) * (shoulder - bend)
                + belowCircle(outer, shoulder - bend);
        double ends = overall - parallel - 2 * shoulder;
        double section = parallel * narrow + ends * wide + 4 * half;
        double line = 2 * parallel + 2 * ends + 2 * wide + 4 * (inner + outer) * turn;
        isPrism(name, section, line, thick);
    }

    @Test
    void measuresBarsAndTheirNotches() {
        isPrism("bar-80x10x4", 800, 180, 4);
        isPrism("bar-63.5x12.7x3.2", 63.5 * 12.7, 2 * (63.5 + 12.7), 3.2);
        isPrism("bar-80x10x4-mark", 800 - 0.16, 180 - 0.8 + 0.8 * Math.sqrt(2), 4);
        double radius = 0.25;
        double depth = 2 - radius + radius / Math.sin(FLANK);
        double tip = radius * radius * (1 / Math.tan(FLANK) - (PI / 2 - FLANK));
        double flank = depth / Math.cos(FLANK) - radius / Math.tan(FLANK);
        isPrism(
                "bar-80x10x4-notch",
                800 - (depth * depth * Math.tan(FLANK) - tip),
                180 - 2 * depth * Math.tan(FLANK) + 2 * flank + radius * (PI - 2 * FLANK),
                4);
    }

    @Test
    void measuresDiscsPlatesAndVessels() {
        isPrism("disc-50x3", PI * 625, PI * 50, 3);
        isPrism("plate-60x60x2", 3600, 240, 2);
        is(
                "cup-one-wall",
                PI / 4 * (1600 * 110 - 39.1 * 39.1 * 108.8),
                PI * (800 + 40 * 110 + 39.1 * 108.8));
        is("box-60x60x60", 216_000 - 57.6 * 57.6 * 58.8, 7200 + 4 * 60 * 60 + 4 * 57.6 * 58.8);
    }

    @Test
    void leavesNoShapeOut() {
        Set<String> others = new HashSet<>();
        StandardShapes.all().forEach(it -> others.add(it.name()));
        others.removeIf(it -> it.matches(
                "iso527-(1a|1b|1ba|5a)|d638-(i|iv|v)|bar-.*|disc-50x3|plate-60x60x2|cup-one-wall"
                        + "|box-60x60x60"));
        assertThat(others).isEmpty();
    }

    /** ∫√(r² − x²) from 0. */
    private static double belowCircle(double radius, double to) {
        return radius == 0
                ? 0
                : (to * Math.sqrt(radius * radius - to * to)
                                + radius * radius * Math.asin(to / radius))
                        / 2;
    }

    private static void isPrism(String name, double section, double line, double thick) {
        is(name, section * thick, 2 * section + line * thick);
    }

    private static void is(String name, double volume, double area) {
        Solid solid = StandardShapes.named(name).orElseThrow().solid();
        assertThat(solid.volume()).isCloseTo(volume, within(1e-10 * volume));
        assertThat(solid.area()).isCloseTo(area, within(1e-10 * area));
    }
}
