package org.twinbar.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.twinbar.study.Demo;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code twinbar demo}: the demo study, from invented raw readings to a report. */
@Command(
        name = "demo",
        description = {
            "Makes a study of a sailing club's printed fittings from raw readings, prints its verdicts,",
            "writes its report and serves it. All its data are invented.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class DemoCommand implements Callable<Integer> {

    private final Context context;

    @Option(
            names = "--workspace",
            paramLabel = "DIR",
            description = "Folder of the workspace; 'twinbar-demo/workspace' unless said.")
    Path workspace = Path.of("twinbar-demo", "workspace");

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Folder of the report; 'twinbar-demo' unless said.")
    Path out = Path.of("twinbar-demo");

    @Option(
            names = "--port",
            paramLabel = "N",
            description = "Port on the loopback address; any that is free unless said.")
    int port;

    @Option(names = "--no-serve", description = "Ends when the report is written.")
    boolean noServe;

    DemoCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace open = context.open(workspace)) {
            StudyName name = Demo.into(open);
            JudgedStudy judged = open.judge(name, (done, of) -> {});
            context.terminal().out().println(judged.question() + " (invented data)");
            context.terminal().out().println();
            context.terminal().out().print(ClaimsText.of(judged));
            context.terminal().flush();
            ReportFiles.write(
                            new ReportFiles.Published(
                                    judged,
                                    () -> open.packages().zip(name, judged, Optional.empty()),
                                    open.stills(name, judged)),
                            out,
                            EnumSet.of(ReportFiles.Form.HTML))
                    .forEach(file -> context.terminal().say("Report: " + file));
        }
        if (!noServe) {
            try (Door.Open pages = context.door().open(workspace, port)) {
                ServeCommand.announce(context, pages);
                ServeCommand.untilStopped(pages);
            }
        }
        return Cli.DONE;
    }
}
