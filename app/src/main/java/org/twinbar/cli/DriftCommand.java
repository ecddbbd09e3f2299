package org.twinbar.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Table;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Drifting;
import org.twinbar.report.Figures;
import org.twinbar.report.Written;
import org.twinbar.report.kit.Palette;
import org.twinbar.statistics.gauge.ControlChart;
import org.twinbar.statistics.gauge.ControlChart.Signal;
import org.twinbar.study.bench.Drift;
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
            Context.write(out, Palette.LIGHT.drawn(Figures.control(Drifting.picture(drift))));
        }
        return Cli.DONE;
    }

    static String text(Drift drift) {
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
        drift.said()
                .forEach((place, rules) -> text.append("line %s, %s%s: %s\n"
                        .formatted(
                                drift.lines().get(place),
                                Written.number(chart.points().get(place), 4),
                                unit,
                                String.join("; ", rules))));
        return text + ComparisonsText.wrapped(sentence(drift), "");
    }

    private static String sentence(Drift drift) {
        OptionalInt signal = drift.firstSignal();
        if (signal.isEmpty()) {
            return Drifting.STEADY;
        }
        return Drifting.moved(
                signal.getAsInt() == 0
                        ? Optional.empty()
                        : Optional.of(
                                "line %s".formatted(drift.lines().get(signal.getAsInt() - 1))));
    }

    static void into(Json json, Drift drift) throws java.io.IOException {
        ControlChart chart = drift.single();
        json.put("value", drift.header())
                .put("n", chart.points().size())
                .put("baseline", drift.baseline())
                .put("centre", chart.centre())
                .put("low", chart.low())
                .put("high", chart.high())
                .put("inControl", drift.isInControl())
                .list("signals", list -> {
                    for (var place : drift.said().entrySet()) {
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
}
