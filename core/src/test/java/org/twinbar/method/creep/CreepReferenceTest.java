package org.twinbar.method.creep;

import org.junit.jupiter.api.Test;
import org.twinbar.Checks;
import org.twinbar.method.Exactly;
import org.twinbar.method.Result;
import org.twinbar.statistics.CurveFit;

class CreepReferenceTest {

    private static final Checks CHECKS = Checks.of(CreepReferenceTest.class);

    /** b₁x^b₂. */
    private static final CurveFit.Curve POWER = new CurveFit.Curve() {
        @Override
        public double at(double x, double[] b) {
            return b[0] * StrictMath.pow(x, b[1]);
        }

        @Override
        public double[] slopes(double x, double[] b) {
            double power = StrictMath.pow(x, b[1]);
            return new double[] {power, b[0] * power * StrictMath.log(x)};
        }
    };

    /** b₁(1 − exp(−b₂x)). */
    private static final CurveFit.Curve SATURATION = new CurveFit.Curve() {
        @Override
        public double at(double x, double[] b) {
            return b[0] * (1 - StrictMath.exp(-b[1] * x));
        }

        @Override
        public double[] slopes(double x, double[] b) {
            double left = StrictMath.exp(-b[1] * x);
            return new double[] {1 - left, b[0] * x * left};
        }
    };

    @Test
    void lawOfFindley() {
        Result result = Crept.result(Crept.bar(
                        new double[] {1, 3, 10, 30, 100, 300, 1000},
                        new double[] {1.3500, 1.3974, 1.4667, 1.5511, 1.6743, 1.8243, 2.0435})
                .setting(CreepForm.FORECAST, 10_000));
        CHECKS.row("start").expects(Exactly.value(result, CreepForm.START));
        CHECKS.row("growth").expects(Exactly.value(result, CreepForm.GROWTH));
        CHECKS.row("exponent").expects(Exactly.value(result, CreepForm.EXPONENT));
        CHECKS.row("forecast").expects(Exactly.value(result, CreepForm.FORECAST_STRAIN));
    }

    @Test
    void creepModulus() {
        Result result = Crept.result(Crept.bar(new double[] {1, 2}, new double[] {0.45, 0.5}));
        CHECKS.row("modulus").expects(Exactly.value(result, CreepForm.MODULUS_EARLY));
    }

    @Test
    void danWood() {
        CurveFit fit = CurveFit.through(
                        POWER,
                        new double[] {1, 5},
                        new double[] {1.309, 1.471, 1.49, 1.565, 1.611, 1.68},
                        new double[] {2.138, 3.421, 3.597, 4.34, 4.882, 5.66})
                .orElseThrow();
        CHECKS.row("danwood-1").expects(fit.parameters()[0]);
        CHECKS.row("danwood-2").expects(fit.parameters()[1]);
        CHECKS.row("danwood-squares").expects(fit.sumOfSquares());
        CHECKS.row("danwood-u1").expects(fit.uncertainty(0));
        CHECKS.row("danwood-u2").expects(fit.uncertainty(1));
    }

    @Test
    void misraOneA() {
        CurveFit fit = CurveFit.through(
                        SATURATION,
                        new double[] {500, 0.0001},
                        new double[] {
                            77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3,
                            536.8, 593.1, 689.1, 760
                        },
                        new double[] {
                            10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05,
                            61.01, 66.40, 75.47, 81.78
                        })
                .orElseThrow();
        CHECKS.row("misra-1").expects(fit.parameters()[0]);
        CHECKS.row("misra-2").expects(fit.parameters()[1]);
        CHECKS.row("misra-squares").expects(fit.sumOfSquares());
        CHECKS.row("misra-u1").expects(fit.uncertainty(0));
        CHECKS.row("misra-u2").expects(fit.uncertainty(1));
    }
}
