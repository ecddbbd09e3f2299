package org.twinbar.method.density;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.quantity.Quantity;

class DensityLawsTest {

    private static double density(double inAir, double inLiquid) {
        return new Weighing(inAir, inAir - inLiquid, 0.9975, 0.0012).density();
    }

    @Test
    void twoPartsWeighedTogetherHaveTheSameDensity() {
        assertThat(density(10, 2)).isCloseTo(density(5, 1), within(1e-12));
    }

    @Test
    void whatWeighsNothingInTheLiquidIsAsDenseAsIt() {
        assertThat(density(5, 0)).isCloseTo(0.9975, within(1e-12));
    }

    @Test
    void massIsDensityTimesVolumeButForTheAir() {
        Weighing weighing = new Weighing(5, 4, 0.9975, 0.0012);
        assertThat(weighing.volume() * (weighing.density() - 0.0012)).isCloseTo(5, within(1e-12));
    }

    @Test
    void waterIsDensestNearFourDegrees() {
        double densest = Water.density(3.983035);
        for (double celsius = 0; celsius <= 40; celsius += 0.5) {
            assertThat(Water.density(celsius)).isLessThanOrEqualTo(densest);
        }
    }

    @Test
    void aScalesGainCancels() {
        Bench bench = Bench.usual().withGain("scale", 0.02);
        Result result = Weighed.result(Readings.of("D1", "plain", bench)
                .number(DensityForm.IN_AIR, 5)
                .number(DensityForm.IN_LIQUID, 1)
                .number(DensityForm.TEMPERATURE, 23));
        assertThat(result.budgets().get(DensityForm.DENSITY).shifts().entrySet())
                .filteredOn(entry -> entry.getKey().identity().equals("scale gain"))
                .allSatisfy(entry -> assertThat(Math.abs(entry.getValue())).isLessThan(1e-12));
    }

    /** Errors of readings made from a known part are as large, squared and on average, as u². */
    @Test
    void theBudgetIsAsLargeAsTheErrors() {
        Random random = new Random(31);
        Bench bench = Bench.usual()
                .withResolution("scale", Quantity.parse("0.01 g"))
                .withGain("scale", 0);
        double squares = 0;
        int runs = 2000;
        for (int run = 0; run < runs; run++) {
            double truth = 1.1 + 0.2 * random.nextDouble();
            double volume = 3 + 3 * random.nextDouble();
            double celsius = 18 + 8 * random.nextDouble();
            double air = 0.0012 * (1 + 0.1 * (2 * random.nextDouble() - 1));
            double inAir = volume * (truth - air);
            double inLiquid = volume * (truth - Water.density(celsius));
            Result result = Weighed.result(Readings.of("D1", "plain", bench)
                    .number(DensityForm.IN_AIR, 0.01 * Math.rint(100 * inAir))
                    .number(DensityForm.IN_LIQUID, 0.01 * Math.rint(100 * inLiquid))
                    .number(
                            DensityForm.TEMPERATURE,
                            0.1 * Math.rint(10 * (celsius + random.nextGaussian()))));
            double found = ((Yield.Value) result.yields().get(DensityForm.DENSITY)).value();
            double u = result.budgets().get(DensityForm.DENSITY).u();
            squares += (found - truth) * (found - truth) / (u * u);
        }
        // The scatter of 2000 such squares about their mean is 0.02.
        assertThat(squares / runs).as("seed 31").isCloseTo(1, within(0.08));
    }
}
