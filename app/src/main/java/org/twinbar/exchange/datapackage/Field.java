package org.twinbar.exchange.datapackage;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A column of a table.
 *
 * @param name its header
 * @param says what stands in it, in one sentence
 * @param unit of its numbers; empty for plain ones, and where another column names it
 * @param presence whether each row has a value in it
 * @param allowed the only values that it may have; empty where any may stand
 * @param least the smallest number that may stand in it, where there is one
 */
public record Field(
        String name,
        Type type,
        String says,
        String unit,
        Presence presence,
        List<String> allowed,
        OptionalDouble least) {

    /** What a column holds. */
    public enum Type {
        STRING("string"),
        INTEGER("integer"),
        NUMBER("number"),
        BOOLEAN("boolean"),
        /** A moment as ISO 8601 writes it. */
        DATETIME("datetime"),
        /** JSON. */
        OBJECT("object");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Whether a cell may be empty. */
    public enum Presence {
        REQUIRED,
        OPTIONAL
    }

    public Field {
        allowed = List.copyOf(allowed);
    }

    /** Returns a column whose cells may be empty. */
    public static Field of(String name, Type type, String says) {
        return new Field(
                name, type, says, "", Presence.OPTIONAL, List.of(), OptionalDouble.empty());
    }

    public static Field text(String name, String says) {
        return of(name, Type.STRING, says);
    }

    public static Field number(String name, String says) {
        return of(name, Type.NUMBER, says);
    }

    public Field required() {
        return new Field(name, type, says, unit, Presence.REQUIRED, allowed, least);
    }

    public Field in(String newUnit) {
        return new Field(name, type, says, newUnit, presence, allowed, least);
    }

    public Field oneOf(List<String> words) {
        return new Field(name, type, says, unit, presence, words, least);
    }

    public Field atLeast(double smallest) {
        return new Field(name, type, says, unit, presence, allowed, OptionalDouble.of(smallest));
    }
}
