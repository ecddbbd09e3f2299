package org.twinbar.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.planning.Expected;
import org.twinbar.planning.RunScatter;
import org.twinbar.planning.Sizing;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.QuantityException;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.statistics.PlannedEffect;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code twinbar size}: how many specimens per group, or what a number of them can show. */
@Command(
        name = "size",
        description = {
            "How many specimens per group until the verdict would be 'supported', with the power",
            "asked for, if the true effect is the expected one; or what a number of them can show.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class SizeCommand implements Callable<Integer> {

    /** As which number the change is expected. */
    enum Kind {
        RATIO,
        DIFFERENCE;

        String word() {
            return this == RATIO ? "ratio" : "difference";
        }
    }

    private final Context context;

    @Option(
            names = "--scatter",
            required = true,
            paramLabel = "SIZE",
            description = "Standard deviation of one specimen: 6%% of the mean, or an amount; with"
                    + " --runs, within a run.")
    String scatter = "";

    @Option(
            names = "--expected",
            required = true,
            paramLabel = "CHANGE",
            description = "True change to be found, such as 15%% or -3°C.")
    String expected = "";

    @Option(
            names = "--worth",
            paramLabel = "SIZE",
            description = "Smallest change worth having; any will do unless said.")
    @Nullable
    String worth;

    @Option(
            names = "--power",
            paramLabel = "SHARE",
            description = "Chance of finding it; 0.8 unless said.")
    @Nullable
    String power;

    @Option(
            names = "--effect",
            paramLabel = "ratio|difference",
            description = "As which number; ratio unless said.")
    Kind effect = Kind.RATIO;

    @Option(
            names = "--per-group",
            paramLabel = "N",
            description = "Tells the power of so many instead.")
    @Nullable
    Integer perGroup;

    @Option(
            names = "--runs",
            description =
                    "Asks for print runs: where a whole run has one treatment, it is the unit.")
    boolean runs;

    @Option(
            names = "--between",
            paramLabel = "SIZE",
            description = "With --runs: standard deviation from run to run.")
    @Nullable
    String between;

    @Option(
            names = "--per-run",
            paramLabel = "N",
            description = "With --runs: specimens in each run; 5 unless said.")
    int perRun = 5;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "Of the simulated studies; 1 unless said.")
    long seed = 1;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    SizeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        PlannedEffect planned = planned();
        Sizing sizing = perGroup == null
                ? Sizing.forPower(planned, Typed.share("--power", power, Sizing.USUAL_POWER), seed)
                : Sizing.forNumber(planned, perGroup, seed);
        if (json) {
            json(sizing);
        } else {
            context.terminal().out().print(text(sizing));
        }
        return Cli.DONE;
    }

    private PlannedEffect planned() {
        double size = worth == null ? 0 : amount("--worth", worth);
        double change = amount("--expected", expected);
        return effect == Kind.RATIO
                ? Expected.ratio(change, size, unitScatter())
                : Expected.difference(change, size, unitScatter());
    }

    /** The scatter of what is counted: of a specimen, or of a run's mean. */
    private double unitScatter() {
        double within = amount("--scatter", scatter);
        if (!runs) {
            if (between != null) {
                throw new UsageException("--between goes with --runs");
            }
            return within;
        }
        if (between == null) {
            throw new UsageException("--runs needs --between, the scatter from run to run");
        }
        return new RunScatter(amount("--between", between), within, perRun).ofRunMean();
    }

    /** A share for a ratio; for a difference an amount in the unit of the scatter. */
    private double amount(String option, String text) {
        if (effect == Kind.RATIO) {
            return Typed.share(option, text);
        }
        try {
            Quantity quantity = Quantity.parse(text);
            return quantity.unit().equals(Unit.ONE)
                    ? quantity.value()
                    : quantity.differenceIn(unit());
        } catch (QuantityException e) {
            throw new UsageException("%s: %s".formatted(option, e.getMessage()));
        }
    }

    private Unit unit() {
        return Quantity.parse(scatter).unit();
    }

    private void json(Sizing sizing) {
        Json.write(context.terminal().out(), out -> {
            out.put("perGroup", sizing.perGroup()).put("power", sizing.power());
            if (sizing.smallestEffectAt80().isPresent()) {
                out.put("smallestEffectAt80", sizing.smallestEffectAt80().getAsDouble());
            } else {
                out.reason("smallestEffectAt80", "this scatter hides any ratio from so few");
            }
            out.put("effect", effect.word()).put("counts", runs ? "runs" : "specimens");
            if (runs) {
                out.put("specimensPerRun", perRun);
            }
            out.findings(sizing.findings()).put("seed", seed);
        });
    }

    private String text(Sizing sizing) {
        StringBuilder text = new StringBuilder("%s %s per group%s find %s with a chance of %s\n"
                .formatted(
                        sizing.perGroup(),
                        runs ? "print runs" : "specimens",
                        runs ? " of %s specimens each".formatted(perRun) : "",
                        expected,
                        Written.percent(sizing.power())));
        if (sizing.smallestEffectAt80().isPresent()) {
            double smallest = sizing.smallestEffectAt80().getAsDouble();
            text.append("smallest change found with a chance of 80 %%: %s\n"
                    .formatted(
                            effect == Kind.RATIO
                                    ? Written.ratioChange(smallest)
                                    : Written.number(smallest, 3)
                                            + (unit().equals(Unit.ONE)
                                                    ? ""
                                                    : " " + unit().symbol())));
        }
        sizing.findings()
                .forEach(it -> text.append(
                        ComparisonsText.wrapped(it.level().word() + ": " + it.text(), "")));
        if (runs) {
            text.append(ComparisonsText.wrapped(
                    "note: half of each group in every run takes the scatter between runs out of the"
                            + " comparison and needs far fewer, where the treatment allows it.",
                    ""));
        }
        return text.append("seed ").append(seed).append('\n').toString();
    }
}
