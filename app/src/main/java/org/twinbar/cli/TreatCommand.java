package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.quantity.Unit;
import org.twinbar.report.Written;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Procedure.Annealing;
import org.twinbar.treatment.Procedure.RecoatWindow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code twinbar treat}: the steps of a treatment, with times, temperatures and cautions. */
@Command(
        name = "treat",
        description = {
            "The steps of a treatment with their times, temperatures and cautions.",
            "The data sheet goes before everything that is said here.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class TreatCommand implements Callable<Integer> {

    private static final Unit HOURS = Unit.of("h");
    private static final Unit RATE = Unit.of("°C/min");

    private final Context context;

    @Parameters(
            paramLabel = "TREATMENT",
            description = "coating, annealing, vapour, sanding or dyeing.")
    String treatment = "";

    @Option(names = "--temperature", paramLabel = "T", description = "Cured, held or dyed at.")
    @Nullable
    String temperature;

    @Option(names = "--time", paramLabel = "TIME", description = "Of curing, holding, vapour, dye.")
    @Nullable
    String time;

    @Option(names = "--ramp", paramLabel = "RATE", description = "Of heating, such as 1°C/min.")
    String ramp = "1 °C/min";

    @Option(names = "--cool", paramLabel = "RATE", description = "Of cooling.")
    String cool = "0.5 °C/min";

    @Option(names = "--start", paramLabel = "T", description = "Where an oven begins.")
    String start = "20 °C";

    @Option(names = "--coats", paramLabel = "N", description = "How many coats.")
    int coats = 1;

    @Option(
            names = "--recoat",
            paramLabel = "H,H",
            description = "Hours after a coat from and to which the next is spread; 2,6 unless"
                    + " said.")
    String recoat = "2,6";

    @Option(names = "--solvent", paramLabel = "NAME", description = "For vapour.")
    String solvent = "";

    @Option(names = "--airing", paramLabel = "TIME", description = "After vapour or a bath.")
    String airing = "48 h";

    @Option(
            names = "--grits",
            paramLabel = "N,N…",
            split = ",",
            description = "For sanding, from coarse to fine.")
    List<Integer> grits = new ArrayList<>();

    @Option(names = "--study", paramLabel = "STUDY", description = "Keeps it in a study.")
    @Nullable
    String study;

    @Option(names = "--group", paramLabel = "NAME", description = "As what is done to this group.")
    @Nullable
    String group;

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            description = "Why it is another than the plan was sealed with.")
    @Nullable
    String why;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    TreatCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Procedure procedure = procedure();
        if (study != null || group != null) {
            if (study == null || group == null) {
                throw new UsageException("--study and --group go together");
            }
            try (Workspace open = context.openThere(workspace.folder)) {
                open.treating()
                        .recipe(
                                Act.by(StudyCommand.WHO),
                                open.study(study),
                                group,
                                procedure,
                                Optional.ofNullable(why));
            }
        }
        if (json) {
            json(procedure);
        } else {
            context.terminal().out().print(text(procedure));
        }
        return Cli.DONE;
    }

    private Procedure procedure() {
        return switch (Procedure.Sort.parse(treatment)) {
            case COATING ->
                Procedure.coating(
                        coats,
                        recoat(),
                        time == null ? 168 : Typed.in(HOURS, "--time", time),
                        temperature == null ? 23 : celsius());
            case ANNEALING ->
                Procedure.annealing(new Annealing(
                        Typed.in(Typed.CELSIUS, "--start", start),
                        celsius(),
                        minutes(),
                        Typed.in(RATE, "--ramp", ramp),
                        Typed.in(RATE, "--cool", cool)));
            case VAPOUR ->
                Procedure.vapour(solvent, minutes(), Typed.in(HOURS, "--airing", airing));
            case SANDING -> Procedure.sanding(grits);
            case DYEING ->
                Procedure.dyeing(celsius(), minutes(), Typed.in(HOURS, "--airing", airing));
            case OTHER ->
                throw new UsageException(
                        "say which treatment: coating, annealing, vapour, sanding or dyeing");
        };
    }

    private RecoatWindow recoat() {
        List<Double> hours = Typed.list(HOURS, "--recoat", recoat);
        if (hours.size() != 2) {
            throw new UsageException(
                    "--recoat '%s': write two times, such as 2,6".formatted(recoat));
        }
        return new RecoatWindow(hours.get(0), hours.get(1));
    }

    private double celsius() {
        if (temperature == null) {
            throw new UsageException(treatment + " needs --temperature, from the data sheet");
        }
        return Typed.in(Typed.CELSIUS, "--temperature", temperature);
    }

    private double minutes() {
        if (time == null) {
            throw new UsageException(treatment + " needs --time, such as 60min");
        }
        return Typed.in(Typed.MINUTES, "--time", time);
    }

    private void json(Procedure procedure) {
        Json.write(
                context.terminal().out(),
                out -> out.put("treatment", procedure.sort().word())
                        .put("minutes", procedure.minutes())
                        .list("steps", list -> {
                            for (Procedure.Step step : procedure.steps()) {
                                list.object(one -> {
                                    one.put("what", step.what());
                                    if (step.minutes().isPresent()) {
                                        one.put("minutes", step.minutes().getAsDouble());
                                    }
                                    if (step.celsius().isPresent()) {
                                        one.put("temperature_C", step.celsius().getAsDouble());
                                    }
                                });
                            }
                        })
                        .texts("cautions", procedure.cautions()));
    }

    private static String text(Procedure procedure) {
        StringBuilder text = new StringBuilder();
        int number = 0;
        for (Procedure.Step step : procedure.steps()) {
            number++;
            String at = step.celsius().isPresent()
                    ? " At %s °C.".formatted(Written.number(step.celsius().getAsDouble(), 3))
                    : "";
            String taking = step.minutes().isPresent()
                    ? " Takes %s.".formatted(duration(step.minutes().getAsDouble()))
                    : "";
            text.append(ComparisonsText.wrapped(number + ". " + step.what() + at + taking, ""));
        }
        procedure
                .cautions()
                .forEach(it -> text.append(ComparisonsText.wrapped("caution: " + it, "")));
        return text.toString();
    }

    private static String duration(double minutes) {
        return minutes < 120
                ? Written.number(minutes, 3) + " min"
                : Written.number(minutes / 60, 3) + " h";
    }
}
