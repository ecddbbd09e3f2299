package org.twinbar.specimen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class BedTest {

    @Test
    void laysOutRowByRowFromTheFront() {
        List<Bed.Spot> spots = new Bed(220, 220, 5).lay(bars(4, 80, 10));
        assertThat(spots)
                .containsExactly(
                        new Bed.Spot(1, 5, 5, false),
                        new Bed.Spot(2, 90, 5, false),
                        new Bed.Spot(3, 5, 20, false),
                        new Bed.Spot(4, 90, 20, false));
    }

    @Test
    void turnsSpecimensWhereOnlySoTheyFit() {
        assertThat(new Bed(100, 200, 5).lay(bars(3, 170, 20))).allMatch(Bed.Spot::isTurned);
        assertThat(new Bed(180, 30, 5).lay(bars(1, 170, 20))).noneMatch(Bed.Spot::isTurned);
    }

    /** By hand: 220 = 5 + n·(20 + 5) holds eight rows of one bar 170 long. */
    @Test
    void holdsAsManyAsByHandAndNoMore() {
        Bed bed = new Bed(220, 220, 5);
        assertThat(bed.lay(bars(8, 170, 20))).hasSize(8);
        assertThatThrownBy(() -> bed.lay(bars(9, 170, 20)))
                .isInstanceOf(ShapeException.class)
                .hasMessage("A bed of 220 by 220 mm holds 8 of the 9 specimens; the next is 170 by"
                        + " 20 mm with 5 mm around it: print them in runs of at most 8.");
        assertThatThrownBy(() -> new Bed(100, 100, 5).lay(bars(1, 170, 20)))
                .hasMessageEndingWith("try another orientation.");
    }

    /** By hand: a row is as deep as the plate in it, and the next begins behind that. */
    @Test
    void laysOutDifferentSpecimensInTheirOrder() {
        List<Bed.Footprint> mixed = List.of(
                new Bed.Footprint(80, 10), new Bed.Footprint(60, 60), new Bed.Footprint(80, 10));
        assertThat(new Bed(160, 100, 5).lay(mixed))
                .containsExactly(
                        new Bed.Spot(1, 5, 5, false),
                        new Bed.Spot(2, 90, 5, false),
                        new Bed.Spot(3, 5, 70, false));
    }

    @Test
    void overlapsNothingAndStaysOnTheBed() {
        for (double gap : new double[] {0.1, 3, 17}) {
            Bed bed = new Bed(235, 190, gap);
            double x = 31.7;
            double y = 12.3;
            List<Bed.Spot> spots = bed.lay(bars(12, x, y));
            for (Bed.Spot one : spots) {
                assertThat(one.x()).isBetween(gap, 235 - gap - x);
                assertThat(one.y()).isBetween(gap, 190 - gap - y);
                for (Bed.Spot other : spots) {
                    boolean apart = Math.abs(one.x() - other.x()) >= x + gap - 1e-9
                            || Math.abs(one.y() - other.y()) >= y + gap - 1e-9;
                    assertThat(apart || one.equals(other)).isTrue();
                }
            }
        }
    }

    @Test
    void refusesBedsThatAreNone() {
        for (double side : new double[] {0, -1, Double.NaN, 3000}) {
            assertThatThrownBy(() -> new Bed(side, 200, 5))
                    .isInstanceOf(ShapeException.class)
                    .hasMessageStartingWith("The length of the bed must lie above 0 mm");
        }
    }

    private static List<Bed.Footprint> bars(int count, double length, double width) {
        return Collections.nCopies(count, new Bed.Footprint(length, width));
    }
}
