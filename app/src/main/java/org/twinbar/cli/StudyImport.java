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
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.study.Act;
import org.twinbar.study.HandmadePackage;
import org.twinbar.study.PackagedStudy;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study import}: makes a study from tables and curves, or from a package. */
@Command(
        name = "import",
        description = {
            "Makes a study from a table of specimens, its curves and claims.",
            "FILE is a TOML file that says it all (docs/claims.md), in place of the options.",
            "With --package alone, the study of a data package comes back as it was.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyImport implements Callable<Integer> {
    private final Context context;

    @Parameters(arity = "0..1", paramLabel = "FILE", description = "A study in TOML.")
    @Nullable
    Path file;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(
            names = "--package",
            paramLabel = "FILE.zip|DIR",
            description = "A data package: that of a study, or one with tables and curves in it.")
    @Nullable
    String packaged;

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

    StudyImport(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (packaged != null) {
            return context.packageAt(packaged, this::fromPackage);
        }
        if (file != null) {
            return bring(StudyFile.parse(file.toString(), text(file)), handed(file));
        }
        if (name == null || method == null || specimens == null) {
            throw new UsageException(
                    "study import needs a FILE, a --package, or --name, --method and --specimens");
        }
        List<Claim> said = claims(method);
        StudyFile.Test one = new StudyFile.Test(
                test.sheet(method),
                specimens.getFileName().toString(),
                curves == null ? Optional.empty() : Optional.of("."));
        StudyFile study = new StudyFile(
                Optional.of(StudyCommand.head(name, question)), List.of(one), said, List.of());
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

    private Integer fromPackage(OpenPackage open) {
        if (PackagedStudy.is(open)) {
            if (file != null || name != null || method != null || property != null) {
                throw new UsageException(
                        "%s holds a study with its name, method and claims;".formatted(open.place())
                                + " leave the other options out");
            }
            PackagedStudy study = PackagedStudy.verified(open);
            try (Workspace there = context.open(workspace.folder)) {
                show(there.packages().bring(study));
            }
            return Cli.DONE;
        }
        Handed handed = HandmadePackage.files(open);
        if (file != null) {
            return bring(StudyFile.parse(file.toString(), text(file)), handed);
        }
        if (method == null) {
            throw new UsageException(
                    "%s was not written by Twinbar: say its --method".formatted(open.place()));
        }
        String table = HandmadePackage.specimens(
                open, Optional.ofNullable(specimens).map(StudyImport::slashed));
        StudyFile.Head head = StudyCommand.head(
                name == null ? open.text("name").orElse("package") : name,
                question == null ? open.text("title").orElse(null) : question);
        StudyFile.Test one = new StudyFile.Test(
                test.sheet(method), table, Optional.ofNullable(curves).map(StudyImport::slashed));
        return bring(
                new StudyFile(Optional.of(head), List.of(one), claims(method), List.of()), handed);
    }

    private static String slashed(Path path) {
        return path.toString().replace('\\', '/');
    }

    private List<Claim> claims(String testMethod) {
        return claims == null
                ? claim(testMethod)
                : StudyFile.parse(claims.toString(), text(claims)).claims();
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
            StudyName made = open.importStudy(Act.by(StudyCommand.WHO), study, handed);
            show(open.judge(made, (done, of) -> {}));
        }
        return Cli.DONE;
    }

    private void show(JudgedStudy judged) {
        context.terminal().out().println(judged.question());
        context.terminal().out().println();
        context.terminal().out().print(ClaimsText.of(judged));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new InputException(
                    "%s can't be read: there is no such file, or it is not UTF-8".formatted(file));
        }
    }
}
