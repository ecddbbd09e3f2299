package org.twinbar.study;

import static org.twinbar.study.RecipeAsk.lines;
import static org.twinbar.study.RecipeAsk.number;
import static org.twinbar.study.RecipeAsk.words;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Kinds of recipes and materials that a workspace keeps; forms are made from what each asks. */
public enum RecipeKind {
    MIX(
            "mix",
            "A mix of two or more parts",
            List.of(
                    words("by", "The ratio is by", "volume or mass, as the label says"),
                    number("part_0", "Parts of A, first into the cup", "", ""),
                    number("part_1", "Parts of B, the hardener", "", ""),
                    number("part_2", "Parts of C, if there is one", "", ""),
                    number("density_0", "Density of A", "g/cm³", "")
                            .noted("From the data sheet; a ratio by volume needs it."),
                    number("density_1", "Density of B", "g/cm³", ""),
                    number("density_2", "Density of C, if there is one", "g/cm³", ""),
                    number("limit", "The ratio may be off by", "%", "2"),
                    number("life", "Working life on the data sheet", "min", "")
                            .noted("For 100 g in a cup."),
                    number("life_at", "The data sheet says so at", "°C", "23"),
                    number("thinner", "Thinner, by volume of the mix", "%", ""),
                    number("thinner_density", "Density of the thinner", "g/cm³", ""),
                    number("cured_density", "Density of the cured film", "g/cm³", ""),
                    words("note", "Lot numbers, what else there is to know", ""))),
    COATING(
            "coating",
            "A coating, in one or more coats",
            List.of(
                    number("coats", "Coats", "", "1"),
                    number("recoat_from", "The next coat follows after", "h", "2")
                            .noted("While tacky; common practice, the data sheet goes before it."),
                    number("recoat_to", "but no later than", "h", "6"),
                    number("cure", "It cures for", "h", "168"),
                    number("cure_at", "It cures at", "°C", "23"))),
    ANNEALING(
            "annealing",
            "Annealing in an oven",
            List.of(
                    number("hold", "Hold at", "°C", ""),
                    number("minutes", "Hold for", "min", ""),
                    number("start", "The oven begins at", "°C", "20"),
                    number("ramp", "It heats by", "°C/min", "1"),
                    number("cool", "It cools by", "°C/min", "0.5"))),
    VAPOUR(
            "vapour",
            "Smoothing in vapour",
            List.of(
                    words("solvent", "Solvent", ""),
                    number("minutes", "In the vapour for", "min", ""),
                    number("airing", "Aired for", "h", "48"))),
    SANDING(
            "sanding",
            "Sanding",
            List.of(words("grits", "Grits, from coarse to fine", "Such as 220, 400."))),
    DYEING(
            "dyeing",
            "Dyeing in a bath",
            List.of(
                    number("bath", "The bath is at", "°C", ""),
                    number("minutes", "Kept in it for", "min", ""),
                    number("airing", "Dried for", "h", "48"))),
    OTHER(
            "other",
            "Steps of your own",
            List.of(
                    lines(
                            "steps",
                            "A line for each step",
                            "Time and temperature behind it, such as: Hang it in the shade; 30 min;"
                                    + " 40 °C"),
                    lines("cautions", "What is dangerous, a line each", ""))),
    MATERIAL(
            "material",
            "A material",
            List.of(
                    number("density", "Density", "g/cm³", ""),
                    words("use", "What it is used for", "Such as filament, resin or dye."),
                    words("note", "Lot numbers, what else there is to know", "")));

    private final String word;
    private final String title;
    private final List<RecipeAsk> asks;

    RecipeKind(String word, String title, List<RecipeAsk> asks) {
        this.word = word;
        this.title = title;
        this.asks = List.copyOf(asks);
    }

    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    public List<RecipeAsk> asks() {
        return asks;
    }

    /** Returns whether its recipes have steps that specimens go through. */
    public boolean hasSteps() {
        return this != MIX && this != MATERIAL;
    }

    public static Optional<RecipeKind> of(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }
}
