package org.twinbar.cli;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.study.calculation.Comparisons;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar compare FILE}: from values of groups to a verdict with reasons. */
@Command(
        name = "compare",
        description = {
            "From values of treated and untreated specimens to a verdict with reasons.",
            "FILE is a table, or what 'twinbar calculate' wrote as --csv or --json.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class CompareCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "FILE", description = "The table; - for standard input.")
    String file = "";

    @Option(names = "--value", required = true, paramLabel = "COLUMN", description = "Compared.")
    String value = "";

    @Option(
            names = "--group",
            required = true,
            paramLabel = "COLUMN",
            description = "Holds the groups.")
    String group = "";

    @Option(
            names = "--control",
            paramLabel = "NAME",
            description = "The untreated group; a level or a line alone needs none.")
    @Nullable
    String control;

    @Option(
            names = "--expect",
            paramLabel = "higher|lower|same|slower|faster",
            description = {
                "What the claim says of the treated; higher unless said.",
                "A rate is how fast it happens and needs this said: slower (lower) where parts",
                "last longer, faster (higher) where it comes sooner.",
            })
    @Nullable
    String expect;

    @Option(
            names = "--treated",
            paramLabel = "NAME",
            description = "One treated group; every group but the control unless said.")
    List<String> treated = new ArrayList<>();

    @Option(
            names = "--by",
            paramLabel = "COLUMN",
            description = "A comparison for each value of the column.")
    List<String> by = new ArrayList<>();

    @Option(
            names = "--block",
            paramLabel = "COLUMN",
            description = "Print run, mix, oven load or pair that holds both groups.")
    @Nullable
    String block;

    @Option(
            names = "--unit",
            paramLabel = "COLUMN",
            description = "What was treated independently, where specimens share a treatment.")
    @Nullable
    String unit;

    @Option(
            names = "--trend",
            paramLabel = "COLUMN",
            description = "Amounts, such as film thickness: a straight line over them.")
    @Nullable
    String trend;

    @Option(
            names = "--order",
            paramLabel = "COLUMN",
            description = {
                "When each was tested, as numbers or times, to look for drift;",
                "order, test_order or tested_at unless said.",
            })
    @Nullable
    String order;

    @Option(
            names = "--position",
            paramLabel = "COLUMN[,COLUMN]",
            description = {
                "Where on the plate each was printed: names, or two of distances;",
                "plate_x,plate_y or position unless said.",
            })
    @Nullable
    String position;

    @Option(
            names = "--effect",
            paramLabel = "ratio|difference|share|rate|rank|level",
            description = "As which number; from the column unless said.")
    @Nullable
    String effect;

    @Option(
            names = "--worth",
            paramLabel = "SIZE",
            description = "Smallest change worth having, such as 5%% or 3°C.")
    @Nullable
    String worth;

    @Option(
            names = "--claimed",
            paramLabel = "SIZE",
            description = "Size that the claim names, such as 10%%.")
    @Nullable
    String claimed;

    @Option(
            names = "--interval",
            paramLabel = "fieller|welch|log|bca|permutation",
            description = "An interval to show beside; the verdict reads the default one.")
    List<String> intervals = new ArrayList<>();

    @Option(
            names = "--event",
            paramLabel = "COLUMN",
            description = "For a rate: 1 where it happened, 0 where the test ended first.")
    @Nullable
    String event;

    @Option(names = "--at", paramLabel = "LEVEL", description = "For a level: what to clear.")
    @Nullable
    String at;

    @Option(
            names = "--of",
            paramLabel = "SHARE",
            description = "For a level: the share of parts that must clear it, such as 90%%.")
    @Nullable
    String of;

    @Option(
            names = "--resolution",
            paramLabel = "Q",
            description = "Smallest step of the values; the one seen in them unless said.")
    @Nullable
    String resolution;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "For anything drawn at random; 1 unless said.")
    @Nullable
    String seed;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    @Option(
            names = "--details",
            description =
                    "Adds all pairs, intervals beside, other ways of looking, and what was assumed.")
    boolean details;

    @Mixin
    ReadingOptions reading = new ReadingOptions();

    CompareCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Source source = context.source(file);
        Comparisons.Outcome outcome = outcome(source);
        if (json) {
            ComparisonsJson.write(outcome, context.terminal().out());
        } else {
            context.terminal().out().print(ComparisonsText.of(outcome, details));
        }
        return Cli.DONE;
    }

    private Comparisons.Outcome outcome(Source source) {
        String text = new String(source.bytes(), StandardCharsets.UTF_8);
        if (text.stripLeading().startsWith("{")) {
            return Comparisons.ofJson(
                    source.name(), text, asked(), group, context.methods().get());
        }
        Table table = Table.read(source, reading.readAs());
        if (reading.explain) {
            context.terminal().say(table.explanation());
        }
        return Comparisons.of(table, asked(), group, context.methods().get());
    }

    private Asked asked() {
        Asked asked = Asked.of(value).treated(treated).beside(intervals).by(by);
        asked = said(asked, Term.CONTROL, control);
        asked = said(asked, Term.EXPECT, expect);
        asked = said(asked, Term.BLOCK, block);
        asked = said(asked, Term.UNIT, unit);
        asked = said(asked, Term.TREND, trend);
        asked = said(asked, Term.ORDER, order);
        asked = said(asked, Term.POSITION, position);
        asked = said(asked, Term.EFFECT, effect);
        asked = said(asked, Term.WORTH, worth);
        asked = said(asked, Term.CLAIMED, claimed);
        asked = said(asked, Term.EVENT, event);
        asked = said(asked, Term.AT, at);
        asked = said(asked, Term.OF, of);
        asked = said(asked, Term.RESOLUTION, resolution);
        return said(asked, Term.SEED, seed);
    }

    private static Asked said(Asked asked, Term term, @Nullable String text) {
        return text == null ? asked : asked.with(term, text);
    }
}
