package org.twinbar.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.Callable;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.Workspace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar report STUDY}: writes what can be published. */
@Command(
        name = "report",
        description = "Writes a study's report: one page that works offline, and a PDF.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class ReportCommand implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "STUDY", description = "Name of the study.")
    String study = "";

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder to write into.")
    Path out = Path.of("");

    @Option(names = "--html", description = "The page, report.html.")
    boolean html;

    @Option(names = "--pdf", description = "The document, report.pdf.")
    boolean pdf;

    ReportCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Set<ReportFiles.Form> forms = EnumSet.noneOf(ReportFiles.Form.class);
        if (html) {
            forms.add(ReportFiles.Form.HTML);
        }
        if (pdf) {
            forms.add(ReportFiles.Form.PDF);
        }
        try (Workspace open = context.openThere(workspace.folder);
                Bar bar = new Bar(context.terminal(), "specimens")) {
            JudgedStudy judged = open.judge(open.study(study), bar);
            bar.close();
            ReportFiles.write(judged, out, forms)
                    .forEach(file -> context.terminal().out().println(file));
        }
        return Cli.DONE;
    }
}
