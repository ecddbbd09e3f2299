package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SurvivalFigureTest {

    /**
     * The 6-mercaptopurine group of Freireich et al. (1963), the usual worked example of the
     * product-limit estimate: 6, 6, 6, 6+, 7, 9+, 10, 10+, 11+, 13, 16, 17+, 19+, 20+, 22, 23, 25+,
     * 32+, 32+, 34+, 35+ weeks give 0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448 (as R's
     * survival::survfit prints them).
     */
    @Test
    void stepsAsTheWorkedExampleDoes() {
        double[] happened = {6, 6, 6, 7, 10, 13, 16, 22, 23};
        double[] watched = {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35};
        List<Survival.Time> times = new ArrayList<>();
        for (double time : happened) {
            times.add(new Survival.Time("h", time, Survival.End.HAPPENED));
        }
        for (double time : watched) {
            times.add(new Survival.Time("w", time, Survival.End.WATCHING_ENDED));
        }
        List<SurvivalFigure.Step> steps = SurvivalFigure.steps(times);
        double[] expected = {1, 0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448};
        assertThat(steps).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(steps.get(i).share()).isCloseTo(expected[i], within(0.0005));
        }
    }
}
