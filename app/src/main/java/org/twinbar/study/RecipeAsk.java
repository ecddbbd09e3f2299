package org.twinbar.study;

/**
 * What a recipe asks for.
 *
 * @param key of its field
 * @param label as it stands above the field
 * @param unit of a bare number, nothing where it is words or a plain number
 * @param usual what is taken where nothing stands there; nothing where it is needed or left open
 * @param note what else there is to know
 */
public record RecipeAsk(
        String key, String label, String unit, String usual, String note, Sort sort) {

    /** What is typed into a field. */
    public enum Sort {
        NUMBER,
        WORDS,
        /** Several lines. */
        LINES
    }

    static RecipeAsk number(String key, String label, String unit, String usual) {
        return new RecipeAsk(key, label, unit, usual, "", Sort.NUMBER);
    }

    static RecipeAsk words(String key, String label, String note) {
        return new RecipeAsk(key, label, "", "", note, Sort.WORDS);
    }

    static RecipeAsk lines(String key, String label, String note) {
        return new RecipeAsk(key, label, "", "", note, Sort.LINES);
    }

    RecipeAsk noted(String text) {
        return new RecipeAsk(key, label, unit, usual, text, sort);
    }
}
