package org.twinbar.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.finding.Finding;
import org.twinbar.method.Answering;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Property.Scale;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Aim;
import org.twinbar.planning.Effort;
import org.twinbar.planning.Expected;
import org.twinbar.planning.Numbers;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.study.EarlierScatter;
import org.twinbar.study.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar plan numbers}: what so many specimens can tell, and what they take. */
@Command(
        name = "numbers",
        description = {
            "What so many specimens per group can tell, and what they take, for each number.",
            "The scatter is the one given, else that of this workspace's studies, else the one",
            "that is usual for the test.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class PlanNumbersCommand implements Callable<Integer> {

    private static final Unit HOURS = Unit.of("h");

    private final Context context;

    @Option(names = "--method", paramLabel = "METHOD", description = "The test.")
    String method = "";

    @Option(names = "--property", paramLabel = "NAME", description = "What is compared.")
    @Nullable
    String property;

    @Option(
            names = "--scatter",
            paramLabel = "SIZE",
            description = "Standard deviation of a specimen: 6%% of the mean, or an amount.")
    @Nullable
    String scatter;

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

    @Option(names = "--groups", paramLabel = "N", description = "Groups; 2 unless said.")
    int groups = 2;

    @Option(
            names = "--coated",
            paramLabel = "N",
            description = "How many of them take resin; 1 unless said.")
    int coated = 1;

    @Option(names = "--filament", paramLabel = "MASS", description = "Per specimen.")
    String filament = "0 g";

    @Option(names = "--resin", paramLabel = "MASS", description = "Per coated specimen.")
    String resin = "0 g";

    @Option(names = "--print-time", paramLabel = "TIME", description = "Per specimen.")
    String printTime = "0 h";

    @Option(names = "--hand-time", paramLabel = "TIME", description = "Per specimen.")
    String handTime = "0 h";

    @Option(names = "--filament-price", paramLabel = "MONEY", description = "Per kilogram.")
    double filamentPrice;

    @Option(names = "--resin-price", paramLabel = "MONEY", description = "Per kilogram.")
    double resinPrice;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    PlanNumbersCommand(Context context) {
        this.context = context;
    }

    /** A scatter and where it comes from. */
    private record Scattered(double value, String from) {}

    @Override
    public Integer call() {
        Optional<Property> asked = property();
        boolean relative = asked.map(it -> it.scale() == Scale.RATIO).orElseGet(this::inPerCent);
        boolean yesNo = asked.filter(it -> it.scale() == Scale.YES_NO).isPresent();
        Optional<Scattered> scattered = yesNo ? Optional.empty() : Optional.of(scatter(asked));
        List<Finding> findings = new ArrayList<>();
        double seen =
                scattered.map(it -> seen(it.value(), relative, asked, findings)).orElse(0.0);
        Aim aim = yesNo ? allPass() : aim(seen, relative, asked);
        Numbers numbers = Numbers.of(
                aim,
                Typed.share("--power", power, 0.8),
                aim.groups() == 1
                        ? new Numbers.Groups(1, Math.min(1, coated))
                        : new Numbers.Groups(groups, coated),
                effort());
        findings.addAll(numbers.findings());
        String from = scattered.map(Scattered::from).orElse("none: parts pass or don't");
        if (json) {
            Json.write(
                    context.terminal().out(),
                    out -> json(out, numbers, seen, from, relative, findings));
        } else {
            context.terminal().out().print(text(numbers, seen, from, relative, asked, findings));
        }
        return Cli.DONE;
    }

    private Optional<Property> property() {
        if (method.isEmpty()) {
            return Optional.empty();
        }
        TestMethod test = test(context.methods().get());
        if (property == null) {
            return Optional.of(test.description().properties().get(0));
        }
        return Optional.of(test.description()
                .property(property)
                .orElseThrow(() -> new UsageException(
                        "--property: the %s test yields no '%s'".formatted(method, property))));
    }

    private TestMethod test(Methods methods) {
        return methods.named(method)
                .orElseThrow(() -> new UsageException(
                        "--method: there is no test '%s'; 'twinbar calculate --methods' lists them"
                                .formatted(method)));
    }

    private boolean inPerCent() {
        return scatter == null || scatter.contains("%") || !scatter.matches(".*[A-Za-z°].*");
    }

    private Scattered scatter(Optional<Property> asked) {
        if (scatter != null) {
            return new Scattered(
                    amount(
                            "--scatter",
                            scatter,
                            asked.map(it -> it.scale() == Scale.RATIO).orElseGet(this::inPerCent),
                            asked),
                    "given");
        }
        Property known = asked.orElseThrow(() -> new UsageException(
                "say the scatter with --scatter, or the test with --method and --property"));
        return earlier(known)
                .or(() -> usual(known))
                .orElseThrow(() -> new UsageException(
                        "no scatter is usual for %s: give one with --scatter, from pilots say"
                                .formatted(known.name())));
    }

    private Optional<Scattered> earlier(Property known) {
        if (!java.nio.file.Files.isDirectory(workspace.folder)) {
            return Optional.empty();
        }
        try (Workspace open = context.openThere(workspace.folder)) {
            Optional<EarlierScatter> earlier = open.plans().earlierScatter(method, known);
            return earlier.map(it -> new Scattered(
                    it.scatter(),
                    "of %s, %s degrees of freedom"
                            .formatted(String.join(", ", it.studies()), it.df())));
        }
    }

    private Optional<Scattered> usual(Property known) {
        for (Answering each : test(context.methods().get()).answering()) {
            boolean same = each.property().equals(known)
                    || each.property().family().equals(known.family());
            OptionalDouble usual = each.usualScatter();
            if (same && usual.isPresent()) {
                return Optional.of(new Scattered(
                        usual.getAsDouble(), "usual for the test (common practice, no source)"));
            }
        }
        return Optional.empty();
    }

    private double seen(
            double value, boolean relative, Optional<Property> asked, List<Finding> findings) {
        if (resolution == null) {
            return value;
        }
        double step = amount("--resolution", resolution, relative, asked);
        findings.addAll(Numbers.resolution(value, step));
        return Numbers.seenScatter(value, step);
    }

    private Aim aim(double seen, boolean relative, Optional<Property> asked) {
        if (above != null) {
            return new Aim.Clears(
                    amount("--above", above, relative, asked),
                    seen,
                    Typed.share("--of", share, 0.9));
        }
        double size = worth == null ? 0 : amount("--worth", worth, relative, asked);
        if (expected == null) {
            if (worth == null) {
                throw new UsageException(
                        "say the change that is --expected; for a claim of no change its --worth; for a level how far --above it the mean lies");
            }
            return new Aim.NoChange(
                    size,
                    seen,
                    relative ? Aim.NoChange.Scale.RATIO : Aim.NoChange.Scale.DIFFERENCE);
        }
        double change = amount("--expected", expected, relative, asked);
        return new Aim.Change(
                relative
                        ? Expected.ratio(change, size, seen)
                        : Expected.difference(change, size, seen));
    }

    private Aim allPass() {
        return new Aim.AllPass(
                Typed.share("--above", above == null ? "100%" : above),
                Typed.share("--of", share, 0.9));
    }

    private static double amount(
            String option, String text, boolean relative, Optional<Property> asked) {
        if (relative) {
            return Typed.share(option, text);
        }
        try {
            Quantity quantity = Quantity.parse(text);
            return quantity.unit().equals(Unit.ONE) || asked.isEmpty()
                    ? quantity.value()
                    : quantity.differenceIn(asked.get().unit());
        } catch (QuantityException e) {
            throw new UsageException("%s: %s".formatted(option, e.getMessage()));
        }
    }

    private Effort effort() {
        return new Effort(
                Typed.in(Typed.GRAMS, "--filament", filament),
                Typed.in(Typed.GRAMS, "--resin", resin),
                Typed.in(HOURS, "--print-time", printTime),
                Typed.in(HOURS, "--hand-time", handTime),
                new Effort.Prices(filamentPrice, resinPrice));
    }

    private static void json(
            Json out,
            Numbers numbers,
            double seen,
            String from,
            boolean relative,
            List<Finding> findings)
            throws IOException {
        out.put("scatter", seen).put("scatterFrom", from).put("relative", relative);
        if (numbers.enough().isPresent()) {
            out.put("perGroup", numbers.enough().getAsInt());
        } else {
            out.reason("perGroup", "more than %s would be needed".formatted(Numbers.MOST));
        }
        out.put("power", numbers.power());
        out.list("numbers", list -> {
            for (Numbers.Row row : numbers.rows()) {
                list.object(one -> {
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
                });
            }
        });
        out.findings(findings);
    }

    private String text(
            Numbers numbers,
            double seen,
            String from,
            boolean relative,
            Optional<Property> asked,
            List<Finding> findings) {
        StringBuilder text = new StringBuilder();
        if (seen > 0) {
            text.append("scatter %s, %s\n"
                    .formatted(relative ? Written.percent(seen) : amount(seen, asked), from));
        }
        Aligned rows = new Aligned();
        List<String> header = new ArrayList<>(List.of("per group", "chance", "finds from"));
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
                    row.smallest().isPresent()
                            ? relative
                                    ? Written.ratioChange(row.smallest().getAsDouble())
                                    : amount(row.smallest().getAsDouble(), asked)
                            : "–"));
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
        findings.forEach(it ->
                text.append(ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        return text.toString();
    }

    private static String amount(double value, Optional<Property> asked) {
        String symbol = asked.map(it -> it.unit().symbol()).orElse("");
        return Written.number(value, 3) + (symbol.isEmpty() ? "" : " " + symbol);
    }
}
