package org.twinbar.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study}: the studies of a workspace. */
@Command(
        name = "study",
        description =
                "Makes, lists, imports, shows, corrects, exports, checks and publishes studies.",
        mixinStandardHelpOptions = true,
        subcommands = {
            StudyCommand.New.class,
            StudyCommand.ListAll.class,
            StudyImport.class,
            StudyCommand.Show.class,
            StudyAskCommand.class,
            StudyEvidenceCommand.class,
            StudyExport.class,
            StudyCheck.class,
            StudyPublish.class,
            StudyCorrect.class,
        })
final class StudyCommand extends HoldsCommands {

    static final String WHO = "command line";

    /** Makes an empty study. */
    @Command(
            name = "new",
            description = "Makes an empty study.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class New implements Callable<Integer> {
        private final Context context;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--name", required = true, paramLabel = "NAME", description = "Its name.")
        String name = "";

        @Option(
                names = "--question",
                paramLabel = "TEXT",
                description = "What it asks, as a sentence; its name unless said.")
        @Nullable
        String question;

        New(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.open(workspace.folder)) {
                StudyName made = open.create(Act.by(WHO), head(name, question));
                context.terminal().out().println(made.name());
            }
            return Cli.DONE;
        }
    }

    static StudyFile.Head head(String name, @Nullable String question) {
        return new StudyFile.Head(
                name, question == null ? name : question, "", JudgedStudy.Origin.MEASURED);
    }

    /** Lists the studies. */
    @Command(
            name = "list",
            description = "Lists the studies.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class ListAll implements Callable<Integer> {
        private final Context context;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        ListAll(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder)) {
                List<StudyName> studies = open.studies();
                if (json) {
                    Json.write(
                            context.terminal().out(),
                            it -> it.list("studies", list -> {
                                for (StudyName study : studies) {
                                    list.object(one -> one.put("name", study.name())
                                            .put("question", study.question())
                                            .put("created", study.created().toString()));
                                }
                            }));
                } else {
                    Aligned rows = new Aligned();
                    studies.forEach(it -> rows.row(it.name(), it.question()));
                    context.terminal().out().print(rows);
                }
            }
            return Cli.DONE;
        }
    }

    /** Shows a study's claims and verdicts. */
    @Command(
            name = "show",
            description = "Shows a study's claims and verdicts.",
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Show implements Callable<Integer> {
        private final Context context;

        @Parameters(paramLabel = "STUDY", description = "Name of the study.")
        String study = "";

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--json", description = "Writes JSON.")
        boolean json;

        Show(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            try (Workspace open = context.openThere(workspace.folder);
                    Bar bar = new Bar(context.terminal(), "specimens")) {
                JudgedStudy judged = open.judge(open.study(study), bar);
                bar.close();
                if (json) {
                    ClaimsJson.write(judged, context.terminal().out());
                } else {
                    context.terminal().out().println(judged.question());
                    context.terminal().out().println();
                    context.terminal().out().print(ClaimsText.of(judged));
                    context.terminal().out().print(PublishedText.of(judged));
                }
            }
            return Cli.DONE;
        }
    }
}
