package org.twinbar.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Numbers;
import org.twinbar.report.Written;
import org.twinbar.report.WrittenNumbers;
import org.twinbar.study.HowMany;
import org.twinbar.study.NumbersAsked;
import org.twinbar.study.NumbersAsked.Wish;
import org.twinbar.study.NumbersTold;
import org.twinbar.study.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar plan numbers}: what so many specimens can tell, and what they take. */
@Command(
        name = "numbers",
        description = {
            "What so many specimens per group can tell, and what they take, for each number,",
            "for every kind of effect: means, two shares, rates, ranks, levels, no change.",
            "The scatter is the one given, else that of this workspace's studies, else the one",
            "that is usual for the test.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class PlanNumbersCommand implements Callable<Integer> {

    private final Context context;

    @Option(names = "--method", paramLabel = "METHOD", description = "The test.")
    @Nullable
    String method;

    @Option(names = "--property", paramLabel = "NAME", description = "What is compared.")
    @Nullable
    String property;

    @Option(
            names = "--effect",
            paramLabel = "ratio|difference|share|rate|rank|level",
            description = "As which number; from the property unless said.")
    @Nullable
    String effect;

    @Option(
            names = "--scatter",
            paramLabel = "SIZE",
            description = "Standard deviation of a specimen: 6%% of the mean, or an amount.")
    @Nullable
    String scatter;

    @Option(
            names = "--expect",
            paramLabel = "higher|lower|same",
            description = "Which way; by the sign of the change unless said.")
    @Nullable
    String expect;

    @Option(
            names = "--expected",
            paramLabel = "CHANGE",
            description = "True change to be found; none where no change is claimed.")
    @Nullable
    String expected;

    @Option(
            names = "--worth",
            paramLabel = "SIZE",
            description = "Smallest change worth having, or that would matter.")
    @Nullable
    String worth;

    @Option(
            names = "--control-share",
            paramLabel = "SHARE",
            description = "For a yes or no against a control: the share of it that says yes;"
                    + " that of this workspace's studies unless said.")
    @Nullable
    String controlShare;

    @Option(
            names = "--seen",
            paramLabel = "SHARE",
            description = "For a rate: the share of the control to which it happens before the"
                    + " test ends; all unless said.")
    @Nullable
    String seen;

    @Option(
            names = "--above",
            paramLabel = "MARGIN",
            description = "For a level: how far the mean lies past it; for a yes or no, the share"
                    + " that passes.")
    @Nullable
    String above;

    @Option(
            names = "--of",
            paramLabel = "SHARE",
            description = "For a level: share of parts that must clear it; 90%% unless said.")
    @Nullable
    String share;

    @Option(names = "--power", paramLabel = "SHARE", description = "0.8 unless said.")
    @Nullable
    String power;

    @Option(
            names = "--resolution",
            paramLabel = "STEP",
            description = "Smallest step of the values, in the unit of the scatter.")
    @Nullable
    String resolution;

    @Option(
            names = "--per-group",
            paramLabel = "N",
            description = "A number that the table has in any case.")
    @Nullable
    String perGroup;

    @Option(names = "--groups", paramLabel = "N", description = "Groups; 2 unless said.")
    @Nullable
    String groups;

    @Option(
            names = "--coated",
            paramLabel = "N",
            description = "How many of them take resin; 1 unless said.")
    @Nullable
    String coated;

    @Option(names = "--filament", paramLabel = "MASS", description = "Per specimen.")
    @Nullable
    String filament;

    @Option(names = "--resin", paramLabel = "MASS", description = "Per coated specimen.")
    @Nullable
    String resin;

    @Option(names = "--print-time", paramLabel = "TIME", description = "Per specimen.")
    @Nullable
    String printTime;

    @Option(names = "--hand-time", paramLabel = "TIME", description = "Per specimen.")
    @Nullable
    String handTime;

    @Option(names = "--filament-price", paramLabel = "MONEY", description = "Per kilogram.")
    @Nullable
    String filamentPrice;

    @Option(names = "--resin-price", paramLabel = "MONEY", description = "Per kilogram.")
    @Nullable
    String resinPrice;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    PlanNumbersCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        NumbersTold told = told();
        if (json) {
            Json.write(context.terminal().out(), out -> json(out, told));
        } else {
            context.terminal().out().print(text(told));
        }
        return Cli.DONE;
    }

    private NumbersTold told() {
        NumbersAsked asked = asked();
        if (!Files.isDirectory(workspace.folder)) {
            return HowMany.withoutBench(context.methods().get(), asked);
        }
        try (Workspace open = context.openThere(workspace.folder)) {
            return open.plans().numbers(asked);
        }
    }

    private NumbersAsked asked() {
        Map<Wish, String> said = new EnumMap<>(Wish.class);
        put(said, Wish.METHOD, method);
        put(said, Wish.PROPERTY, property);
        put(said, Wish.EFFECT, effect);
        put(said, Wish.SCATTER, scatter);
        put(said, Wish.EXPECT, expect);
        put(said, Wish.EXPECTED, expected);
        put(said, Wish.WORTH, worth);
        put(said, Wish.CONTROL_SHARE, controlShare);
        put(said, Wish.SEEN, seen);
        put(said, Wish.ABOVE, above);
        put(said, Wish.OF, share);
        put(said, Wish.POWER, power);
        put(said, Wish.RESOLUTION, resolution);
        put(said, Wish.PER_GROUP, perGroup);
        put(said, Wish.GROUPS, groups);
        put(said, Wish.COATED, coated);
        put(said, Wish.FILAMENT, filament);
        put(said, Wish.RESIN, resin);
        put(said, Wish.PRINT_TIME, printTime);
        put(said, Wish.HAND_TIME, handTime);
        put(said, Wish.FILAMENT_PRICE, filamentPrice);
        put(said, Wish.RESIN_PRICE, resinPrice);
        return new NumbersAsked(said);
    }

    private static void put(Map<Wish, String> said, Wish wish, @Nullable String text) {
        if (text != null) {
            said.put(wish, text);
        }
    }

    private static void json(Json out, NumbersTold told) throws IOException {
        Numbers numbers = told.numbers();
        out.put("effect", told.effect().word()).put("expect", told.expectation().word());
        if (told.scatter().isPresent()) {
            out.put("scatter", told.scatter().get().value())
                    .put("scatterFrom", told.scatter().get().words());
        } else {
            out.reason("scatter", "parts are counted or put in order");
        }
        out.put("relative", told.sizes() == NumbersTold.Sizes.RELATIVE);
        if (numbers.enough().isPresent()) {
            out.put("perGroup", numbers.enough().getAsInt());
        } else {
            out.reason("perGroup", "more than %s would be needed".formatted(Numbers.MOST));
        }
        out.put("power", numbers.power()).put("method", numbers.method());
        out.texts("assuming", told.assuming());
        out.list("numbers", list -> {
            for (Numbers.Row row : numbers.rows()) {
                list.object(one -> json(one, row));
            }
        });
        out.findings(told.findings());
    }

    private static void json(Json one, Numbers.Row row) throws IOException {
        one.put("perGroup", row.perGroup()).put("power", row.power());
        if (row.smallest().isPresent()) {
            one.put("smallestEffectAt80", row.smallest().getAsDouble());
        }
        Effort.Cost cost = row.cost();
        one.put("specimens", cost.specimens())
                .put("filament_g", cost.filamentGrams())
                .put("resin_g", cost.resinGrams())
                .put("print_h", cost.printHours())
                .put("hand_h", cost.handHours())
                .put("money", cost.money());
    }

    private static String text(NumbersTold told) {
        Numbers numbers = told.numbers();
        StringBuilder text = new StringBuilder();
        WrittenNumbers.scatter(told).ifPresent(it -> text.append(it).append('\n'));
        Aligned rows = new Aligned();
        List<String> header = new ArrayList<>(
                List.of("per group", "chance", WrittenNumbers.smallestHeader(told)));
        boolean costs = numbers.rows().stream()
                .anyMatch(it -> it.cost().filamentGrams() + it.cost().handHours() > 0);
        if (costs) {
            header.addAll(List.of("filament", "resin", "printing", "by hand", "money"));
        }
        rows.row(header.toArray(String[]::new));
        for (Numbers.Row row : numbers.rows()) {
            List<String> cells = new ArrayList<>(List.of(
                    Integer.toString(row.perGroup()),
                    Written.percent(row.power()),
                    WrittenNumbers.smallest(told, row)));
            if (costs) {
                Effort.Cost cost = row.cost();
                cells.add(Written.number(cost.filamentGrams(), 3) + " g");
                cells.add(Written.number(cost.resinGrams(), 3) + " g");
                cells.add(Written.number(cost.printHours(), 3) + " h");
                cells.add(Written.number(cost.handHours(), 3) + " h");
                cells.add(Written.fixed(cost.money(), 2));
            }
            rows.row(cells.toArray(String[]::new));
        }
        text.append(rows);
        numbers.enough()
                .ifPresent(
                        enough -> text.append("%s per group find it with a chance of %s or more\n"
                                .formatted(enough, Written.percent(numbers.power()))));
        text.append(ComparisonsText.wrapped("chance: " + numbers.method(), ""));
        if (!told.assuming().isEmpty()) {
            text.append(ComparisonsText.wrapped("if " + String.join("; ", told.assuming()), ""));
        }
        told.findings()
                .forEach(it -> text.append(
                        ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        return text.toString();
    }
}
