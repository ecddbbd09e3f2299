package org.twinbar.statistics.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.statistics.Published;

class GaugeReferenceTest {

    private final Checks checks = Checks.of(GaugeReferenceTest.class);

    @Test
    void crossedStudyByRangesAndByVariance() {
        GaugeStudy ranges = GaugeStudy.byRanges(readings());
        GaugeStudy variance = GaugeStudy.crossed(readings());

        checks.row("M-127-EV").expects(ranges.repeatability());
        checks.row("M-127-AV").expects(ranges.reproducibility());
        checks.row("M-127-GRR").expects(ranges.gauge());
        checks.row("M-127-PV").expects(ranges.parts());
        checks.row("M-127-TV").expects(ranges.total());
        checks.row("M-127-share").expects(100 * ranges.share());
        checks.row("M-127-ndc").expects(ranges.categories());
        checks.row("M-128-EV").expects(variance.repeatability());
        checks.row("M-128-AV").expects(variance.reproducibility());
        checks.row("M-128-GRR").expects(variance.gauge());
        checks.row("M-128-PV").expects(variance.parts());
        checks.row("M-128-TV").expects(variance.total());
        checks.row("M-128-share").expects(100 * variance.share());
        assertThat(variance.method()).contains("pooled");
        assertThat(variance.setToZero()).isEmpty();
    }

    @Test
    void chartsOfFlowRates() {
        ControlChart single =
                ControlChart.individuals(Published.values("flow rates", "individuals"));
        ControlChart weighted =
                ControlChart.weighted(Published.values("flow rates", "EWMA"), 50, 2.0539, 0.3);

        checks.row("M-129-centre").expects(single.centre());
        checks.row("M-129-high").expects(single.high());
        checks.row("M-129-low").expects(single.low());
        checks.row("M-130-low").expects(weighted.low());
        checks.row("M-130-high").expects(weighted.high());
        checks.row("M-130-z1").expects(weighted.points().get(0));
        checks.row("M-130-z4").expects(weighted.points().get(3));
        checks.row("M-130-z20").expects(weighted.points().get(19));
        assertThat(weighted.isInControl()).isTrue();
    }

    @Test
    void glucoseInEightLaboratories() {
        Interlaboratory a = Interlaboratory.of(Published.groups("glucose A"));
        Interlaboratory d = Interlaboratory.of(Published.groups("glucose D"));
        Interlaboratory e = Interlaboratory.of(Published.groups("glucose E"));

        checks.row("M-132-mean").expects(a.mean());
        checks.row("M-132-sr").expects(a.repeatability());
        checks.row("M-132-sR").expects(a.reproducibility());
        checks.row("M-132-r").expects(a.repeatabilityLimit());
        checks.row("M-133-mean").expects(d.mean());
        checks.row("M-133-sr").expects(d.repeatability());
        checks.row("M-133-sR").expects(d.reproducibility());
        checks.row("M-133-R").expects(d.reproducibilityLimit());
        checks.row("M-134-sr").expects(e.repeatability());
        checks.row("M-134-sR").expects(e.reproducibility());
        checks.row("M-134-k").expects(e.laboratories().get(1).k());
        checks.row("M-134-h").expects(e.laboratories().get(1).h());
        checks.row("M-135-h").expects(e.criticalH(0.005));
        checks.row("M-135-k").expects(e.criticalK(0.005));
    }

    private static double[][][] readings() {
        String[] operators = {"A", "B", "C"};
        double[][][] readings = new double[3][10][3];
        for (int operator = 0; operator < 3; operator++) {
            for (int trial = 0; trial < 3; trial++) {
                double[] parts = Published.values("gauge study", operators[operator] + (trial + 1));
                for (int part = 0; part < 10; part++) {
                    readings[operator][part][trial] = parts[part];
                }
            }
        }
        return readings;
    }
}
