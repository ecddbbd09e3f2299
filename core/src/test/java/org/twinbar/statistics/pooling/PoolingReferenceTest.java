package org.twinbar.statistics.pooling;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.Checks;
import org.twinbar.statistics.pooling.Pooling.Between;

class PoolingReferenceTest {

    private final Checks checks = Checks.of(PoolingReferenceTest.class);

    @Test
    void trialsOfAVaccine() {
        Pooled pooled =
                Pooling.of(PoolingTest.trials(x -> x, 1), Between.RESTRICTED_LIKELIHOOD, 0.95);

        checks.row("C-REML").expects(pooled.random().value());
        checks.row("C-REML-tau2").expects(pooled.betweenVariance());
        checks.row("C-REML-I2").expects(100 * pooled.share());
        checks.row("C-Q").expects(pooled.heterogeneity().statistic());
        checks.row("R-fixed").expects(pooled.fixed().value());
        checks.row("R-fixed-low").expects(pooled.fixed().low());
        checks.row("R-Q").expects(pooled.heterogeneity().statistic());
        checks.row("R-Q-p").expects(pooled.heterogeneity().p());
    }

    @ParameterizedTest
    @CsvSource({"REML, RESTRICTED_LIKELIHOOD", "PM, PAULE_MANDEL"})
    void bothVariancesBetweenStudies(String name, Between between) {
        Pooled pooled = Pooling.of(PoolingTest.trials(x -> x, 1), between, 0.95);

        checks.row("R-" + name).expects(pooled.random().value());
        checks.row("R-" + name + "-tau2").expects(pooled.betweenVariance());
        checks.row("R-" + name + "-low").expects(pooled.random().low());
        checks.row("R-" + name + "-high").expects(pooled.random().high());
        checks.row("R-" + name + "-I2").expects(100 * pooled.share());
        checks.row("R-" + name + "-next").expects(pooled.next().orElseThrow().low());
    }
}
