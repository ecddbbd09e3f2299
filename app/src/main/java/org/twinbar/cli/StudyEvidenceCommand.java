package org.twinbar.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.exchange.InputException;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar study evidence}: what there is for a condition that no bench can settle. */
@Command(
        name = "evidence",
        description = "Attaches evidence to a condition of a claim that no bench can settle.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class StudyEvidenceCommand implements Callable<Integer> {

    private final Context context;

    @Mixin
    PlanCommand.OfStudy of = new PlanCommand.OfStudy();

    @Option(
            names = "--claim",
            required = true,
            paramLabel = "WORDS",
            description = "The claim in its words.")
    String claim = "";

    @Option(
            names = "--condition",
            required = true,
            paramLabel = "N",
            description = "Which of its conditions, counted from 1.")
    int condition;

    @Option(
            names = "--evidence",
            required = true,
            paramLabel = "TEXT",
            description = "What it is and what it shows.")
    String evidence = "";

    @Option(names = "--file", paramLabel = "FILE", description = "The evidence itself.")
    @Nullable
    Path file;

    StudyEvidenceCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (file != null && !Files.isRegularFile(file)) {
            throw new InputException("%s can't be read: there is no such file".formatted(file));
        }
        Optional<Upload> upload =
                Optional.ofNullable(file).map(it -> Upload.of(it.getFileName().toString(), it));
        try (Workspace open = context.openThere(of.workspace.folder)) {
            StudyName study = open.study(of.study);
            open.treating()
                    .evidence(Act.by(StudyCommand.WHO), study, claim, condition, evidence, upload);
            context.terminal()
                    .out()
                    .println("condition %s of '%s' has evidence now; it decides nothing by itself"
                            .formatted(condition, claim));
        }
        return Cli.DONE;
    }
}
