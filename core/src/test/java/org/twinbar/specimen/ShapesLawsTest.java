package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every standard shape and its mesh. */
class ShapesLawsTest {

    private static Stream<Shape> shapes() {
        return StandardShapes.all().stream();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void isClosedAndOrientedInEveryOrientation(Shape shape) {
        Mesh lying = shape.solid().mesh(0.01);
        for (PrintOrientation orientation : PrintOrientation.values()) {
            Mesh mesh = orientation.turn(lying);
            assertThat(Soundness.of(mesh)).isEqualTo(new Soundness(0, 0, 0, 0));
            assertThat(mesh.volume()).isCloseTo(lying.volume(), within(1e-9 * lying.volume()));
            assertThat(mesh.area()).isCloseTo(lying.area(), within(1e-9 * lying.area()));
            assertThat(mesh.box().least()).isEqualTo(new Mesh.Place(0, 0, 0));
        }
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void agreesWithTheClosedFormTheCloserTheFinerItIs(Shape shape) {
        double before = Double.POSITIVE_INFINITY;
        for (double chordError : new double[] {0.1, 0.01, 0.001, 0.0001}) {
            Mesh mesh = shape.solid().mesh(chordError);
            double off = Math.abs(mesh.volume() / shape.solid().volume() - 1);
            assertThat(off).isLessThanOrEqualTo(Math.max(before, 1e-12));
            before = off;
        }
        Mesh fine = shape.solid().mesh(0.0001);
        assertThat(fine.volume()).isCloseTo(shape.solid().volume(), relatively(shape, 2e-4));
        assertThat(fine.area())
                .isCloseTo(shape.solid().area(), within(2e-5 * shape.solid().area()));
    }

    /** A chord leaves its arc by less than e over its whole length, so the ends' area by e·L. */
    @ParameterizedTest
    @MethodSource("shapes")
    void staysWithinTheChordError(Shape shape) {
        if (shape.solid() instanceof Solid.Prism prism) {
            double off =
                    prism.mesh(0.05).volume() / prism.height() - prism.outline().area();
            assertThat(Math.abs(off)).isLessThanOrEqualTo(0.05 * prism.outline().length());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 20, 61.7})
    void givesTheAreaAndLengthOfACircle(double diameter) {
        Outline circle = Outline.circle(diameter);
        assertThat(circle.area())
                .isCloseTo(Math.PI * diameter * diameter / 4, within(1e-9 * diameter));
        assertThat(circle.length()).isCloseTo(Math.PI * diameter, within(1e-9 * diameter));
    }

    /** A bar with two fillets of radius r: its area is that of rectangles and circle segments. */
    @Test
    void givesTheAreaOfADumbbellByHand() {
        Dumbbell bar = new Dumbbell(170, 80, 20, 10, 24, 0);
        double turn = StrictMath.acos(1 - 5.0 / 24);
        double shoulder = 24 * StrictMath.sin(turn);
        // Below the fillet's chordless side: ∫(5 + 24 − √(24² − x²)) dx over the shoulder.
        double quarter = (5 + 24) * shoulder
                - (shoulder * Math.sqrt(24 * 24 - shoulder * shoulder) / 2 + 24 * 24 * turn / 2);
        double byHand = 80 * 10 + (170 - 80 - 2 * shoulder) * 20 + 4 * quarter;
        assertThat(bar.outline().area()).isCloseTo(byHand, within(1e-9));
    }

    private static org.assertj.core.data.Offset<Double> relatively(Shape shape, double part) {
        return within(part * shape.solid().volume());
    }
}
