package org.twinbar.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.datapackage.Licence;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study export STUDY}: its data package. */
@Command(
        name = "export",
        description = {
            "Writes a study as a Frictionless Data Package: every reading as it came, what was",
            "entered by whom and why, results and verdicts. 'study import --package' reads it.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyExport implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "STUDY", description = "Name of the study.")
    String study = "";

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "FILE.zip|DIR",
            description = "A zip where it ends in .zip, else a folder.")
    Path out = Path.of("");

    @Option(
            names = "--licence",
            paramLabel = "NAME",
            description = "What others may do with the data, such as CC0-1.0 or CC-BY-4.0.")
    @Nullable
    String licence;

    StudyExport(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Optional<Licence> said = Optional.ofNullable(licence).map(Licence::of);
        try (Workspace open = context.openThere(workspace.folder);
                Bar bar = new Bar(context.terminal(), "specimens")) {
            StudyName name = open.study(study);
            JudgedStudy judged = open.judge(name, bar);
            bar.close();
            open.packages().write(name, judged, said, out);
            context.terminal().out().println(out);
        }
        return Cli.DONE;
    }
}
