package org.twinbar.cli;

import java.util.concurrent.Callable;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.Publication;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study publish STUDY}: keeps its verdicts as they stand. */
@Command(
        name = "publish",
        description = {
            "Keeps a study's verdicts as they stand, with the digests of the readings, the methods'",
            "versions and settings. Where it is judged otherwise later, the study says so, shows both,",
            "and drafts a correction.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyPublish implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "STUDY", description = "Name of the study.")
    String study = "";

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--where",
            paramLabel = "TEXT",
            description = "Where it is published, such as the title of a video.")
    String where = "";

    @Option(names = "--who", paramLabel = "NAME", description = "Who publishes it.")
    String who = StudyCommand.WHO;

    StudyPublish(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace open = context.openThere(workspace.folder)) {
            StudyName name = open.study(study);
            Publication kept = open.publish(Act.by(who), name, where);
            context.terminal()
                    .out()
                    .println("Kept as published%s:"
                            .formatted(kept.where().isBlank() ? "" : " (" + kept.where() + ")"));
            Aligned rows = new Aligned();
            kept.said().forEach(it -> rows.row("“" + it.claim() + "”", it.question(), it.word()));
            context.terminal().out().print(rows);
        }
        return Cli.DONE;
    }
}
