package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Table;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Control;
import org.twinbar.report.Figures;
import org.twinbar.report.Written;
import org.twinbar.report.kit.Palette;
import org.twinbar.statistics.gauge.ControlChart;
import org.twinbar.statistics.gauge.ControlChart.Signal;
import org.twinbar.study.Drift;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar drift FILE}: a control chart of a reference that is tested again and again. */
@Command(
        name = "drift",
        description = {
            "Does the bench still read what it read? A control chart of a reference specimen that is",
            "tested again and again: single values and their weighted mean, with the rules of runs.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class DriftCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(
            paramLabel = "FILE",
            description = "Table with a row for each test, in their order; - for standard input.")
    String file = "";

    @Option(
            names = "--value",
            required = true,
            paramLabel = "COLUMN",
            description = "What was read.")
    String value = "";

    @Option(
            names = "--first",
            paramLabel = "N",
            description = "How many of the first values set the limits; all unless said.")
    @Nullable
    Integer first;

    @Option(names = "--out", paramLabel = "FILE", description = "Writes the chart as SVG.")
    @Nullable
    Path out;

    @Mixin
    ReadingOptions reading = new ReadingOptions();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    DriftCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Table table = Table.read(context.source(file), reading.readAs());
        if (reading.explain) {
            context.terminal().say(table.explanation());
        }
        Drift drift =
                Drift.of(table, value, first == null ? OptionalInt.empty() : OptionalInt.of(first));
        if (json) {
            Json.write(context.terminal().out(), it -> into(it, drift));
        } else {
            context.terminal().out().print(text(drift));
        }
        if (out != null) {
            Context.write(out, Palette.LIGHT.drawn(Figures.control(control(drift))));
        }
        return Cli.DONE;
    }

    private static String text(Drift drift) {
        ControlChart chart = drift.single();
        String unit = drift.unit().map(Unit::symbol).map(it -> " " + it).orElse("");
        StringBuilder text = new StringBuilder();
        text.append("%s values of %s, limits from %s: %s to %s%s, centre %s%s\n"
                .formatted(
                        chart.points().size(),
                        drift.header(),
                        drift.baseline() == chart.points().size()
                                ? "all of them"
                                : "the first " + drift.baseline(),
                        Written.number(chart.low(), 4),
                        Written.number(chart.high(), 4),
                        unit,
                        Written.number(chart.centre(), 4),
                        unit));
        byPlace(chart)
                .forEach((place, rules) -> text.append("line %s, %s%s: %s\n"
                        .formatted(
                                drift.lines().get(place),
                                Written.number(chart.points().get(place), 4),
                                unit,
                                String.join("; ", rules))));
        drift.weighted().signals().stream()
                .findFirst()
                .ifPresent(it -> text.append("weighted mean: beyond its limits in line %s\n"
                        .formatted(drift.lines().get(it.index()))));
        return text + ComparisonsText.wrapped(sentence(drift), "");
    }

    private static TreeMap<Integer, List<String>> byPlace(ControlChart chart) {
        TreeMap<Integer, List<String>> places = new TreeMap<>();
        for (Signal signal : chart.signals()) {
            places.computeIfAbsent(signal.index(), it -> new ArrayList<>())
                    .add(words(signal.rule()));
        }
        return places;
    }

    private static String words(ControlChart.Rule rule) {
        return switch (rule) {
            case BEYOND_LIMITS -> "beyond the limits";
            case TWO_OF_THREE -> "two of three far out on one side";
            case FOUR_OF_FIVE -> "four of five away from the centre on one side";
            case EIGHT_ON_ONE_SIDE -> "eight in a row on one side";
            case SIX_IN_ONE_DIRECTION -> "six in a row in one direction";
        };
    }

    private static String sentence(Drift drift) {
        OptionalInt signal = drift.firstSignal();
        if (signal.isEmpty()) {
            return "The bench reads as it did.";
        }
        String since = signal.getAsInt() == 0
                ? "all that was tested"
                : "what was tested since the last value in control (line %s)"
                        .formatted(drift.lines().get(signal.getAsInt() - 1));
        return "The bench reads otherwise than before. Test nothing until it is found: check the"
                + " zero and the grips, test the reference again, calibrate anew if it stays, and"
                + " doubt " + since + ".";
    }

    private static void into(Json json, Drift drift) throws java.io.IOException {
        ControlChart chart = drift.single();
        json.put("value", drift.header())
                .put("n", chart.points().size())
                .put("baseline", drift.baseline())
                .put("centre", chart.centre())
                .put("low", chart.low())
                .put("high", chart.high())
                .put("inControl", drift.isInControl())
                .list("signals", list -> {
                    for (var place : byPlace(chart).entrySet()) {
                        list.object(it -> it.put("line", drift.lines().get(place.getKey()))
                                .put("value", chart.points().get(place.getKey()))
                                .texts("rules", place.getValue()));
                    }
                })
                .list("weighted", list -> {
                    for (Signal signal : drift.weighted().signals()) {
                        list.object(it -> it.put("line", drift.lines().get(signal.index()))
                                .put("value", drift.weighted().points().get(signal.index())));
                    }
                });
    }

    private static Control control(Drift drift) {
        String unit = drift.unit()
                .map(Unit::symbol)
                .filter(it -> !it.isEmpty())
                .map(it -> " in " + it)
                .orElse("");
        String name = drift.header().replaceAll("_[^_]*$", "").replace('_', ' ');
        return new Control(
                (drift.unit().isPresent() ? name : drift.header().replace('_', ' ')) + unit,
                drift.single().points(),
                drift.weighted().points(),
                drift.baseline(),
                drift.single().centre(),
                drift.single().low(),
                drift.single().high(),
                Stream.concat(
                                drift.single().signals().stream(),
                                drift.weighted().signals().stream())
                        .map(Signal::index)
                        .distinct()
                        .toList());
    }
}
