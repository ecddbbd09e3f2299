package org.twinbar.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.Source;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Methods;
import org.twinbar.planning.resolving.Resolution;
import org.twinbar.planning.resolving.Smallest;
import org.twinbar.report.Resolved;
import org.twinbar.report.Written;
import org.twinbar.study.bench.BenchAnswer;
import org.twinbar.study.bench.BenchAsk;
import org.twinbar.study.bench.Shelf;
import org.twinbar.study.calculation.BenchLook;
import org.twinbar.study.file.OwnMethods;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar resolve METHOD}: what a bench can tell apart before any specimen is broken. */
@Command(
        name = "resolve",
        description = {
            "What a bench can tell apart, before any specimen is broken: the smallest difference",
            "between two groups, what limits it, and what would help most.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ResolveCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "METHOD", description = "The test method.")
    String method = "";

    @Option(
            names = "--per-group",
            paramLabel = "N",
            description = "Specimens per group; 5 unless said.")
    int perGroup = BenchAsk.USUAL_PER_GROUP;

    @Option(
            names = "--property",
            paramLabel = "NAME",
            description = "What is compared; the method's first number unless said.")
    @Nullable
    String property;

    @Option(
            names = "--scatter",
            paramLabel = "SIZE",
            description = "Standard deviation from specimen to specimen: 6%%, or an amount; that of"
                    + " the typical readings unless said.")
    @Nullable
    String scatter;

    @Option(
            names = "--worth",
            paramLabel = "SIZE",
            description = "Smallest change worth having: is it within reach?")
    @Nullable
    String worth;

    @Option(
            names = "--specimens",
            paramLabel = "FILE",
            description = "Table of typical specimens; the method's worked example unless said.")
    @Nullable
    String specimens;

    @Option(
            names = "--curves",
            paramLabel = "DIR",
            description = "Folder of their curves; the table's own unless said.")
    @Nullable
    Path curves;

    @Mixin
    TestOptions test = new TestOptions();

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--own",
            paramLabel = "FILE",
            description = "A method of your own, written down in TOML (docs/own-method.md).")
    List<Path> own = new ArrayList<>();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    ResolveCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Methods methods = OwnMethods.among(
                context.methods().get(), own.stream().map(OwnMethods::read).toList());
        BenchAsk ask = new BenchAsk(
                test.sheet(method),
                Optional.ofNullable(property),
                perGroup,
                Optional.ofNullable(scatter),
                Optional.ofNullable(worth));
        BenchAnswer answer =
                test.withShelf(context, workspace.folder, shelf -> look(methods, ask, shelf));
        if (json) {
            Json.write(context.terminal().out(), out -> into(out, answer));
        } else {
            context.terminal().out().print(text(answer));
        }
        return Cli.DONE;
    }

    private BenchAnswer look(Methods methods, BenchAsk ask, Shelf shelf) {
        String file = specimens;
        if (file == null) {
            return BenchLook.of(methods, ask, shelf);
        }
        Source source = context.source(file);
        Path folder = Optional.ofNullable(curves).orElseGet(() -> Context.folderOf(file));
        return BenchLook.of(
                methods, ask, shelf, Upload.of(source.name(), source.bytes()), Handed.in(folder));
    }

    private static String text(BenchAnswer answer) {
        Resolution found = answer.resolution();
        StringBuilder text = new StringBuilder();
        text.append(ComparisonsText.wrapped(Resolved.sentence(answer), "")).append('\n');
        text.append(new Aligned()
                .row("with %s per group".formatted(found.perGroup()), "smallest difference")
                .row(
                        "if all specimens were alike",
                        Resolved.smallest(found.fromInstruments(), found))
                .row(
                        "scattering by " + Resolved.scatter(found),
                        Resolved.smallest(found.withScatter(), found)));
        text.append("\nWhat stays in a comparison, of one result\n");
        Aligned limits = new Aligned();
        Resolved.limits(found)
                .forEach(it -> limits.row(
                        "  " + it.name(),
                        Resolved.amount(it.u(), found),
                        Written.percent(it.share())));
        text.append(found.limits().isEmpty() ? "  nothing\n" : limits.toString());
        if (!found.cancelling().isEmpty()) {
            text.append("\nWhat moves both groups alike, and cancels between them\n");
            Aligned shared = new Aligned();
            found.cancelling()
                    .forEach(it -> shared.row("  " + it.name(), Resolved.amount(it.u(), found)));
            text.append(shared);
        }
        text.append("\nWhat would help, the best first\n");
        Aligned levers = new Aligned().row("  all alike", "scattering");
        for (Resolution.Lever lever : found.levers()) {
            levers.row(
                    "  " + Resolved.smallest(lever.fromInstruments(), found),
                    Resolved.smallest(lever.withScatter(), found),
                    lever.change() + Resolved.doubts(lever));
        }
        text.append(found.levers().isEmpty() ? "  nothing that was tried\n" : levers.toString());
        text.append("\nRead on\n");
        for (Instrument instrument : answer.instruments()) {
            text.append(ComparisonsText.wrapped(Resolved.instrument(instrument), "  "));
        }
        for (Finding finding : answer.findings()) {
            text.append('\n')
                    .append(ComparisonsText.wrapped(
                            finding.level().word() + ": " + finding.text(), ""));
        }
        return text.toString();
    }

    private static void into(Json json, BenchAnswer answer) throws IOException {
        Resolution found = answer.resolution();
        json.put("method", answer.description().name())
                .put("property", found.property().column())
                .put("typical", answer.typical())
                .put("value", found.value())
                .put("perGroup", found.perGroup())
                .put("own", found.own())
                .put("apart", found.apart())
                .put("scatter", found.scatter())
                .put("power", 0.8)
                .object("fromInstruments", it -> smallest(it, found.fromInstruments()))
                .object("withScatter", it -> smallest(it, found.withScatter()))
                .list("limits", list -> {
                    for (Resolution.Part part : found.limits()) {
                        list.object(one -> one.put("source", part.name())
                                .put("u", part.u())
                                .put("share", part.share()));
                    }
                })
                .list("cancelling", list -> {
                    for (Resolution.Shared shared : found.cancelling()) {
                        list.object(one -> one.put("source", shared.name()).put("u", shared.u()));
                    }
                })
                .list("levers", list -> {
                    for (Resolution.Lever lever : found.levers()) {
                        list.object(one -> one.put("change", lever.change())
                                .object(
                                        "fromInstruments",
                                        it -> smallest(it, lever.fromInstruments()))
                                .object("withScatter", it -> smallest(it, lever.withScatter()))
                                .texts("doubts", lever.doubts()));
                    }
                })
                .list("instruments", list -> {
                    for (Instrument instrument : answer.instruments()) {
                        list.object(one -> ResultsJson.instrument(one, instrument));
                    }
                })
                .findings(answer.findings());
    }

    private static void smallest(Json json, Smallest smallest) throws IOException {
        if (smallest.amount().isPresent()) {
            json.put("amount", smallest.amount().getAsDouble());
        } else {
            json.reason("amount", "the scatter hides any difference from so few");
        }
        if (smallest.share().isPresent()) {
            json.put("share", smallest.share().getAsDouble());
        } else {
            json.reason(
                    "share",
                    smallest.amount().isPresent()
                            ? "it has no true zero, so that no share can be taken of it"
                            : "the scatter hides any difference from so few");
        }
    }
}
