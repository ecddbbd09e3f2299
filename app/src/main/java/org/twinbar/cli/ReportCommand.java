package org.twinbar.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.datapackage.Licence;
import org.twinbar.report.kit.Palette;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar report STUDY}: writes what can be published. */
@Command(
        name = "report",
        description = {
            "Writes what can be published of a study: one page that works offline, a PDF, its data",
            "package, and a kit of pictures, moving curves and words for a video or a post. All of it",
            "unless said otherwise.",
        },
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

    @Option(
            names = "--pdf",
            description = "The document, report.pdf, with the data package inside.")
    boolean pdf;

    @Option(
            names = "--kit",
            description = "The kit: verdicts as pictures in three shapes, curves that draw"
                    + " themselves, a table, a description, a list of shots.")
    boolean kit;

    @Option(
            names = "--package",
            description = "The data package, package.zip, which others can check.")
    boolean packaged;

    @Option(
            names = "--licence",
            paramLabel = "NAME",
            description = "What others may do with the data, such as CC0-1.0 or CC-BY-4.0.")
    @Nullable
    String licence;

    @Option(
            names = "--theme",
            paramLabel = "FILE",
            description = "Other colours for the kit's pictures: TOML with [light] and [dark], such"
                    + " as treated = \"#0b5d66\".")
    @Nullable
    Path theme;

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
        if (kit) {
            forms.add(ReportFiles.Form.KIT);
        }
        if (packaged) {
            forms.add(ReportFiles.Form.PACKAGE);
        }
        Optional<Licence> said = Optional.ofNullable(licence).map(Licence::of);
        List<Palette> palettes =
                theme == null ? List.of(Palette.LIGHT, Palette.DARK) : ThemeFile.read(theme);
        try (Workspace open = context.openThere(workspace.folder);
                Bar bar = new Bar(context.terminal(), "specimens")) {
            StudyName name = open.study(study);
            JudgedStudy judged = open.judge(name, bar);
            bar.close();
            ReportFiles.Published published = new ReportFiles.Published(
                    judged,
                    () -> open.packages().zip(name, judged, said),
                    open.stills(name, judged));
            try (Bar drawing = new Bar(context.terminal(), "pictures")) {
                ReportFiles.write(published, out, forms, palettes, drawing)
                        .forEach(file -> context.terminal().out().println(file));
            }
        }
        return Cli.DONE;
    }
}
