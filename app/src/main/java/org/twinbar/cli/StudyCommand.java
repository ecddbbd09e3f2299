package org.twinbar.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Asked;
import org.twinbar.study.Asked.Term;
import org.twinbar.study.Claim;
import org.twinbar.study.Handed;
import org.twinbar.study.JudgedStudy;
import org.twinbar.study.StudyFile;
import org.twinbar.study.StudyName;
import org.twinbar.study.Workspace;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code twinbar study}: the studies of a workspace. */
@Command(
        name = "study",
        description = "Makes, lists, imports and shows studies of a workspace.",
        mixinStandardHelpOptions = true,
        subcommands = {
            StudyCommand.New.class,
            StudyCommand.ListAll.class,
            StudyCommand.Import.class,
            StudyCommand.Show.class,
            StudyAskCommand.class,
        })
final class StudyCommand implements Runnable {

    static final String WHO = "command line";

    @Spec
    @Nullable
    CommandSpec spec;

    @Override
    public void run() {
        if (spec != null) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "say what to do: new, list, import, show or ask");
        }
    }

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

    private static StudyFile.Head head(String name, @Nullable String question) {
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
                }
            }
            return Cli.DONE;
        }
    }

    /** Makes a study from tables and curves. */
    @Command(
            name = "import",
            description = {
                "Makes a study from a table of specimens, its curves and claims.",
                "FILE is a TOML file that says it all (docs/claims.md), in place of the options.",
            },
            mixinStandardHelpOptions = true,
            sortOptions = false)
    static final class Import implements Callable<Integer> {
        private final Context context;

        @Parameters(arity = "0..1", paramLabel = "FILE", description = "A study in TOML.")
        @Nullable
        Path file;

        @Mixin
        WorkspaceOption workspace = new WorkspaceOption();

        @Option(names = "--name", paramLabel = "NAME", description = "Name of the study.")
        @Nullable
        String name;

        @Option(names = "--question", paramLabel = "TEXT", description = "What it asks.")
        @Nullable
        String question;

        @Option(names = "--method", paramLabel = "METHOD", description = "The test method.")
        @Nullable
        String method;

        @Option(
                names = "--specimens",
                paramLabel = "FILE",
                description = "Table with a row for each specimen.")
        @Nullable
        Path specimens;

        @Option(
                names = "--curves",
                paramLabel = "DIR",
                description = "Folder of the curves; the table's own unless said.")
        @Nullable
        Path curves;

        @Option(
                names = "--claims",
                paramLabel = "FILE",
                description = "Claims in TOML; in place of the options below.")
        @Nullable
        Path claims;

        @Option(names = "--claim", paramLabel = "TEXT", description = "The claim in its words.")
        @Nullable
        String claim;

        @Option(names = "--property", paramLabel = "COLUMN", description = "What it is about.")
        @Nullable
        String property;

        @Option(names = "--control", paramLabel = "NAME", description = "The untreated group.")
        @Nullable
        String control;

        @Option(names = "--expect", paramLabel = "higher|lower|same", description = "It says.")
        @Nullable
        String expect;

        @Option(names = "--worth", paramLabel = "SIZE", description = "Worth having.")
        @Nullable
        String worth;

        @Option(names = "--claimed", paramLabel = "SIZE", description = "Size that it names.")
        @Nullable
        String claimed;

        @Option(names = "--block", paramLabel = "COLUMN", description = "Holds both groups.")
        @Nullable
        String block;

        @Option(
                names = "--where",
                paramLabel = "COLUMN=VALUE",
                description = "Which specimens take part; a question for each.")
        List<String> where = new ArrayList<>();

        @Mixin
        TestOptions test = new TestOptions();

        Import(Context context) {
            this.context = context;
        }

        @Override
        public Integer call() {
            if (file != null) {
                return bring(StudyFile.parse(file.toString(), text(file)), handed(file));
            }
            if (name == null || method == null || specimens == null) {
                throw new UsageException(
                        "study import needs a FILE, or --name, --method and --specimens");
            }
            List<Claim> said = claims == null
                    ? claim(method)
                    : StudyFile.parse(claims.toString(), text(claims)).claims();
            StudyFile.Test one = new StudyFile.Test(
                    test.sheet(method),
                    specimens.getFileName().toString(),
                    curves == null ? Optional.empty() : Optional.of("."));
            StudyFile study =
                    new StudyFile(Optional.of(head(name, question)), List.of(one), said, List.of());
            Handed table = handed(specimens);
            Path folder = curves;
            String tableName = specimens.getFileName().toString();
            Handed both = folder == null
                    ? table
                    : (wanted, from) -> wanted.equals(tableName)
                            ? table.find(wanted, from)
                            : Handed.in(folder).find(wanted, from);
            return bring(study, both);
        }

        private static Handed handed(Path file) {
            return Handed.in(Context.folderOf(file.toString()));
        }

        private List<Claim> claim(String testMethod) {
            if (property == null) {
                return List.of();
            }
            Asked asked = Asked.of(property);
            asked = said(asked, Term.CONTROL, control);
            asked = said(asked, Term.EXPECT, expect);
            asked = said(asked, Term.WORTH, worth);
            asked = said(asked, Term.CLAIMED, claimed);
            asked = said(asked, Term.BLOCK, block);
            List<Claim.Question> questions = new ArrayList<>();
            Asked whole = asked;
            for (String condition : where) {
                Context.pairs("--where", List.of(condition))
                        .forEach((column, level) -> questions.add(
                                new Claim.Question(level, testMethod, whole.where(column, level))));
            }
            if (questions.isEmpty()) {
                questions.add(new Claim.Question(property, testMethod, whole));
            }
            String words =
                    claim == null ? property + " " + (expect == null ? "higher" : expect) : claim;
            return List.of(new Claim(words, "", questions, Optional.empty()));
        }

        private static Asked said(Asked asked, Term term, @Nullable String text) {
            return text == null ? asked : asked.with(term, text);
        }

        private Integer bring(StudyFile study, Handed handed) {
            try (Workspace open = context.open(workspace.folder)) {
                StudyName made = open.importStudy(Act.by(WHO), study, handed);
                JudgedStudy judged = open.judge(made, (done, of) -> {});
                context.terminal().out().println(judged.question());
                context.terminal().out().println();
                context.terminal().out().print(ClaimsText.of(judged));
            }
            return Cli.DONE;
        }

        private static String text(Path file) {
            try {
                return Files.readString(file, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new InputException(
                        "%s can't be read: there is no such file, or it is not UTF-8"
                                .formatted(file));
            }
        }
    }
}
