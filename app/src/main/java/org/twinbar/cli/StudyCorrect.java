package org.twinbar.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.judged.StudyName;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar study correct STUDY}: corrects one reading, with a reason. */
@Command(
        name = "correct",
        description = {
            "Corrects a reading of a specimen. What stood there stays beside it, with who corrected it,",
            "when and why; verdicts are calculated anew, and what was published is held against them.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyCorrect implements Callable<Integer> {

    private final Context context;

    @Parameters(paramLabel = "STUDY", description = "Name of the study.")
    String study = "";

    @Option(
            names = "--method",
            required = true,
            paramLabel = "NAME",
            description = "The test that the reading belongs to.")
    String method = "";

    @Option(
            names = "--specimen",
            required = true,
            paramLabel = "CODE",
            description = "The specimen.")
    String specimen = "";

    @Option(
            names = "--column",
            required = true,
            paramLabel = "COLUMN",
            description = "Header of the reading in its table, such as width_mm.")
    String column = "";

    @Option(
            names = "--to",
            required = true,
            paramLabel = "TEXT",
            description = "What it should have been, in the column's unit.")
    String text = "";

    @Option(names = "--why", required = true, paramLabel = "TEXT", description = "The reason.")
    String why = "";

    @Option(names = "--who", paramLabel = "NAME", description = "Who corrects it.")
    String who = StudyCommand.WHO;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    StudyCorrect(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (why.isBlank()) {
            throw new UsageException("say why the reading is corrected (--why)");
        }
        try (Workspace open = context.openThere(workspace.folder)) {
            StudyName name = open.study(study);
            Optional<String> before =
                    reading(open.judge(name, Progress.SILENT)).map(Reading::counting);
            if (before.filter(it -> it.equals(text.strip())).isPresent()) {
                throw new InputException(
                        "%s of %s is %s already".formatted(column, specimen, text.strip()));
            }
            open.correct(Act.by(who), name, method, specimen, column, text.strip(), why.strip());
            JudgedStudy judged = open.judge(name, Progress.SILENT);
            context.terminal()
                    .out()
                    .println("%s of %s: %s → %s (%s)"
                            .formatted(
                                    column,
                                    specimen,
                                    before.filter(it -> !it.isBlank()).orElse("nothing"),
                                    text.strip(),
                                    why.strip()));
            context.terminal().out().println();
            context.terminal().out().print(ClaimsText.of(judged));
            context.terminal().out().print(PublishedText.of(judged));
        }
        return Cli.DONE;
    }

    private Optional<Reading> reading(JudgedStudy judged) {
        return judged.specimensOf(method).stream()
                .filter(it -> it.code().equals(specimen))
                .map(JudgedSpecimen::readings)
                .flatMap(it -> it.stream())
                .filter(it -> it.column().equals(column))
                .findFirst();
    }
}
