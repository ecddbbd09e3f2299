package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

class FormTest {

    @Test
    void isTheStandardShapeAtItsUsualSizes() {
        for (Form form : Form.values()) {
            Shape own = form.of(Map.of());
            assertThat(StandardShapes.all())
                    .anySatisfy(it -> assertThat(it.measures()).isEqualTo(own.measures()));
        }
    }

    @Test
    void takesOnesOwnSizes() {
        Shape bar = Form.BAR.of(Map.of("Length", 100.0));
        assertThat(bar.name()).isEqualTo("bar-100x10x4");
        assertThat(bar.solid().volume()).isCloseTo(4000, within(1e-9));
        Shape cup = Form.CUP.of(Map.of("outer_diameter", 30.0, "head_of_water", 60.0));
        double byHand = Math.PI * (15 * 15 * 110 - 14.55 * 14.55 * (110 - 1.2));
        assertThat(cup.solid().volume()).isCloseTo(byHand, within(1e-9));
        assertThat(Form.named(" Cup ")).contains(Form.CUP);
        assertThat(Form.named("cone")).isEmpty();
    }

    @Test
    void isFoundAgainByTheNameOfItsSizes() {
        for (Form form : Form.values()) {
            Shape own = form.of(Map.of(form.usual().get(0).name(), 33.5));
            assertThat(StandardShapes.named(own.name()))
                    .hasValueSatisfying(it -> assertThat(it.measures()).isEqualTo(own.measures()));
        }
        assertThat(StandardShapes.named("cup-40x50x0.45x1.2"))
                .as("filled to the rim")
                .hasValueSatisfying(it -> assertThat(it.measures())
                        .contains(new Shape.Measure("head of water", 48.8)));
        assertThat(StandardShapes.named("bar-100x12")).isEmpty();
        assertThat(StandardShapes.named("bar-0x12x4")).isEmpty();
        assertThat(StandardShapes.named("bar of soap")).isEmpty();
    }

    @Test
    void refusesInOneSentence() {
        refuses(
                Form.BAR,
                Map.of("diameter", 5.0),
                "A bar has no 'diameter'; its sizes are length, width, thickness.");
        refuses(
                Form.DISC,
                Map.of("thickness", -1.0),
                "The thickness must lie above 0 mm and up to 1000 mm, not at -1.0 mm.");
        refuses(
                Form.CUP,
                Map.of("height", 80.0),
                "A head of water of 100 mm does not fit into a depth of 78.8 mm.");
        refuses(
                Form.BOX,
                Map.of("wall", 30.0),
                "The width between the walls (mm) must be above zero and finite, not 0.0.");
    }

    private static void refuses(Form form, Map<String, Double> sizes, String sentence) {
        assertThatThrownBy(() -> form.of(sizes))
                .isInstanceOf(ShapeException.class)
                .hasMessage(sentence);
    }
}
