package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Bench;

/** The worked examples of the manual: their readings give what their pages say. */
class ExamplesTest {

    private static final Path EXAMPLES = Path.of(System.getProperty("basedir", "core"))
            .toAbsolutePath()
            .getParent()
            .resolve("docs/examples");

    static Stream<TestMethod> methodsWithAnExample() {
        return Methods.builtIn().all().stream().filter(method -> Files.isDirectory(folder(method)));
    }

    private static Path folder(TestMethod method) {
        return EXAMPLES.resolve(method.description().name());
    }

    @Test
    void thereAreExamples() {
        assertThat(methodsWithAnExample().map(method -> method.description().name()))
                .contains("tensile", "impact", "leak", "flexure", "pressure");
    }

    @ParameterizedTest
    @MethodSource("methodsWithAnExample")
    void thePageSaysThatItIsInvented(TestMethod method) throws IOException {
        assertThat(page(method)).contains("invented");
    }

    @ParameterizedTest
    @MethodSource("methodsWithAnExample")
    void thePageShowsWhatComesOut(TestMethod method) throws IOException {
        List<Result> results = results(method);
        assertThat(page(method)).contains(table(method, results));
    }

    /** Each finding that the readings raise is explained on the page by its code. */
    @ParameterizedTest
    @MethodSource("methodsWithAnExample")
    void thePageNamesEveryFinding(TestMethod method) throws IOException {
        String page = page(method);
        for (Result result : results(method)) {
            assertThat(result.findings())
                    .extracting(Finding::code)
                    .allMatch(code -> page.contains("`" + code + "`"));
        }
    }

    private static String page(TestMethod method) throws IOException {
        return Files.readString(folder(method).resolve("README.md"));
    }

    private static String table(TestMethod method, List<Result> results) {
        List<Property> shown = method.description().properties().stream()
                .filter(property -> results.stream()
                        .anyMatch(result ->
                                !(result.yields().get(property) instanceof Yield.Missing)))
                .limit(4)
                .toList();
        StringBuilder table = new StringBuilder("| specimen | group |");
        shown.forEach(property -> table.append(" ").append(property.column()).append(" |"));
        table.append("\n|---|---|").append("---|".repeat(shown.size())).append("\n");
        for (Result result : results) {
            table.append("| ")
                    .append(result.specimen())
                    .append(" | ")
                    .append(result.group())
                    .append(" |");
            shown.forEach(property -> table.append(" ")
                    .append(words(result.yields().get(property)))
                    .append(" |"));
            table.append("\n");
        }
        return table.toString();
    }

    private static String words(Yield yield) {
        if (yield instanceof Yield.Value value) {
            return figures(value.value());
        }
        if (yield instanceof Yield.Fitted fitted) {
            return figures(fitted.value());
        }
        if (yield instanceof Yield.AtLeast bound) {
            return "at least " + figures(bound.bound());
        }
        if (yield instanceof Yield.Below bound) {
            return "below " + figures(bound.bound());
        }
        if (yield instanceof Yield.Between between) {
            return figures(between.from()) + " to " + figures(between.to());
        }
        return yield instanceof Yield.Word word ? word.word() : "none";
    }

    private static String figures(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(value)
                        .round(new MathContext(4))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static List<Result> results(TestMethod method) throws IOException {
        List<Result> results = new ArrayList<>();
        Path folder = folder(method);
        for (Map<String, String> row : table(folder.resolve("specimens.csv"))) {
            Readings.Builder readings =
                    Readings.of(row.get("specimen"), row.get("group"), Bench.usual());
            method.description().inputs().stream()
                    .filter(input -> repeats(row, input).length > 0)
                    .forEach(input -> readings.number(input, repeats(row, input)));
            method.description().words().stream()
                    .filter(words -> !row.getOrDefault(words.name(), "").isEmpty())
                    .forEach(words -> readings.word(words, row.get(words.name())));
            if (row.containsKey("curve_file")) {
                List<Map<String, String>> curve =
                        table(folder.resolve("curves").resolve(row.get("curve_file")));
                method.description().channels().stream()
                        .filter(channel -> curve.get(0).containsKey(channel.column()))
                        .forEach(channel -> readings.channel(
                                channel,
                                curve.stream()
                                        .mapToDouble(line ->
                                                Double.parseDouble(line.get(channel.column())))
                                        .toArray()));
            }
            results.add(Result.of(method, readings.build()));
        }
        return results;
    }

    /** The readings of an input: its column, or columns numbered behind its name. */
    private static double[] repeats(Map<String, String> row, Input input) {
        String behind = input.column().substring(input.name().length());
        return row.entrySet().stream()
                .filter(cell -> !cell.getValue().isEmpty())
                .filter(cell -> cell.getKey().equals(input.column())
                        || cell.getKey().matches(input.name() + "_\\d+" + behind))
                .mapToDouble(cell -> Double.parseDouble(cell.getValue()))
                .toArray();
    }

    private static List<Map<String, String>> table(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        List<String> header = Arrays.asList(lines.get(0).split(",", -1));
        List<Map<String, String>> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.length; i++) {
                row.put(header.get(i), cells[i]);
            }
            rows.add(row);
        }
        return rows;
    }
}
