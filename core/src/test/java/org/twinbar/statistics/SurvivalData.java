package org.twinbar.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Groups of times; a plus sign says that the test ended first. */
record SurvivalData(List<Lifetime> treated, List<Lifetime> control) {

    static SurvivalData named(String name) {
        return switch (name) {
            // METHODS.md N.16: Freireich and others (1963), R package MASS, data set gehan.
            case "freireich" ->
                of(
                        "10 7 32+ 23 22 6 16 34+ 32+ 25+ 11+ 20+ 19+ 6 17+ 35+ 6 13 9+ 6+ 10+",
                        "1 22 3 12 8 17 2 11 8 12 2 5 4 15 8 23 5 11 4 1 8");
            // METHODS.md N.17: R package survival, data set aml.
            case "aml" ->
                of("9 13 13+ 18 23 28+ 31 34 45+ 48 161+", "5 5 8 8 12 16+ 23 27 30 33 43 45");
            // METHODS.md E-3, made there.
            case "leak" -> of("20 24+ 24+ 24+ 24+ 24+ 24+ 24+", "2 5 5 9 14 24+ 24+ 24+");
            // Made here: no event among the treated, none among the control.
            case "dry" -> of("24+ 24+ 24+ 24+ 24+", "2 5 5 9 24+");
            case "wet" -> of("1 2 2 3 6", "4+ 24+ 24+ 24+");
            default -> throw new AssertionError(name);
        };
    }

    /** The blocks of survival.R, the treated first. */
    List<Stratum> strata(String name) {
        int[] blocks = switch (name) {
            case "freireich" -> IntStream.range(0, 42).map(i -> 1 + i % 3).toArray();
            case "aml" ->
                IntStream.concat(IntStream.range(0, 11), IntStream.range(0, 12))
                        .map(i -> 1 + i % 2)
                        .toArray();
            case "leak" -> new int[] {1, 1, 2, 2, 3, 3, 4, 4, 1, 1, 2, 2, 3, 3, 3, 1};
            case "dry" -> new int[] {1, 1, 2, 2, 2, 1, 2, 1, 2, 2};
            default -> throw new AssertionError(name);
        };
        return IntStream.of(blocks)
                .distinct()
                .mapToObj(block -> new Stratum(
                        of(treated, blocks, 0, block), of(control, blocks, treated.size(), block)))
                .toList();
    }

    private static List<Lifetime> of(List<Lifetime> lives, int[] blocks, int from, int block) {
        return IntStream.range(0, lives.size())
                .filter(i -> blocks[from + i] == block)
                .mapToObj(lives::get)
                .toList();
    }

    static SurvivalData of(String treated, String control) {
        return new SurvivalData(lives(treated), lives(control));
    }

    static List<Lifetime> lives(String text) {
        return Arrays.stream(text.split(" "))
                .map(time -> time.endsWith("+")
                        ? Lifetime.censored(
                                Double.parseDouble(time.substring(0, time.length() - 1)))
                        : Lifetime.event(Double.parseDouble(time)))
                .toList();
    }
}
