package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.Checks;

/** Against R: tolerances and their reasons are in the header of distributions.csv. */
class DistributionsReferenceTest {

    @Test
    void agreesWithR() {
        for (ReferenceTable.Row row : ReferenceTable.read("distributions.csv").rows()) {
            Distribution distribution = distribution(row);
            boolean central = !row.text("distribution").equals("noncentral-t");
            double x = row.number("x");
            double p = row.number("quantile_of");
            String what = row.toString();
            assertThat(distribution.below(x))
                    .as(what)
                    .isCloseTo(
                            row.number("below"),
                            within(central ? 1e-12 * row.number("below") : 1e-10));
            assertThat(distribution.above(x))
                    .as(what)
                    .isCloseTo(
                            row.number("above"),
                            within(central ? 1e-12 * row.number("above") : 1e-10));
            double quantile = row.number("quantile");
            double tolerance =
                    (central ? 1e-12 : 1e-9) * Math.abs(quantile) + (central ? 1e-15 : 1e-10);
            assertThat(distribution.quantile(p)).as(what).isCloseTo(quantile, within(tolerance));
        }
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5", "9", "10", "16", "20"})
    void agreesWithTheTableOfStudentsT(int df) {
        Checks.of(getClass()).row("162-t-" + df).expects(new StudentT(df).quantile(0.975));
    }

    private static Distribution distribution(ReferenceTable.Row row) {
        double first = row.number("first");
        double second = row.number("second");
        return switch (row.text("distribution")) {
            case "normal" -> Normal.STANDARD;
            case "t" -> new StudentT(first);
            case "chi2" -> new ChiSquared(first);
            case "f" -> new FisherF(first, second);
            case "beta" -> new Beta(first, second);
            case "noncentral-t" -> new NoncentralT(first, second);
            default -> throw new AssertionError(row.text("distribution"));
        };
    }
}
