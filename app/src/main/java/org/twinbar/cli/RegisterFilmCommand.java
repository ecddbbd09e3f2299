package org.twinbar.cli;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.report.Written;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.StudyName;
import org.twinbar.treatment.Coated;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar register film}: the films, from the mass that specimens gained. */
@Command(
        name = "film",
        description = "Tells the film on each specimen from the mass that it gained.",
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class RegisterFilmCommand implements Callable<Integer> {
    private final Context context;

    @Mixin
    PlanCommand.OfStudy of = new PlanCommand.OfStudy();

    @Option(
            names = "--density",
            required = true,
            paramLabel = "D",
            description = "Of the cured film, in g/cm³ where no unit stands.")
    String density = "";

    @Option(
            names = "--scale",
            paramLabel = "STEP",
            description = "Smallest step of the scale; 0.01 g unless said.")
    String scale = "0.01 g";

    @Option(
            names = "--area",
            paramLabel = "AREA",
            description = "Of one specimen; that of its standard shape unless said.")
    @Nullable
    String area;

    RegisterFilmCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        try (Workspace open = context.openThere(of.workspace.folder)) {
            StudyName study = open.study(of.study);
            open.treating()
                    .film(
                            Act.by(StudyCommand.WHO),
                            study,
                            Typed.in(Typed.DENSITY, "--density", density),
                            Typed.in(Typed.GRAMS, "--scale", scale),
                            area == null
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(
                                            Typed.in(Typed.SQUARE_MILLIMETRES, "--area", area)));
            Coated coated = open.plans().forTreating(study).coated().orElseThrow();
            Aligned rows = new Aligned();
            coated.films()
                    .forEach(it -> rows.row(
                            it.specimen(),
                            Written.value(it.micrometres(), it.uncertainty(), "µm")));
            context.terminal().out().print(rows);
            context.terminal()
                    .out()
                    .println("mean %s µm, standard deviation %s µm"
                            .formatted(
                                    Written.number(coated.mean(), 3),
                                    Written.number(coated.deviation(), 2)));
            coated.findings()
                    .forEach(it -> context.terminal()
                            .out()
                            .print(ComparisonsText.wrapped(
                                    it.level().word() + ": " + it.text(), "")));
        }
        return Cli.DONE;
    }
}
