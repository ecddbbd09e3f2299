package org.twinbar.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.twinbar.quantity.Unit;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.judged.MixMade;
import org.twinbar.treatment.Batch;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.Scale;
import org.twinbar.treatment.WorkingLife;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code twinbar mix}: how much of each component to weigh, and how well the scale can. */
@Command(
        name = "mix",
        description = {
            "How much of each component of a resin to weigh, and how well the scale can.",
            "A ratio by volume needs the densities from the data sheet.",
        },
        mixinStandardHelpOptions = true,
        sortOptions = false)
final class MixCommand implements Callable<Integer> {

    private final Context context;

    @Option(
            names = "--ratio",
            required = true,
            paramLabel = "A:B",
            description = "Parts of each component, such as 2:1 or 100:43 or 4:2:1.")
    String ratio = "";

    @Option(
            names = "--by",
            required = true,
            paramLabel = "volume|mass",
            description = "What the parts are parts of.")
    Recipe.By by = Recipe.By.MASS;

    @Option(
            names = "--density",
            paramLabel = "A,B",
            description = "Density of each component, in g/cm³ where no unit stands.")
    @Nullable
    String density;

    @Option(names = "--total", paramLabel = "MASS", description = "Size of the batch.")
    @Nullable
    String total;

    @Option(names = "--part-a", paramLabel = "MASS", description = "Mass of the first component.")
    @Nullable
    String partA;

    @Option(names = "--scale", paramLabel = "STEP", description = "Smallest step of the scale.")
    @Nullable
    String scale;

    @Option(
            names = "--weighed",
            paramLabel = "A,B",
            description = "What the scale showed for each component: the ratio reached.")
    @Nullable
    String weighed;

    @Option(
            names = "--limit",
            paramLabel = "SHARE",
            description = "Smallest batch that keeps the ratio within it, such as 2%%.")
    @Nullable
    String limit;

    @Option(
            names = "--thinner",
            paramLabel = "SHARE",
            description = "Thinner, by volume of the mix, such as 5%%.")
    @Nullable
    String thinner;

    @Option(names = "--thinner-density", paramLabel = "D", description = "To weigh the thinner.")
    @Nullable
    String thinnerDensity;

    @Option(
            names = "--working-life",
            paramLabel = "TIME",
            description = "As the data sheet has it for 100 g at 23 °C.")
    @Nullable
    String workingLife;

    @Option(
            names = "--temperature",
            paramLabel = "T",
            description = "Of the room; 23 °C unless said.")
    @Nullable
    String temperature;

    @Option(
            names = "--spreading",
            paramLabel = "RATE",
            description = "How quickly it is spread, such as 2g/min: splits the batch.")
    @Nullable
    String spreading;

    @Option(
            names = "--study",
            paramLabel = "STUDY",
            description = "Notes the mix in a study, with --weighed.")
    @Nullable
    String study;

    @Option(
            names = "--mix",
            paramLabel = "N",
            description = "Which mix of the plan; 1 unless said.")
    int number = 1;

    @Option(names = "--noted", paramLabel = "TEXT", description = "Lot numbers and the like.")
    String noted = "";

    @Option(
            names = "--why",
            paramLabel = "TEXT",
            description = "Why it takes the place of a mix that was noted.")
    @Nullable
    String why;

    @Mixin
    WorkspaceOption workspace = new WorkspaceOption();

    @Option(names = "--json", description = "Writes JSON.")
    boolean json;

    MixCommand(Context context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Mixed mixed = mixed();
        if (study != null) {
            note(study, mixed);
        }
        if (json) {
            MixedOutput.json(mixed, context.terminal().out());
        } else {
            context.terminal().out().print(MixedOutput.text(mixed));
        }
        return Cli.DONE;
    }

    private void note(String name, Mixed mixed) {
        Batch cup = mixed.poured()
                .orElseThrow(() -> new UsageException(
                        "--study needs --weighed: what the scale showed is what is noted"));
        try (Workspace open = context.openThere(workspace.folder)) {
            open.register()
                    .mixed(
                            Act.by(StudyCommand.WHO),
                            open.study(name),
                            new MixMade(
                                    number,
                                    mixed.batch(),
                                    cup.grams(),
                                    temperature == null
                                            ? OptionalDouble.empty()
                                            : OptionalDouble.of(Typed.in(
                                                    Typed.CELSIUS, "--temperature", temperature)),
                                    mixed.worked()
                                            .map(it -> OptionalDouble.of(it.minutes()))
                                            .orElse(OptionalDouble.empty()),
                                    noted,
                                    open.treating().now(),
                                    StudyCommand.WHO),
                            Optional.ofNullable(why));
        }
    }

    private Mixed mixed() {
        Recipe recipe = Recipe.of(by, parts(), densities());
        Mixed mixed = new Mixed(batch(recipe));
        if (scale != null) {
            mixed.weighOn(new Scale(Typed.in(Typed.GRAMS, "--scale", scale)));
        }
        if (limit != null) {
            mixed.keepWithin(Typed.share("--limit", limit));
        }
        if (weighed != null) {
            mixed.poured(Typed.list(Typed.GRAMS, "--weighed", weighed));
        }
        if (thinner != null) {
            mixed.thin(
                    Typed.share("--thinner", thinner),
                    thinnerDensity == null
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(
                                    Typed.in(Typed.DENSITY, "--thinner-density", thinnerDensity)));
        }
        work(mixed);
        return mixed;
    }

    private void work(Mixed mixed) {
        if (workingLife == null) {
            if (spreading != null || temperature != null && study == null) {
                throw new UsageException(
                        "--spreading and --temperature need --working-life from the data sheet");
            }
            return;
        }
        double warmth = temperature == null
                ? WorkingLife.USUAL_TEMPERATURE
                : Typed.in(Typed.CELSIUS, "--temperature", temperature);
        WorkingLife life = new WorkingLife(
                Typed.in(Typed.MINUTES, "--working-life", workingLife),
                WorkingLife.USUAL_TEMPERATURE);
        mixed.work(
                life,
                warmth,
                spreading == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Typed.in(Typed.SPREADING, "--spreading", spreading)));
    }

    private Batch batch(Recipe recipe) {
        if (total != null && partA != null) {
            throw new UsageException("--total and --part-a both set the size: give one of them");
        }
        if (total != null) {
            return recipe.ofTotal(Typed.in(Typed.GRAMS, "--total", total));
        }
        if (partA != null) {
            return recipe.ofFirst(Typed.in(Typed.GRAMS, "--part-a", partA));
        }
        if (weighed != null) {
            List<Double> cup = Typed.list(Typed.GRAMS, "--weighed", weighed);
            return recipe.ofTotal(cup.stream().mapToDouble(Double::doubleValue).sum());
        }
        throw new UsageException("say how much: --total, or --part-a for the first component");
    }

    private List<Double> parts() {
        List<Double> parts = new ArrayList<>();
        for (String part : ratio.split(":", -1)) {
            parts.add(Typed.in(Unit.ONE, "--ratio", part));
        }
        return parts;
    }

    private List<Double> densities() {
        return density == null ? List.of() : Typed.list(Typed.DENSITY, "--density", density);
    }

    /** The letter of a component in options and keys. */
    static String letter(int component) {
        return String.valueOf((char) ('A' + component)).toUpperCase(Locale.ROOT);
    }
}
