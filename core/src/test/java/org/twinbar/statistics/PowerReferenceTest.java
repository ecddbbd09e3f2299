package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.twinbar.Checks;

class PowerReferenceTest {

    private static final double TWO_SIDED = 0.025;
    private static final double ONE_SIDED = 0.05;

    private final Checks checks = Checks.of(getClass());

    @Test
    void powerOfThePublishedExamples() {
        checks.row("90").expects(Power.of(difference(1), 20, TWO_SIDED));
        checks.row("91-power").expects(Power.of(difference(0.5), 64, TWO_SIDED));
        checks.row("91-n")
                .expects(Power.perGroup(difference(0.5), 0.8, TWO_SIDED).exact());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.2", "0.8", "1", "2"})
    void exactNumberPerGroup(String d) {
        checks.row("92-" + d)
                .expects(Power.perGroup(difference(Double.parseDouble(d)), 0.8, TWO_SIDED)
                        .exact());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.2", "0.5", "0.8", "1.0", "1.2", "1.5", "2.0", "3.0"})
    void wholeNumberPerGroup(String d) {
        checks.row("I4-90-" + d)
                .expects(Power.perGroup(difference(Double.parseDouble(d)), 0.9, TWO_SIDED)
                        .perGroup());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 10})
    void smallestDifference(int n) {
        checks.row("93-" + n)
                .expects(Power.smallestEffect(difference(1), n, 0.8, TWO_SIDED).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 6, 8, 10, 12, 15, 20})
    void smallestDifferenceOneSided(int n) {
        checks.row("I4-one-" + n)
                .expects(Power.smallestEffect(difference(1), n, 0.8, ONE_SIDED).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.5", "1", "1.5", "2"})
    void notWorseByAMargin(String margin) {
        PlannedEffect effect = new PlannedEffect.Difference(0, -Double.parseDouble(margin), 1);
        checks.row("94-" + margin)
                .expects(Power.perGroup(effect, 0.8, ONE_SIDED).perGroup());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "1.5", "2"})
    void alikeWithinAMargin(String text) {
        double margin = Double.parseDouble(text);
        int n = 2;
        while (alike(margin, n) < 0.8) {
            n++;
        }
        checks.row("95-n-" + text).expects(n);
        checks.row("95-power-" + text).expects(alike(margin, n));
    }

    @Test
    void alikeInACrossover() {
        double sd = Math.sqrt(StrictMath.log1p(0.2 * 0.2));
        Power.Alike limits =
                new Power.Alike(StrictMath.log(0.8), StrictMath.log(1.25), StrictMath.log(0.95));
        checks.row("96-power")
                .expects(Power.alike(limits, sd * Math.sqrt(2.0 / 20), 18, ONE_SIDED));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1-10", "1-15", "1-20", "1-25", "1-30", "0.95-10", "0.95-15", "0.95-20", "0.95-25",
                "0.95-30"
            })
    void totalNumberForARatio(String id) {
        double truth = Double.parseDouble(id.substring(0, id.indexOf('-')));
        double variation = Double.parseDouble(id.substring(id.indexOf('-') + 1)) / 100;
        double sd = Math.sqrt(StrictMath.log1p(variation * variation));
        Power.Alike limits =
                new Power.Alike(StrictMath.log(0.8), StrictMath.log(1.25), StrictMath.log(truth));
        int n = 2;
        while (Power.alike(limits, sd * Math.sqrt(2.0 / n), 2 * n - 2, ONE_SIDED) < 0.8) {
            n++;
        }
        checks.row("I4-ratio-" + id).expects(2 * n);
    }

    @Test
    void theCommandsChecks() {
        SampleSize size = Power.perGroup(difference(1), 0.8, TWO_SIDED);
        checks.row("size-difference").expects(size.perGroup());
        checks.row("size-difference-power").expects(size.power());
        checks.row("size-difference-smallest").expects(size.smallestEffect().orElseThrow());
        checks.row("size-ratio").expects(ratio(1).perGroup());
        checks.row("size-ratio-worth").expects(ratio(1.05).perGroup());
    }

    /** Tolerances and their reasons are in the header of power.csv. */
    @Test
    void agreesWithR() {
        for (ReferenceTable.Row row : ReferenceTable.read("power.csv").rows()) {
            PlannedEffect effect =
                    new PlannedEffect.Difference(row.number("delta"), 0, row.number("sd"));
            double alpha = row.number("alpha_one_sided");
            assertThat(Power.of(effect, row.whole("n"), alpha))
                    .as("%s", row)
                    .isCloseTo(row.number("power"), within(1e-9));
            double wanted = row.number("n_wanted");
            assertThat(Power.perGroup(effect, row.number("power_wanted"), alpha).exact())
                    .as("%s", row)
                    .isCloseTo(wanted, within(1e-6 * wanted));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "122-B-5",
                "122-B-10",
                "122-A-5",
                "122-A-10",
                "I7-B-3",
                "I7-B-4",
                "I7-B-5",
                "I7-B-6",
                "I7-B-7",
                "I7-B-8",
                "I7-B-9",
                "I7-B-10",
                "I7-B-15",
                "I7-B-20",
                "I7-B-30",
                "I7-A-3",
                "I7-A-4",
                "I7-A-5",
                "I7-A-6",
                "I7-A-7",
                "I7-A-8",
                "I7-A-9",
                "I7-A-10",
                "I7-A-15",
                "I7-A-20",
                "I7-A-30"
            })
    void oneSidedToleranceFactors(String id) {
        int n = Integer.parseInt(id.substring(id.lastIndexOf('-') + 1));
        checks.row(id).expects(ToleranceFactor.oneSided(n, id.contains("-B-") ? 0.90 : 0.99, 0.95));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "124-0.90",
                "124-0.95",
                "124-0.99",
                "I7-two-5-0.90",
                "I7-two-5-0.95",
                "I7-two-5-0.99",
                "I7-two-20-0.90",
                "I7-two-20-0.95",
                "I7-two-20-0.99",
                "I7-two-30-0.90",
                "I7-two-30-0.95",
                "I7-two-30-0.99"
            })
    void twoSidedToleranceFactors(String id) {
        String[] parts = id.split("-");
        int n = parts.length == 2 ? 10 : Integer.parseInt(parts[2]);
        checks.row(id)
                .expects(ToleranceFactor.twoSided(
                        n, Double.parseDouble(parts[parts.length - 1]), 0.95));
    }

    @Test
    void toleranceFactorsOfTheHandbook() {
        checks.row("123-one").expects(ToleranceFactor.oneSided(43, 0.90, 0.99));
        checks.row("123-two").expects(ToleranceFactor.twoSided(43, 0.90, 0.99));
    }

    private static PlannedEffect difference(double d) {
        return new PlannedEffect.Difference(d, 0, 1);
    }

    private static SampleSize ratio(double worth) {
        return Power.perGroup(new PlannedEffect.Ratio(1.15, worth, 0.06), 0.8, TWO_SIDED);
    }

    private static double alike(double margin, int n) {
        return Power.alike(
                new Power.Alike(-margin, margin, 0), Math.sqrt(2.0 / n), 2 * n - 2, ONE_SIDED);
    }
}
