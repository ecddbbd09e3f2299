package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

class SurvivalReferenceTest {

    private final Checks checks = Checks.of(getClass());

    @Test
    void freireich() {
        SurvivalData data = SurvivalData.named("freireich");
        KaplanMeier treated = KaplanMeier.of(data.treated(), 0.95);
        for (KaplanMeier.Step step : treated.steps()) {
            checks.row("51-S-" + Math.round(step.time())).expects(step.survival());
        }
        checks.row("51-se-6").expects(treated.steps().get(0).standardError());
        checks.row("51-median").expects(median(treated));
        checks.row("51-median-control").expects(median(KaplanMeier.of(data.control(), 0.95)));
        LogRank test = LogRank.of(data.treated(), data.control());
        checks.row("52-chi2").expects(test.test().statistic());
        checks.row("52-expected").expects(test.expected());
        checks.row("52-expected-control").expects(test.expectedControl());
        assertThat(test.observed()).isEqualTo(9);
        assertThat(test.observedControl()).isEqualTo(21);
    }

    @Test
    void aml() {
        SurvivalData data = SurvivalData.named("aml");
        LogRank test = LogRank.of(data.treated(), data.control());
        checks.row("53-chi2").expects(test.test().statistic());
        checks.row("53-p").expects(test.test().p());
        KaplanMeier treated = KaplanMeier.of(data.treated(), 0.95);
        checks.row("53-median").expects(median(treated));
        checks.row("53-median-control").expects(median(KaplanMeier.of(data.control(), 0.95)));
        checks.row("E-2-S-48").expects(treated.at(48).orElseThrow().value());
    }

    /** R 4.2.2, survfit with conf.type log-log prints 31 (13, NA) and 23 (5, 33). */
    @Test
    void limitsOfTheMedian() {
        SurvivalData data = SurvivalData.named("aml");
        Estimate treated =
                ((KaplanMeier.Reached) KaplanMeier.of(data.treated(), 0.95).median()).estimate();
        assertThat(treated.low()).isEqualTo(13);
        assertThat(treated.high()).isInfinite();
        Estimate control =
                ((KaplanMeier.Reached) KaplanMeier.of(data.control(), 0.95).median()).estimate();
        assertThat(control.low()).isEqualTo(5);
        assertThat(control.high()).isEqualTo(33);
    }

    @Test
    void leaks() {
        SurvivalData data = SurvivalData.named("leak");
        checks.row("54-chi2")
                .expects(LogRank.of(data.treated(), data.control()).test().statistic());
        checks.row("54-S-control")
                .expects(KaplanMeier.of(data.control(), 0.95)
                        .at(14)
                        .orElseThrow()
                        .value());
        checks.row("54-S-treated")
                .expects(KaplanMeier.of(data.treated(), 0.95)
                        .at(20)
                        .orElseThrow()
                        .value());
    }

    /** Tolerances and their reasons are in the header of survival.csv. */
    @Test
    void agreesWithR() {
        for (ReferenceTable.Row row : ReferenceTable.read("survival.csv").rows()) {
            if (row.text("set").equals("turnbull")) {
                continue;
            }
            double expected = row.number("value");
            boolean searched = List.of("low", "high", "ratio")
                    .contains(row.text("quantity").replace("strata-", ""));
            assertThat(ours(row))
                    .as("%s", row)
                    .isCloseTo(expected, within((searched ? 1e-7 : 1e-9) * expected));
        }
    }

    /**
     * R stops its self-consistency earlier than we do: 1e-4. Its times are the middles of the
     * innermost intervals.
     */
    @Test
    void agreesWithRBetweenLooks() {
        List<Lifetime> lives = List.of(
                Lifetime.between(0, 4),
                Lifetime.between(4, 8),
                Lifetime.between(4, 12),
                Lifetime.between(8, 12),
                Lifetime.between(8, 24),
                Lifetime.between(12, 24),
                Lifetime.censored(24),
                Lifetime.censored(24));
        Turnbull turnbull = Turnbull.of(lives);
        assertThat(turnbull.converged()).isTrue();
        double[] ends = {4, 8, 12, 24, 24};
        int i = 0;
        for (ReferenceTable.Row row : ReferenceTable.read("survival.csv").rows()) {
            if (row.text("set").equals("turnbull")) {
                assertThat(turnbull.mostSurvival(ends[i++]))
                        .isCloseTo(row.number("value"), within(1e-4));
            }
        }
        assertThat(i).isEqualTo(5);
    }

    private static double ours(ReferenceTable.Row row) {
        SurvivalData data = SurvivalData.named(row.text("set"));
        String quantity = row.text("quantity");
        if (quantity.contains("treated-") || quantity.contains("control-")) {
            List<Lifetime> lives = quantity.startsWith("treated") ? data.treated() : data.control();
            return ours(KaplanMeier.of(lives, 0.95), quantity.substring(8), row.number("at"));
        }
        List<Stratum> strata = quantity.startsWith("strata-")
                ? data.strata(row.text("set"))
                : Stratum.one(data.treated(), data.control());
        HazardRatio.Known known = (HazardRatio.Known) HazardRatio.of(strata, 0.95);
        return switch (quantity.replace("strata-", "")) {
            case "log-rank" -> LogRank.of(strata).test().statistic();
            case "expected" -> LogRank.of(strata).expected();
            case "score" -> known.test().statistic();
            case "ratio" -> known.estimate().value();
            case "low" -> known.estimate().low();
            case "high" -> known.estimate().high();
            default -> throw new AssertionError(quantity);
        };
    }

    private static double ours(KaplanMeier curve, String quantity, double at) {
        KaplanMeier.Step step = curve.steps().stream()
                .filter(s -> s.time() <= at)
                .reduce((before, after) -> after)
                .orElseThrow();
        return switch (quantity) {
            case "survival" -> step.survival();
            case "se" -> step.standardError();
            case "low" -> step.low();
            case "high" -> step.high();
            case "rmean" -> curve.restrictedMean(at).value();
            // One side at least is not cut at 0 or the limit, and shows the standard error.
            case "rmean-se" -> {
                Estimate estimate = curve.restrictedMean(at);
                double z = Normal.STANDARD.quantile(0.975);
                yield Math.max(
                                estimate.high() - estimate.value(),
                                estimate.value() - estimate.low())
                        / z;
            }
            default -> throw new AssertionError(quantity);
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"freireich", "aml"})
    void agreesOnHowMuchLongerTheTreatedLasted(String set) {
        SurvivalData data = SurvivalData.named(set);
        LongerLasting longer =
                LongerLasting.of(data.treated(), data.control(), 0.95).orElseThrow();
        Checks checks = Checks.of(SurvivalReferenceTest.class);
        checks.row("longer-" + set).expects(longer.estimate().value());
        checks.row("longer-" + set + "-low").expects(longer.estimate().low());
        checks.row("longer-" + set + "-high").expects(longer.estimate().high());
    }

    private static double median(KaplanMeier curve) {
        return ((KaplanMeier.Reached) curve.median()).estimate().value();
    }
}
