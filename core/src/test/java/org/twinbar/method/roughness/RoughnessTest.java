package org.twinbar.method.roughness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Exactly;
import org.twinbar.method.Methods;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class RoughnessTest {

    private static final DoubleUnaryOperator RIDGES = Profiles.triangle(8, 0.25);

    /** A profile in which nothing is odd: Ra 4 µm over five sampling lengths. */
    private static Readings.Builder plain() {
        return Profiles.of(RIDGES);
    }

    @Test
    void isFoundByItsServiceEntry() {
        assertThat(Methods.builtIn().named("roughness")).get().isInstanceOf(Roughness.class);
    }

    @Test
    void aGoodProfileRaisesNothing() {
        assertThat(Profiles.trace(plain()).findings()).isEmpty();
    }

    @Test
    void waysOfLyingOnTheTableDoNotMatter() {
        double flat = Exactly.value(Profiles.trace(plain()), RoughnessForm.RA);
        Result tilted = Profiles.trace(Profiles.of(x -> RIDGES.applyAsDouble(x) + 40 * x - 300));
        assertThat(Exactly.value(tilted, RoughnessForm.RA)).isCloseTo(flat, within(1e-6));
        Result bowed =
                Profiles.trace(Profiles.of(x -> RIDGES.applyAsDouble(x) + 2 * (x - 6) * (x - 6))
                        .word(RoughnessForm.FORM, FormRemoval.PARABOLA.word()));
        assertThat(Exactly.value(bowed, RoughnessForm.RA)).isCloseTo(flat, within(1e-4));
    }

    @Test
    void wavinessIsTakenOffAndRidgesAreNot() {
        DoubleUnaryOperator wave = Profiles.sine(20, 10);
        Result wavy =
                Profiles.trace(Profiles.of(x -> RIDGES.applyAsDouble(x) + wave.applyAsDouble(x)));
        // Of a wave of 4 cut-offs the filter leaves 1 − 2^(−1/16) = 4.2 % in the roughness.
        assertThat(Exactly.value(wavy, RoughnessForm.RA)).isBetween(3.9, 4.2);
    }

    @Test
    void noiseBelowTheShortCutoffIsTakenOff() {
        Random random = new Random(1);
        double[] noise = random.doubles(6001, -2, 2).toArray();
        DoubleUnaryOperator noisy =
                x -> RIDGES.applyAsDouble(x) + noise[(int) Math.round(x / Profiles.STEP)];
        double with = Exactly.value(Profiles.trace(Profiles.of(noisy)), RoughnessForm.RZ);
        double without = Exactly.value(
                Profiles.trace(Profiles.of(noisy).setting(RoughnessForm.SHORT_CUTOFF, 25)),
                RoughnessForm.RZ);
        assertThat(with).isGreaterThan(18.5);
        assertThat(without).isBetween(14.0, 16.8);
    }

    @Test
    void aGainOfTheGaugeMovesEveryHeightAndAZeroNone() {
        Bench bench = Exactly.bench()
                .withGain("profilometer", 0.02)
                .withZero("profilometer", Quantity.parse("3 µm"));
        Result result = Profiles.trace(
                Profiles.of(Profiles.part(bench), Profiles.STEP, Profiles.LENGTH, RIDGES));
        for (var property : RoughnessForm.DESCRIPTION.properties()) {
            assertThat(Exactly.u(result, property) / Exactly.value(result, property))
                    .as(property.name())
                    .isCloseTo(0.02, within(1e-4));
        }
    }

    @Test
    void rowsThatLieCloserThanTheFilterNeedsAreThinned() {
        Result fine = Profiles.trace(
                Profiles.of(Profiles.part(Exactly.bench()), 0.0002, Profiles.LENGTH, RIDGES));
        assertThat(Exactly.value(fine, RoughnessForm.RA))
                .isCloseTo(4, Percentage.withPercentage(0.5));
    }

    @Test
    void unevenRowsGiveWhatEvenOnesDo() {
        double[] position = new double[5001];
        double[] height = new double[5001];
        for (int row = 0; row < position.length; row++) {
            double share = row / 5000.0;
            position[row] = 15 * (share + 0.05 * StrictMath.sin(2 * Math.PI * share));
            height[row] = RIDGES.applyAsDouble(position[row]);
        }
        Result uneven = Profiles.trace(Profiles.part(Exactly.bench())
                .channel(RoughnessForm.POSITION, position)
                .channel(RoughnessForm.HEIGHT, height));
        assertThat(Exactly.value(uneven, RoughnessForm.RA))
                .isCloseTo(4, Percentage.withPercentage(0.5));
    }

    @Test
    void shortProfilesGiveFewSamplingLengthsOrNone() {
        Result two = Profiles.trace(Profiles.of(Profiles.part(Exactly.bench()), 0.005, 8, RIDGES));
        assertThat(Exactly.text(two, "few-sampling-lengths"))
                .startsWith("The profile holds 2 sampling lengths of 2.5 mm");
        Result one = Profiles.trace(Profiles.of(Profiles.part(Exactly.bench()), 0.005, 5, RIDGES));
        assertThat(one.yields().get(RoughnessForm.RA)).isInstanceOf(Yield.Value.class);
        Result none = Profiles.trace(Profiles.of(Profiles.part(Exactly.bench()), 0.005, 4, RIDGES));
        assertThat(Exactly.reason(none, RoughnessForm.RA))
                .isEqualTo("the profile is 4.00 mm long; one sampling length of 2.5 mm needs"
                        + " 5.00 mm");
    }

    @Test
    void endsMayBeKept() {
        Result kept = Profiles.trace(
                Profiles.of(Profiles.part(Exactly.bench()), Profiles.STEP, 12.5, RIDGES)
                        .word(RoughnessForm.ENDS, RoughnessForm.KEPT));
        assertThat(Exactly.found(kept, "ends-kept")).isTrue();
        assertThat(Exactly.found(kept, "few-sampling-lengths")).isFalse();
        assertThat(Exactly.value(kept, RoughnessForm.RA))
                .isCloseTo(4, Percentage.withPercentage(1));
    }

    @Test
    void saysWhatCannotBeCalculatedWith() {
        double[] back = {0, 0.1, 0.2, 0.1};
        double[] position = new double[40];
        for (int row = 0; row < 40; row++) {
            position[row] = row < 4 ? back[row] : row;
        }
        Result backwards = Profiles.trace(Profiles.part(Exactly.bench())
                .channel(RoughnessForm.POSITION, position)
                .channel(RoughnessForm.HEIGHT, new double[40]));
        assertThat(Exactly.reason(backwards, RoughnessForm.RZ))
                .isEqualTo("the place along the trace does not rise from row to row, first behind"
                        + " 0.200 mm");
        Result coarse = Profiles.trace(
                Profiles.of(Profiles.part(Exactly.bench()), 0.5, Profiles.LENGTH, RIDGES));
        assertThat(Exactly.reason(coarse, RoughnessForm.RZ))
                .isEqualTo("rows lie up to 0.50 mm apart, too far for a cut-off of 2.5 mm");
        Result few = Profiles.trace(Profiles.of(Profiles.part(Exactly.bench()), 1, 10, RIDGES));
        assertThat(Exactly.reason(few, RoughnessForm.RZ))
                .isEqualTo("the profile has 11 rows with a number, it needs 20");
    }

    @Test
    void findingsOfTheFilter() {
        assertThat(Exactly.text(
                        Profiles.trace(Profiles.of(Profiles.triangle(30, 0.25))),
                        "cutoff-for-other-roughness"))
                .startsWith("Ra is 15 µm, for which ISO 21920-3 takes a cut-off of 8.0 mm, not"
                        + " 2.5 mm");
        assertThat(Exactly.text(
                        Profiles.trace(plain().number(RoughnessForm.LAYER_HEIGHT, 0.6)),
                        "cutoff-near-layer-height"))
                .startsWith("The cut-off of 2.5 mm is less than 5 layers of 0.60 mm");
        assertThat(Exactly.text(
                        Profiles.trace(Profiles.of(
                                Profiles.part(Exactly.bench()), 0.05, Profiles.LENGTH, RIDGES)),
                        "rows-far-apart"))
                .startsWith("Rows lie up to 0.050 mm apart");
    }

    @Test
    void findingsOfTheTrace() {
        assertThat(Exactly.found(
                        Profiles.trace(plain().word(RoughnessForm.TRACED, RoughnessForm.ALONG)),
                        "traced-along-layers"))
                .isTrue();
        Readings.Builder unsaid = Readings.of("R1", "plain", Exactly.bench());
        assertThat(Exactly.found(
                        Profiles.trace(Profiles.of(unsaid, Profiles.STEP, Profiles.LENGTH, RIDGES)),
                        "trace-direction-not-stated"))
                .isTrue();
        assertThat(Exactly.text(
                        Profiles.trace(Profiles.of(x ->
                                Math.abs(x - 7) < 0.001 ? Double.NaN : RIDGES.applyAsDouble(x))),
                        "rows-without-number"))
                .startsWith("1 row of the profile without a number was passed over");
    }

    @Test
    void aGaugeAtItsEndIsSerious() {
        Bench bench = Exactly.bench().withResolution("profilometer", Quantity.parse("0.01 µm"));
        Result clipped = Profiles.trace(Profiles.of(
                Profiles.part(bench),
                Profiles.STEP,
                Profiles.LENGTH,
                x -> Math.min(5, RIDGES.applyAsDouble(x))));
        assertThat(Exactly.text(clipped, "gauge-at-its-end"))
                .startsWith("The height stands at 5.00 µm, its highest, for ");
        Result rounded = Profiles.trace(Profiles.of(
                Profiles.part(bench),
                Profiles.STEP,
                Profiles.LENGTH,
                x -> Math.rint(1000 * StrictMath.sin(x)) / 100));
        assertThat(Exactly.found(rounded, "gauge-at-its-end")).isFalse();
    }

    @Test
    void aCoarseDisplayIsSaid() {
        Bench bench = Exactly.bench().withResolution("profilometer", Quantity.parse("2 µm"));
        Result coarse = Profiles.trace(
                Profiles.of(Profiles.part(bench), Profiles.STEP, Profiles.LENGTH, RIDGES));
        assertThat(Exactly.text(coarse, "height-steps-coarse"))
                .startsWith("Ra is 4.0 µm, only 2.0 steps of the display");
    }

    @Test
    void aFilterNeedsACutoffAboveTheStep() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GaussianFilter(0.1, 0.1))
                .withMessageContaining("a cut-off of 0.1 mm must be above the step of 0.1 mm");
    }
}
