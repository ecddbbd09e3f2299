package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GlyphsTest {

    private static final Panel GRIP = new Panel("in the grip", new Point(-70, 0), 28, 18);

    private static Stream<Character> signs() {
        return Glyphs.all().keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("signs")
    void standsWithinItsHeightAndRunsLeftwards(char sign) {
        Glyphs.Glyph glyph = Glyphs.all().get(sign);
        for (List<Point> line : lines(glyph)) {
            assertThat(Polygons.area(line)).isPositive();
            assertThat(line).allSatisfy(it -> {
                assertThat(it.x()).isBetween(0.0, glyph.width());
                assertThat(it.y()).isBetween(0.0, Glyphs.HEIGHT);
            });
        }
    }

    /** Every stroke and gap: a corner keeps off the edges that do not meet it. */
    @ParameterizedTest
    @MethodSource("signs")
    void keepsStrokesAndGapsThatANozzleCanDraw(char sign) {
        List<List<Point>> lines = lines(Glyphs.all().get(sign));
        for (List<Point> line : lines) {
            for (Point corner : line) {
                for (List<Point> other : lines) {
                    for (int i = 0; i < other.size(); i++) {
                        Point from = other.get(i);
                        Point to = other.get((i + 1) % other.size());
                        if (isFarAlong(line, corner, from) && isFarAlong(line, corner, to)) {
                            assertThat(distance(corner, from, to))
                                    .as("%s from %s to %s", corner, from, to)
                                    .isGreaterThanOrEqualTo(0.7 * Glyphs.STROKE);
                        }
                    }
                }
            }
        }
    }

    @Test
    void hasAllLettersAndFigures() {
        assertThat(Glyphs.all().keySet())
                .containsAll("ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-."
                        .chars()
                        .mapToObj(it -> (char) it)
                        .toList());
    }

    /** By hand: L is a stem of 10 × 2 and a foot of 4 × 2; H two stems and a bar of 2 × 2. */
    @Test
    void measuresLettersAsByHand() {
        Lettering text = Lettering.of("lh", GRIP);
        double unit = text.stroke() / 2;
        assertThat(text.code()).isEqualTo("LH");
        assertThat(text.area()).isCloseTo((28 + 44) * unit * unit, within(1e-9));
        assertThat(text.length()).isCloseTo((32 + 44 + 4) * unit, within(1e-9));
    }

    @Test
    void turnsACodeAcrossWhereThereItIsLarger() {
        Panel tall = new Panel("at the end", new Point(0, 0), 7, 9);
        assertThat(Lettering.of("A123", tall).stroke())
                .isGreaterThan(Lettering.of("A123", new Panel("", new Point(0, 0), 7, 7))
                        .stroke());
        for (Lettering.Sign sign : Lettering.of("A123", tall).signs()) {
            assertThat(sign.outer()).allSatisfy(it -> {
                assertThat(it.x()).isBetween(-3.5 - 1e-9, 3.5 + 1e-9);
                assertThat(it.y()).isBetween(-4.5 - 1e-9, 4.5 + 1e-9);
            });
        }
    }

    @Test
    void refusesWhatCannotBeDrawnInOneSentence() {
        refuses("", "A code needs at least one letter or figure.");
        refuses("A/7", "The code 'A/7' has '/', and only A to Z, 0 to 9, - and . can be drawn.");
        refuses(
                "A0123456789012345678",
                "The code 'A0123456789012345678' is 31.2 mm long at strokes of 0.4 mm, and there"
                        + " are 28 mm in the grip.");
        Shape cup = StandardShapes.named("cup-one-wall").orElseThrow();
        assertThatThrownBy(() -> cup.lettered("A1", Solid.Relief.ENGRAVED))
                .isInstanceOf(ShapeException.class)
                .hasMessageContaining("would thin what is to be tight");
        Shape bar = StandardShapes.named("bar-80x10x4").orElseThrow();
        Lettering code = Lettering.of("A1", bar.panel());
        assertThatThrownBy(() -> new Solid.Lettered(bar.solid(), code, Solid.Relief.ENGRAVED, 2.5))
                .isInstanceOf(ShapeException.class)
                .hasMessage("The code may be engraved by at most 2 mm here, not by 2.5 mm.");
    }

    private static void refuses(String code, String sentence) {
        assertThatThrownBy(() -> Lettering.of(code, GRIP))
                .isInstanceOf(ShapeException.class)
                .hasMessage(sentence);
    }

    private static List<List<Point>> lines(Glyphs.Glyph glyph) {
        List<List<Point>> lines = new ArrayList<>(glyph.counters());
        lines.add(glyph.outer());
        return lines;
    }

    /** Whether two corners of a line are more than one edge apart, or on different lines. */
    private static boolean isFarAlong(List<Point> line, Point one, Point other) {
        int apart = Math.abs(line.indexOf(one) - line.indexOf(other));
        return !line.contains(other) || (apart > 1 && apart < line.size() - 1);
    }

    private static double distance(Point place, Point from, Point to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double share = ((place.x() - from.x()) * x + (place.y() - from.y()) * y) / (x * x + y * y);
        double within = Math.max(0, Math.min(1, share));
        return Math.hypot(place.x() - from.x() - within * x, place.y() - from.y() - within * y);
    }
}
