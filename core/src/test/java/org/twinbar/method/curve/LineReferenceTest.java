package org.twinbar.method.curve;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;

class LineReferenceTest {

    private static final Checks CHECKS = Checks.of(LineReferenceTest.class);

    @Test
    void norris() {
        double[] x = {
            0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777, 558.2, 0.4, 0.6, 775.5,
            666.9, 338, 447.5, 11.6, 556, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2,
            999, 779, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5
        };
        double[] y = {
            0.1, 338.8, 118.1, 888, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1,
            668.8, 339.3, 448.9, 10.8, 557.7, 228.3, 998, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888,
            998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2
        };
        Line line = Line.through(x, y);
        CHECKS.row("norris-intercept").expects(line.intercept());
        CHECKS.row("norris-intercept-u").expects(line.interceptUncertainty());
        CHECKS.row("norris-slope").expects(line.slope());
        CHECKS.row("norris-slope-u").expects(line.slopeUncertainty());
    }

    @Test
    void thermometerOfTheGum() {
        double[] t = {
            21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.010, 26.511
        };
        double[] b = {
            -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.160
        };
        double[] above20 = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            above20[i] = t[i] - 20;
        }
        Line line = Line.through(above20, b);
        CHECKS.row("h3-intercept").expects(line.intercept());
        CHECKS.row("h3-intercept-u").expects(line.interceptUncertainty());
        CHECKS.row("h3-slope").expects(line.slope());
        CHECKS.row("h3-slope-u").expects(line.slopeUncertainty());
        CHECKS.row("h3-at-30").expects(line.at(10));
    }
}
