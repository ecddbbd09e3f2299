package org.twinbar.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.MixMade;
import org.twinbar.study.judged.StepDone;
import org.twinbar.treatment.Coated;
import org.twinbar.treatment.Component;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Recipe;

/** How specimens were treated: recipes, what was really done, mixes and films. */
final class HowTreated {

    private static final String NOTHING = "–";

    private final Making making;

    private HowTreated(Making making) {
        this.making = making;
    }

    static List<Block> of(Making making) {
        return new HowTreated(making).blocks();
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (Map.Entry<String, Procedure> recipe : making.recipes().entrySet()) {
            blocks.add(new Block.Heading(
                    "%s: %s".formatted(recipe.getKey(), recipe.getValue().sort().word())));
            blocks.add(new Block.Sentences(
                    recipe.getValue().steps().stream().map(HowTreated::step).toList(),
                    Sheet.Weight.PLAIN));
        }
        if (!making.steps().isEmpty()) {
            blocks.add(steps());
        }
        if (!making.mixes().isEmpty()) {
            blocks.add(mixes());
        }
        making.coated().ifPresent(coated -> blocks.addAll(films(coated)));
        return blocks;
    }

    private static String step(Procedure.Step step) {
        String at = step.celsius().isPresent()
                ? " At %s.".formatted(withUnit(step.celsius().getAsDouble(), "°C"))
                : "";
        String taking = step.minutes().isPresent()
                ? " Takes %s.".formatted(withUnit(step.minutes().getAsDouble(), "min"))
                : "";
        return step.what() + at + taking;
    }

    private Block steps() {
        List<List<String>> rows = new ArrayList<>();
        for (StepDone step : making.steps()) {
            rows.add(List.of(
                    Integer.toString(step.step() + 1),
                    step.what(),
                    "%s: %s".formatted(step.group(), String.join(", ", step.specimens())),
                    Cells.time(step.began()),
                    step.minutes().isPresent()
                            ? withUnit(step.minutes().getAsDouble(), "min")
                            : "goes on",
                    step.celsius().isPresent()
                            ? withUnit(step.celsius().getAsDouble(), "°C")
                            : NOTHING,
                    step.noted().isBlank() ? NOTHING : step.noted()));
        }
        return new Block.Table(
                "Steps as they were done",
                List.of(
                        Column.name("Step"),
                        Column.text("What"),
                        Column.text("To"),
                        Column.text("Begun"),
                        Column.number("Took"),
                        Column.number("At"),
                        Column.text("Noted")),
                rows);
    }

    private static String withUnit(double value, String unit) {
        return Written.number(value, 4) + Written.behind(unit);
    }

    private Block mixes() {
        List<List<String>> rows = new ArrayList<>();
        for (MixMade mix : making.mixes()) {
            rows.add(List.of(
                    Integer.toString(mix.number()),
                    ratio(mix.meant().recipe()),
                    mix.weighed().stream()
                            .map(grams -> withUnit(grams, "g"))
                            .reduce((a, b) -> a + ", " + b)
                            .orElse(NOTHING),
                    withUnit(100 * mix.cup().ratioError(), "%"),
                    mix.celsius().isPresent()
                            ? withUnit(mix.celsius().getAsDouble(), "°C")
                            : NOTHING,
                    mix.what().isBlank() ? NOTHING : mix.what(),
                    Cells.time(mix.when())));
        }
        return new Block.Table(
                "Mixes as they were weighed",
                List.of(
                        Column.name("Mix"),
                        Column.text("Meant"),
                        Column.text("Weighed"),
                        Column.number("Ratio off by"),
                        Column.number("At"),
                        Column.text("Noted"),
                        Column.text("When")),
                rows);
    }

    private static String ratio(Recipe recipe) {
        return String.join(
                        " : ",
                        recipe.components().stream()
                                .map(Component::parts)
                                .map(parts -> Written.number(parts, 4))
                                .toList())
                + " by " + recipe.by().word();
    }

    private static List<Block> films(Coated coated) {
        List<List<String>> rows = coated.films().stream()
                .map(film -> List.of(
                        film.specimen(), Written.value(film.micrometres(), film.uncertainty(), "")))
                .toList();
        return List.of(
                new Block.Paragraph(
                        "From the mass that each specimen gained the film is %s thick in the mean, with a standard deviation of %s between specimens. It is a mean over the surface: edges and the valleys between layers take more."
                                .formatted(
                                        withUnit(coated.mean(), "µm"),
                                        withUnit(coated.deviation(), "µm"))),
                new Block.Table(
                        "Films, with the standard uncertainty from the scale",
                        List.of(Column.name("Specimen"), Column.number("Film in µm")),
                        rows));
    }
}
