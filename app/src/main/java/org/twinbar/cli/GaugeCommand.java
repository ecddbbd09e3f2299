package org.twinbar.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Figures;
import org.twinbar.finding.Finding;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.statistics.gauge.GaugeStudy;
import org.twinbar.study.bench.GaugeTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar gauge FILE}: how well a gauge and those who read it repeat. */
@Command(
        name = "gauge",
        description = {
            "How well a gauge and those who read it repeat: every operator reads every part equally",
            "often (a crossed study), best without knowing which part it is. What is destroyed by",
            "the reading can't be read twice: neighbours of one batch then count as gauge scatter.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class GaugeCommand implements Callable<Integer> {

    static final Finding.Kind SET_TO_ZERO = Finding.Kind.note(
            "variance-set-to-zero",
            "The variance of %s came out below zero and is taken as 0: if they differ, it is by less"
                    + " than the repeats let see.");
    static final Finding.Kind COARSE = Finding.Kind.warning(
            "gauge-coarse",
            "The gauge makes up %s %% of the spread that readings of these parts show; above 30 %%"
                    + " it is held to be unfit to tell such parts apart.");

    /** Up to here a gauge is called good, and unfit from 0.3 on; AIAG, MSA, 4th ed. 2010. */
    private static final double GOOD = 0.1;

    private static final double UNFIT = 0.3;

    private final Context context;

    @Parameters(
            paramLabel = "FILE",
            description = "Table with a row for each reading; - for standard input.")
    String file = "";

    @Option(
            names = "--value",
            required = true,
            paramLabel = "COLUMN",
            description = "What was read.")
    String value = "";

    @Option(
            names = "--part",
            required = true,
            paramLabel = "COLUMN",
            description = "On which part.")
    String part = "";

    @Option(names = "--operator", required = true, paramLabel = "COLUMN", description = "By whom.")
    String operator = "";

    @Mixin
    ReadingOptions reading = new ReadingOptions();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    GaugeCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Table table = Table.read(context.source(file), reading.readAs());
        if (reading.explain) {
            context.terminal().say(table.explanation());
        }
        GaugeTable gauge = GaugeTable.of(table, value, part, operator);
        if (json) {
            Json.write(context.terminal().out(), out -> into(out, gauge));
        } else {
            context.terminal().out().print(text(gauge));
        }
        return Cli.DONE;
    }

    private static List<Finding> findings(GaugeStudy study) {
        List<Finding> findings = new ArrayList<>();
        study.setToZero().forEach(it -> findings.add(SET_TO_ZERO.with(it)));
        if (study.share() > UNFIT) {
            findings.add(COARSE.with(Figures.two(100 * study.share())));
        }
        return findings;
    }

    private static String text(GaugeTable gauge) {
        GaugeStudy study = gauge.study();
        StringBuilder text = new StringBuilder();
        text.append("%s of %s parts, read by %s operators, %s times each\n\n"
                .formatted(
                        gauge.value().replace('_', ' '),
                        gauge.parts().size(),
                        gauge.operators().size(),
                        gauge.trials()));
        Aligned rows = new Aligned().row("scatter (standard deviation)", "", "of the variance");
        row(rows, gauge, "one operator's repeats", study.repeatability());
        row(rows, gauge, "between operators", study.reproducibility());
        row(rows, gauge, "both: the gauge", study.gauge());
        row(rows, gauge, "between parts", study.parts());
        row(rows, gauge, "all together", study.total());
        text.append(rows).append('\n');
        text.append(ComparisonsText.wrapped(sentence(gauge), ""));
        for (Finding finding : findings(study)) {
            text.append(
                    ComparisonsText.wrapped(finding.level().word() + ": " + finding.text(), ""));
        }
        return text.append(ComparisonsText.wrapped(study.method(), "")).toString();
    }

    private static void row(Aligned rows, GaugeTable gauge, String what, double sd) {
        double total = gauge.study().total();
        rows.row(
                what,
                amount(Written.number(sd, 3), gauge),
                total > 0 ? Written.percent(sd * sd / (total * total)) : "");
    }

    private static String amount(String sd, GaugeTable gauge) {
        return (sd + " " + gauge.unit().map(Unit::symbol).orElse("")).strip();
    }

    private static String sentence(GaugeTable gauge) {
        GaugeStudy study = gauge.study();
        String judged = study.share() <= GOOD
                ? "below 10 % it is held to be good"
                : study.share() <= UNFIT
                        ? "between 10 and 30 % it depends on what is at stake"
                        : "above 30 % it is held to be unfit";
        String classes = Double.isInfinite(study.categories())
                ? "nothing scatters, so that any parts are told apart"
                : "it tells %s classes of such parts apart, where five are wanted"
                        .formatted(Written.number(study.categories(), 3));
        return "One reading by one of them is uncertain by %s. The gauge makes up %s of the spread that readings show (%s); %s."
                .formatted(
                        amount(Written.uncertainty(study.gauge()), gauge),
                        Written.percent(study.share()),
                        judged,
                        classes);
    }

    private static void into(Json json, GaugeTable gauge) throws IOException {
        GaugeStudy study = gauge.study();
        json.put("value", gauge.value())
                .put("unit", gauge.unit().map(Unit::symbol).orElse(""))
                .put("parts", gauge.parts().size())
                .put("operators", gauge.operators().size())
                .put("trials", gauge.trials())
                .put("repeatability", study.repeatability())
                .put("reproducibility", study.reproducibility())
                .put("gauge", study.gauge())
                .put("betweenParts", study.parts())
                .put("total", study.total())
                .put("share", study.share());
        if (Double.isInfinite(study.categories())) {
            json.reason("categories", "nothing scatters, so that any parts are told apart");
        } else {
            json.put("categories", study.categories());
        }
        json.texts("setToZero", study.setToZero())
                .put("method", study.method())
                .findings(findings(study));
    }
}
