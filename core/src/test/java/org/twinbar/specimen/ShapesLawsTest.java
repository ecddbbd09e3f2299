package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of every standard shape and its mesh. */
class ShapesLawsTest {

    private static final Map<Form, Map<String, Double>> OWN = Map.of(
            Form.BAR, Map.of("length", 100.0, "width", 6.5),
            Form.DISC, Map.of("diameter", 25.0),
            Form.PLATE, Map.of("thickness", 0.8),
            Form.CUP, Map.of("wall", 0.9, "height", 120.0),
            Form.BOX, Map.of("width", 30.0, "head_of_water", 40.0));

    private static Stream<Shape> shapes() {
        return Stream.concat(
                StandardShapes.all().stream(),
                OWN.entrySet().stream().map(it -> it.getKey().of(it.getValue())));
    }

    /** Codes that between them have every sign, none, one or two islands, and both directions. */
    private static Stream<Arguments> coded() {
        return shapes().flatMap(shape -> Stream.of("A07", "B888", "MW", "-Q.")
                .flatMap(code -> Stream.of(Solid.Relief.values())
                        .filter(it -> it == Solid.Relief.RAISED
                                || shape.usualRelief() == Solid.Relief.ENGRAVED)
                        .map(relief -> Arguments.of(shape, code, relief))));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void enclosesOneBodyWithoutAHoleAndNeverCutsThroughItself(Shape shape) {
        Mesh mesh = shape.solid().mesh(0.01);
        assertThat(mesh.eulerCharacteristic()).isEqualTo(2);
        assertThat(Crossings.of(mesh)).isEqualTo(new Crossings(0, Crossings.Extent.WHOLE));
    }

    @ParameterizedTest
    @MethodSource("coded")
    void carriesItsCodeAndStaysOneClosedBody(Shape shape, String code, Solid.Relief relief) {
        Solid.Lettered lettered = shape.lettered(code, relief);
        Mesh mesh = lettered.mesh(0.01);
        assertThat(Soundness.of(mesh)).isEqualTo(new Soundness(0, 0, 0, 0));
        assertThat(mesh.eulerCharacteristic()).isEqualTo(2);
        assertThat(Crossings.of(mesh).pairs()).isZero();
        assertThat(lettered.lettering().stroke()).isBetween(0.4, 1.2);
        // The arcs are rounded alike with and without the code.
        Mesh plain = shape.solid().mesh(0.01);
        double more = relief == Solid.Relief.RAISED ? 1 : -1;
        assertThat(mesh.volume() - plain.volume())
                .isCloseTo(
                        more * lettered.lettering().area() * lettered.depth(),
                        within(1e-10 * plain.volume()));
        assertThat(mesh.area() - plain.area())
                .isCloseTo(
                        lettered.lettering().length() * lettered.depth(),
                        within(1e-10 * plain.area()));
        assertThat(lettered.volume() - shape.solid().volume())
                .isCloseTo(mesh.volume() - plain.volume(), within(1e-10 * plain.volume()));
    }

    /** Whatever is loaded or measured lies beside the code. */
    @ParameterizedTest
    @MethodSource("shapes")
    void keepsItsCodeOffThePlacesThatAreMeasured(Shape shape) {
        Panel panel = shape.panel();
        for (Point place : shape.places()) {
            boolean within = Math.abs(place.x() - panel.centre().x()) <= panel.length() / 2
                    && Math.abs(place.y() - panel.centre().y()) <= panel.width() / 2;
            assertThat(within).as("%s", place).isFalse();
        }
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
