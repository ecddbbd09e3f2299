package org.twinbar.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/** The published data sets of {@code published.csv}. */
public final class Published {

    private static final Map<String, Map<String, double[]>> SETS = read();

    private Published() {}

    /** One group of a data set. */
    public static double[] values(String set, String group) {
        double[] values = SETS.getOrDefault(set, Map.of()).get(group);
        assertThat(values).as("published data %s, group %s", set, group).isNotNull();
        return values.clone();
    }

    /** All groups of a data set, in the order of the file. */
    public static double[][] groups(String set) {
        assertThat(SETS).containsKey(set);
        return SETS.get(set).values().stream().map(double[]::clone).toArray(double[][]::new);
    }

    /** Two groups of a data set. */
    public static TwoGroups pair(String set, String treated, String control) {
        return TwoGroups.of(values(set, treated), values(set, control));
    }

    private static Map<String, Map<String, double[]>> read() {
        Map<String, Map<String, double[]>> sets = new LinkedHashMap<>();
        try (InputStream in = Published.class.getResourceAsStream("published.csv")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(","))
                    .forEach(cells -> sets.computeIfAbsent(cells[0], set -> new LinkedHashMap<>())
                            .put(cells[1], numbers(cells[2])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sets;
    }

    private static double[] numbers(String text) {
        return Stream.of(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }
}
