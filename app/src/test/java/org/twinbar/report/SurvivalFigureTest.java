package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SurvivalFigureTest {

    private static String drawn(Survival.Time... times) {
        return Figures.survival(new Survival(
                "Time in h",
                "Still dry",
                List.of(Pictures.survived("plain", Sign.CONTROL, List.of(times)))));
    }

    /** The line between two looks is nobody's knowledge: the area is hatched, the point says so. */
    @Test
    void saysBetweenWhichLooksItHappened() {
        Survival.Time end = new Survival.Time("P3", 24, Survival.End.WATCHING_ENDED);
        String looks = drawn(
                new Survival.Time("P1", 2, 4, Survival.End.HAPPENED),
                new Survival.Time("P2", 8, 12, Survival.End.HAPPENED),
                end);
        assertThat(looks).contains("P1: between 2 and 4").contains("P3: not by 24");
        String moments = drawn(
                new Survival.Time("P1", 4, Survival.End.HAPPENED),
                new Survival.Time("P2", 12, Survival.End.HAPPENED),
                end);
        assertThat(moments).contains("P1: 4");
        assertThat(lines(looks)).isGreaterThan(lines(moments) + 5);
    }

    private static int lines(String svg) {
        return svg.split("<line", -1).length;
    }
}
