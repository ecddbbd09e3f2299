package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

class WeibullReferenceTest {

    private static final double[] STRENGTHS =
            Data.numbers("31.2 35.6 38.9 40.1 42.3 43.8 45.0 46.2 48.7 51.5");

    private final Checks checks = Checks.of(getClass());

    /** METHODS.md N.9. */
    @Test
    void censoredTimesOfTheHandbook() {
        List<Lifetime> lives = Stream.concat(
                        SurvivalData.lives("54 187 216 240 244 335 361 373 375 386").stream(),
                        Stream.generate(() -> Lifetime.censored(500)).limit(10))
                .toList();
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(lives);
        checks.row("125-shape").expects(fit.shape());
        checks.row("125-scale").expects(fit.scale());
        assertThat(fit.failures()).isEqualTo(10);
        assertThat(fit.n()).isEqualTo(20);
    }

    @Test
    void completeStrengths() {
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(STRENGTHS);
        checks.row("126-shape").expects(fit.shape());
        checks.row("126-scale").expects(fit.scale());
        checks.row("126-loglik").expects(fit.logLikelihood());
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 10, 20, 30})
    void biasOfTheShape(int n) {
        checks.row("171-" + n).expects(WeibullPivots.simulate(n, n, 20_000, 1).shapeBias());
    }

    @Test
    void limitsOfALowQuantile() {
        Weibull.Fit fit = (Weibull.Fit) Weibull.fit(STRENGTHS);
        Estimate weibull = WeibullPivots.simulate(10, 10, 20_000, 1).quantile(fit, 0.10, 0.95);
        checks.row("weibull-q").expects(weibull.value());
        checks.row("weibull-low").expects(weibull.low());
        checks.row("weibull-high").expects(weibull.high());
        Estimate normal = NormalLevel.quantile(STRENGTHS, 0.10, 0.95);
        checks.row("normal-level-q").expects(normal.value());
        checks.row("normal-level-low").expects(normal.low());
        checks.row("normal-level-high").expects(normal.high());
    }
}
