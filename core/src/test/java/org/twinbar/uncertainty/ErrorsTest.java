package org.twinbar.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class ErrorsTest {

    private static final Source FIRST = Source.own("first", Shape.NORMAL, 1);
    private static final Source SECOND = Source.shared("second", Shape.RECTANGULAR, 2);
    private static final Source STRANGE = Source.own("strange", Shape.NORMAL, 1);

    private static UniformRandomProvider random() {
        return RandomSource.XO_RO_SHI_RO_128_PP.create(5L);
    }

    @Test
    void aSourceThatIsNotNamedHasNoError() {
        assertThat(Errors.NONE.of(FIRST)).isZero();
        assertThat(Errors.of(FIRST, 0.5).of(SECOND)).isZero();
        assertThat(Errors.of(FIRST, 0.5).of(FIRST)).isEqualTo(0.5);
        assertThat(Errors.of(Map.of("second", 3.0)).of(SECOND)).isEqualTo(3);
    }

    @Test
    void answersHangOnTheSourceNotOnTheOrderOfQuestions() {
        Errors world = Errors.toBeDrawn(List.of(FIRST, SECOND));
        UniformRandomProvider random = random();
        List<List<Source>> orders = List.of(
                List.of(FIRST, SECOND),
                List.of(FIRST, SECOND),
                List.of(SECOND, STRANGE, FIRST),
                List.of(STRANGE, FIRST, FIRST, SECOND, FIRST),
                List.of(
                        FIRST, SECOND, FIRST, SECOND, FIRST, SECOND, FIRST, SECOND, FIRST, SECOND,
                        STRANGE, SECOND));
        UniformRandomProvider again = random();
        for (List<Source> order : orders) {
            world.draw(random);
            double first = FIRST.draw(again);
            double second = SECOND.draw(again);
            List<Double> answers = new ArrayList<>();
            List<Double> expected = new ArrayList<>();
            for (Source source : order) {
                answers.add(world.of(source));
                expected.add(source == FIRST ? first : source == SECOND ? second : 0);
            }
            assertThat(answers).isEqualTo(expected);
        }
    }

    @Test
    void sourcesOfOneIdentityShareTheirError() {
        Source twin = Source.own("first", Shape.NORMAL, 1);
        Errors world = Errors.toBeDrawn(List.of(FIRST, twin, SECOND));
        world.draw(random());
        assertThat(world.of(twin)).isEqualTo(world.of(FIRST)).isNotZero();
    }
}
