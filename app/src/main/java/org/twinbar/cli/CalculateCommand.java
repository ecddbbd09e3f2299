package org.twinbar.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Spelling;
import org.twinbar.exchange.Table;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.study.calculation.Calculated;
import org.twinbar.study.calculation.Calculation;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.table.Handed;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code twinbar calculate METHOD}: from readings to results with their uncertainty. */
@Command(
        name = "calculate",
        description = "From readings of specimens to results with their uncertainty.",
        sortOptions = false)
final class CalculateCommand implements Callable<Integer> {

    private final Context context;

    @Spec
    @Nullable
    CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "METHOD",
            description = "The test method; 'calculate METHOD --help' tells what it asks for.")
    @Nullable
    String method;

    @Option(
            names = "--specimens",
            paramLabel = "FILE",
            description = "Table with a row for each specimen; - for standard input.")
    @Nullable
    String specimens;

    @Option(
            names = "--curves",
            paramLabel = "DIR",
            description = "Folder of the curve files; the table's own unless said.")
    @Nullable
    Path curves;

    @Mixin
    TestOptions test = new TestOptions();

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    ReadingOptions reading = new ReadingOptions();

    @Option(
            names = "--own",
            paramLabel = "FILE",
            description = "A method of your own, written down in TOML (docs/own-method.md).")
    List<Path> own = new ArrayList<>();

    @Option(names = "--methods", description = "Lists the methods.")
    boolean list;

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    @Option(names = "--csv", description = "Writes a table with a row for each specimen.")
    boolean csv;

    @Option(
            names = {"-h", "--help"},
            description = "Help on the command, or on the method that is named.")
    boolean help;

    CalculateCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Methods methods = OwnMethods.among(
                context.methods().get(), own.stream().map(OwnMethods::read).toList());
        if (list) {
            context.terminal().out().print(listed(methods));
        } else if (help) {
            help(methods);
        } else {
            calculate(methods);
        }
        return Cli.DONE;
    }

    private static String listed(Methods methods) {
        Aligned rows = new Aligned();
        methods.all()
                .forEach(
                        it -> rows.row(it.description().name(), it.description().title()));
        return rows.toString();
    }

    private void help(Methods methods) {
        if (method != null) {
            context.terminal().out().print(MethodHelp.of(description(methods, method)));
            context.terminal().out().println();
        }
        if (spec != null) {
            spec.commandLine().usage(context.terminal().out(), CommandLine.Help.Ansi.OFF);
        }
    }

    private static Description description(Methods methods, String name) {
        Set<String> names = methods.all().stream()
                .map(it -> it.description().name())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
        return methods.named(name)
                .orElseThrow(() -> new UsageException("there is no method '%s' among %s%s"
                        .formatted(name, String.join(", ", names), Spelling.hint(name, names))))
                .description();
    }

    private void calculate(Methods methods) {
        if (method == null) {
            throw new UsageException("name a method; 'calculate --methods' lists them");
        }
        if (json && csv) {
            throw new UsageException("--json and --csv can't both be written");
        }
        Description description = description(methods, method);
        String file = specimens;
        if (file == null) {
            throw new UsageException(
                    "calculate %s needs --specimens FILE, a table with a row for each specimen"
                            .formatted(method));
        }
        Set<String> channels =
                description.channels().stream().map(Named::name).collect(Collectors.toSet());
        Source source = context.source(file);
        Table table = Table.read(source, reading.readAs(name -> !channels.contains(name)));
        if (reading.explain) {
            context.terminal().say(table.explanation());
        }
        Path folder = Optional.ofNullable(curves).orElseGet(() -> Context.folderOf(file));
        ReadAs curveAs = reading.curvesReadAs(channels);
        Calculation calculation = Calculation.of(methods, test.sheet(method))
                .with(Handed.in(folder), curveAs)
                .with(Calculation.Drawing.RESULTS_ALONE);
        write(test.withShelf(context, workspace.folder, shelf -> {
            try (Bar bar = new Bar(context.terminal(), "specimens")) {
                return calculation.with(shelf).with(bar).run(table, KeptFile.of(source));
            }
        }));
    }

    private void write(Calculated calculated) {
        if (json) {
            ResultsJson.write(calculated, context.terminal().out());
        } else if (csv) {
            ResultsCsv.write(calculated, context.terminal().out());
        } else {
            context.terminal().out().print(ResultsText.of(calculated));
        }
    }
}
