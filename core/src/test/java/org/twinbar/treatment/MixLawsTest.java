package org.twinbar.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds of any mix; the seed of a failing one is its parameter. */
class MixLawsTest {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void addsUpToTheBatchInTheRatioOfTheRecipe(long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        Recipe recipe = drawn(random);
        double total = 5 + 200 * random.nextDouble();
        Batch batch = recipe.ofTotal(total);
        assertThat(batch.total()).isCloseTo(total, within(1e-12 * total));
        assertThat(batch.ratioError()).isLessThan(1e-12);
        assertThat(recipe.ofFirst(batch.grams().get(0)).total())
                .isCloseTo(total, within(1e-12 * total));
        double volume = 0;
        for (int i = 0; i < batch.grams().size(); i++) {
            volume +=
                    batch.grams().get(i) / recipe.components().get(i).density().orElseThrow();
        }
        assertThat(total / volume).isCloseTo(recipe.density(), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void keepsWithinTheLimitInEveryBatchFromTheSmallestOn(long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        Recipe recipe = drawn(random);
        Scale scale = new Scale(random.nextBoolean() ? 0.1 : 0.01);
        double limit = 0.01 + 0.04 * random.nextDouble();
        double smallest = scale.smallestBatch(recipe, limit);
        assertThat(worst(recipe, scale, smallest * (1 - 1e-9))).isGreaterThan(limit);
        for (int i = 0; i < 2000; i++) {
            double batch = smallest * (1 + 1e-9 + random.nextDouble());
            assertThat(worst(recipe, scale, batch))
                    .as("batch of %s g, smallest %s g", batch, smallest)
                    .isLessThanOrEqualTo(limit);
        }
        assertThat(smallest).isGreaterThan(scale.smallestBatchByResolution(recipe, limit) * 0.999);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void reachesTheRatioOncePouredToTheEnd(long seed) {
        UniformRandomProvider random = RandomSource.XO_SHI_RO_256_PP.create(seed);
        Recipe recipe = drawn(random);
        List<Double> cup = new ArrayList<>();
        recipe.ofTotal(50).grams().forEach(it -> cup.add(it * (0.5 + random.nextDouble())));
        Batch poured = new Batch(recipe, cup);
        List<Double> rest = poured.stillToPour();
        assertThat(rest).allMatch(it -> it >= 0).contains(0.0);
        for (int i = 0; i < cup.size(); i++) {
            cup.set(i, cup.get(i) + rest.get(i));
        }
        assertThat(new Batch(recipe, cup).ratioError()).isLessThan(1e-12);
    }

    private static double worst(Recipe recipe, Scale scale, double grams) {
        return recipe.ofTotal(grams).onScale(scale).worstRatioError(scale);
    }

    private static Recipe drawn(UniformRandomProvider random) {
        int components = 2 + random.nextInt(3);
        List<Double> parts = new ArrayList<>();
        List<Double> densities = new ArrayList<>();
        for (int i = 0; i < components; i++) {
            parts.add(0.5 + 4 * random.nextDouble());
            densities.add(0.8 + 0.6 * random.nextDouble());
        }
        return Recipe.of(Recipe.By.VOLUME, parts, densities);
    }
}
