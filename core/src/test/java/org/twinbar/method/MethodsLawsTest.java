package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.instrument.Bench;
import org.twinbar.method.own.Planned;

/**
 * What every method that comes with Twinbar must keep to, found by its service entry; and one of a
 * person's own.
 */
class MethodsLawsTest {

    static Stream<TestMethod> methods() {
        return Methods.builtIn().with(List.of(Planned.sample())).all().stream();
    }

    @Test
    void thereAreMethods() {
        assertThat(methods()).isNotEmpty();
        assertThat(methods().map(method -> method.description().name())).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void describesItselfInFull(TestMethod method) {
        Description description = method.description();
        assertThat(description).isEqualTo(method.description());
        assertThat(description.name()).matches("[a-z]+(-[a-z]+)*");
        assertThat(description.standard()).isNotBlank();
        assertThat(description.cautions()).as("dangers").isNotEmpty();
        List<Named> all = new ArrayList<>(description.asked());
        all.addAll(description.settings());
        all.addAll(description.marks());
        all.addAll(description.properties());
        assertThat(all).allSatisfy(named -> {
            assertThat(named.name()).matches("[a-z][a-z0-9]*(_[a-z0-9]+)*");
            assertThat(named.label()).matches("[A-Z].*[^.]");
        });
        assertThat(description.asks())
                .allSatisfy(ask -> assertThat(ask.question()).matches("[A-Z].*\\?"));
    }

    @ParameterizedTest
    @MethodSource("methods")
    void namesWhatItAsksForOnce(TestMethod method) {
        Description description = method.description();
        Set<String> asked = new HashSet<>();
        assertThat(description.asked())
                .allSatisfy(named -> assertThat(asked.add(named.name()))
                        .as("%s is asked for once", named.name())
                        .isTrue());
        assertThat(description.settings())
                .allSatisfy(setting -> assertThat(asked.add(setting.name())).isTrue());
    }

    @ParameterizedTest
    @MethodSource("methods")
    void everyPropertyWithoutReadingsHasItsReason(TestMethod method) {
        Result result =
                Result.of(method, Readings.of("empty", "none", Bench.usual()).build());
        assertThat(result.yields().keySet())
                .containsExactlyElementsOf(method.description().properties());
        assertThat(result.yields().values())
                .allSatisfy(yield -> assertThat(yield).isInstanceOf(Yield.Missing.class));
        assertThat(result.findings()).isEmpty();
    }

    /** Whatever is typed in within the limits, a method answers; it never throws or yields NaN. */
    @ParameterizedTest
    @MethodSource("methods")
    void answersToAnyReadingsWithinTheirLimits(TestMethod method) {
        for (long seed = 1; seed <= 300; seed++) {
            Readings readings = anyReadings(method.description(), seed);
            long shown = seed;
            Result result = Result.of(method, readings);
            assertThat(result.yields())
                    .as("seed %s", shown)
                    .hasSize(method.description().properties().size());
            assertThat(result.budgets().values()).as("seed %s", shown).allSatisfy(budget -> {
                assertThat(budget.value()).isFinite();
                assertThat(budget.u()).isFinite();
            });
            List<Mark> described = method.description().marks();
            assertThat(described)
                    .as("seed %s", shown)
                    .containsAll(readings.marks().keySet());
            assertThat(result.marks().keySet())
                    .as("seed %s", shown)
                    .containsExactlyElementsOf(described.stream()
                            .filter(readings.marks()::containsKey)
                            .toList());
            assertThat(result.findings())
                    .as("seed %s", shown)
                    .allSatisfy(finding ->
                            assertThat(finding.text()).doesNotContain("NaN", "Infinity", "E-"));
        }
    }

    @ParameterizedTest
    @MethodSource("methods")
    void theSameReadingsGiveTheSameEverywhere(TestMethod method) {
        Locale before = Locale.getDefault();
        Result here = Result.of(method, anyReadings(method.description(), 7));
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-u-nu-arab"));
            Result there = Result.of(method, anyReadings(method.description(), 7));
            assertThat(there).isEqualTo(here);
            assertThat(there.findings().stream().map(f -> f.text()).toList())
                    .isEqualTo(here.findings().stream().map(f -> f.text()).toList());
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Readings drawn at random: some of what is asked for, from one way of each question. */
    private static Readings anyReadings(Description description, long seed) {
        Random random = new Random(seed);
        Readings.Builder builder = Readings.of("S" + seed, "plain", Bench.usual());
        int rows = 1 + random.nextInt(200);
        for (Ask ask : description.asks()) {
            if (random.nextInt(4) == 0) {
                continue;
            }
            for (Named named : ask.ways().get(random.nextInt(ask.ways().size()))) {
                if (named instanceof Input input) {
                    builder.number(input, anyNumber(input, random));
                } else if (named instanceof Words words) {
                    List<String> allowed =
                            words.allowed().isEmpty() ? List.of("water") : words.allowed();
                    builder.word(words, allowed.get(random.nextInt(allowed.size())));
                } else if (named instanceof Channel channel) {
                    builder.channel(channel, anyTrace(rows, random));
                }
            }
        }
        for (Named setting : description.settings()) {
            if (setting instanceof Choice choice && random.nextBoolean()) {
                builder.word(
                        choice,
                        choice.allowed().get(random.nextInt(choice.allowed().size())));
            }
        }
        return builder.build();
    }

    private static double anyNumber(Input input, Random random) {
        while (true) {
            double value = Math.exp(8 * random.nextDouble() - 3) * (random.nextInt(5) == 0 ? 0 : 1);
            if (input.limits().allow(value)) {
                return value;
            }
        }
    }

    /** A climb, a wobble, nothing, or noise; with a hole now and then. */
    private static double[] anyTrace(int rows, Random random) {
        double[] values = new double[rows];
        int shape = random.nextInt(4);
        double top = Math.exp(10 * random.nextDouble() - 2);
        for (int row = 0; row < rows; row++) {
            double share = row / (double) rows;
            values[row] = switch (shape) {
                case 0 -> top * share;
                case 1 -> top * Math.sin(7 * share) * share;
                case 2 -> 0;
                default -> top * random.nextGaussian();
            };
            if (random.nextInt(100) == 0) {
                values[row] = Double.NaN;
            }
        }
        return values;
    }
}
