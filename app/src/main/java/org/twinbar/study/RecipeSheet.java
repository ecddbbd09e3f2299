package org.twinbar.study;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.twinbar.exchange.InputException;
import org.twinbar.quantity.Quantity;
import org.twinbar.quantity.Unit;
import org.twinbar.treatment.Film;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Procedure.Annealing;
import org.twinbar.treatment.Procedure.RecoatWindow;
import org.twinbar.treatment.Procedure.Step;
import org.twinbar.treatment.Recipe;
import org.twinbar.treatment.WorkingLife;

/**
 * A recipe or a material as a person filled in its form.
 *
 * @param name its own within the workspace
 * @param filled what stands in the fields of its kind; the rest is usual or open
 */
public record RecipeSheet(RecipeKind kind, String name, Filled filled) {

    private static final Unit CELSIUS = Unit.of("°C");
    private static final Unit MINUTES = Unit.of("min");
    private static final Unit HOURS = Unit.of("h");
    private static final Unit RATE = Unit.of("°C/min");
    private static final Unit DENSITY = Unit.of("g/cm³");

    /** Keeps what its kind asks for, and nothing else. */
    public RecipeSheet {
        Map<String, String> asked = new LinkedHashMap<>();
        for (RecipeAsk ask : kind.asks()) {
            filled.said(ask.key()).ifPresent(said -> asked.put(ask.key(), said));
        }
        filled = new Filled(asked);
        name = name.strip();
    }

    /**
     * Returns it if it can be followed.
     *
     * @throws FieldException with the field that is missing or wrong
     */
    public RecipeSheet checked() {
        if (name.isEmpty() || name.length() > 60) {
            throw new FieldException("name", "a recipe needs a name of at most 60 letters");
        }
        if (kind == RecipeKind.MIX) {
            mix();
        } else if (kind == RecipeKind.MATERIAL) {
            double density = filled.number("density", DENSITY, "its density in g/cm³");
            filled.at("density", () -> new Film(1, density));
        } else {
            procedure();
        }
        return this;
    }

    /**
     * Returns the steps.
     *
     * @throws FieldException with the field that is missing or wrong
     */
    public Procedure procedure() {
        return switch (kind) {
            case COATING -> coating();
            case ANNEALING -> annealing();
            case VAPOUR -> {
                String solvent = filled.needed("solvent", "which solvent it is");
                double minutes = filled.number("minutes", MINUTES, "how long it is in the vapour");
                double airing = filled.number("airing", HOURS).orElse(48);
                yield filled.at("minutes", () -> Procedure.vapour(solvent, minutes, airing));
            }
            case SANDING -> filled.at("grits", () -> Procedure.sanding(grits()));
            case DYEING -> {
                double bath = filled.number("bath", CELSIUS, "how warm the bath is");
                double minutes = filled.number("minutes", MINUTES, "how long it is in the bath");
                double drying = filled.number("airing", HOURS).orElse(48);
                yield filled.at("bath", () -> Procedure.dyeing(bath, minutes, drying));
            }
            case OTHER -> own();
            case MIX, MATERIAL ->
                throw new InputException("a %s has no steps".formatted(kind.word()));
        };
    }

    private Procedure coating() {
        int coats = filled.whole("coats", 1, 20).orElse(1);
        double from = filled.number("recoat_from", HOURS).orElse(RecoatWindow.USUAL.fromHours());
        double to = filled.number("recoat_to", HOURS).orElse(RecoatWindow.USUAL.toHours());
        RecoatWindow window = filled.at("recoat_to", () -> new RecoatWindow(from, to));
        double cure = filled.number("cure", HOURS).orElse(168);
        double at = filled.number("cure_at", CELSIUS).orElse(23);
        filled.at("cure", () -> Step.of("cure").taking(cure));
        return filled.at("cure_at", () -> Procedure.coating(coats, window, cure, at));
    }

    private Procedure annealing() {
        double hold = filled.number("hold", CELSIUS, "at what temperature it is held");
        double minutes = filled.number("minutes", MINUTES, "how long it is held");
        double start = filled.number("start", CELSIUS).orElse(20);
        double ramp = filled.number("ramp", RATE).orElse(1);
        double cool = filled.number("cool", RATE).orElse(0.5);
        filled.at("hold", () -> new Annealing(start, hold, 1, 1, 1));
        filled.at("ramp", () -> new Annealing(start, hold, 1, ramp, 1));
        filled.at("cool", () -> new Annealing(start, hold, 1, 1, cool));
        return filled.at(
                "minutes",
                () -> Procedure.annealing(new Annealing(start, hold, minutes, ramp, cool)));
    }

    private List<Integer> grits() {
        List<Integer> grits = new ArrayList<>();
        for (String grit :
                filled.needed("grits", "the grits, such as 220, 400").split("[,;\\s]+")) {
            if (!grit.matches("[Pp]?[0-9]{1,5}")) {
                throw new InputException("'%s' is no grit, such as 220".formatted(grit));
            }
            grits.add(Integer.parseInt(grit.replaceAll("[Pp]", "")));
        }
        return grits;
    }

    private Procedure own() {
        List<Step> steps = new ArrayList<>();
        filled.needed("steps", "a line for each step")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .forEach(line -> steps.add(filled.at("steps", () -> step(line))));
        List<String> cautions = filled.said("cautions")
                .orElse("")
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
        return filled.at("steps", () -> new Procedure(Procedure.Sort.OTHER, steps, cautions));
    }

    /** Reads {@code Hang it in the shade; 30 min; 40 °C}. */
    private static Step step(String line) {
        String[] parts = line.split(";");
        Step step = Step.of(parts[0].strip());
        for (int i = 1; i < parts.length; i++) {
            Quantity quantity = Quantity.parse(parts[i]);
            if (quantity.unit().measuresSameAs(MINUTES)) {
                step = step.taking(quantity.in(MINUTES));
            } else if (quantity.unit().measuresSameAs(CELSIUS)) {
                step = step.at(quantity.in(CELSIUS));
            } else {
                throw new InputException(
                        "'%s' is neither a time such as 30 min nor a temperature such as 40 °C"
                                .formatted(parts[i].strip()));
            }
        }
        return step;
    }

    /**
     * Returns how the parts of a mix stand to each other.
     *
     * @throws FieldException with the field that is missing or wrong
     */
    public Recipe mix() {
        Recipe recipe = MixSheet.recipe(filled);
        filled.number("limit", Unit.PERCENT);
        OptionalDouble life = filled.number("life", MINUTES);
        OptionalDouble at = filled.number("life_at", CELSIUS);
        life.ifPresent(minutes -> filled.at(
                "life", () -> new WorkingLife(minutes, at.orElse(WorkingLife.USUAL_TEMPERATURE))));
        filled.share("thinner");
        filled.number("thinner_density", DENSITY);
        filled.number("cured_density", DENSITY);
        return recipe;
    }

    ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", kind.word());
        json.put("name", name);
        ObjectNode fields = json.putObject("fields");
        kind.asks()
                .forEach(ask ->
                        filled.said(ask.key()).ifPresent(said -> fields.put(ask.key(), said)));
        return json;
    }

    static RecipeSheet read(JsonNode json) {
        Map<String, String> fields = new LinkedHashMap<>();
        json.path("fields")
                .fields()
                .forEachRemaining(
                        field -> fields.put(field.getKey(), field.getValue().asText()));
        return new RecipeSheet(
                RecipeKind.of(json.path("kind").asText())
                        .orElseThrow(() -> new InputException("this recipe is of a kind that this"
                                + " version of Twinbar does not know")),
                json.path("name").asText(),
                new Filled(fields));
    }
}
