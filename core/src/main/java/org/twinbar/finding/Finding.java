package org.twinbar.finding;

import java.util.List;

/**
 * Something that a person should know about readings, results or a comparison.
 *
 * @param kind what sort of thing was seen
 * @param arguments the numbers and names that it was seen with, ready to read, with their units
 */
public record Finding(Kind kind, List<String> arguments) {

    public Finding {
        arguments = List.copyOf(arguments);
        int places = kind.places();
        if (places != arguments.size()) {
            throw new IllegalArgumentException("finding '%s' has %s places, %s arguments"
                    .formatted(kind.code(), places, arguments.size()));
        }
    }

    public String code() {
        return kind.code();
    }

    public Level level() {
        return kind.level();
    }

    /** Returns the sentence: what was seen, why it matters, what to do. */
    public String text() {
        return kind.pattern().formatted(arguments.toArray());
    }

    /** How much a finding weighs. */
    public enum Level {
        /** Good to know; changes nothing. */
        NOTE,
        /** May change the result or how it may be used. */
        WARNING,
        /** The result must not be used as it stands. */
        SERIOUS;

        public String word() {
            return switch (this) {
                case NOTE -> "note";
                case WARNING -> "warning";
                case SERIOUS -> "serious";
            };
        }
    }

    /**
     * A sort of finding.
     *
     * @param code stable, words joined by hyphens
     * @param level how much it weighs
     * @param pattern its sentence, with {@code %s} for each argument and no other directive
     */
    public record Kind(String code, Level level, String pattern) {

        public Kind {
            if (!code.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
                throw new IllegalArgumentException("code '" + code + "' is not words-with-hyphens");
            }
        }

        public static Kind note(String code, String pattern) {
            return new Kind(code, Level.NOTE, pattern);
        }

        public static Kind warning(String code, String pattern) {
            return new Kind(code, Level.WARNING, pattern);
        }

        public static Kind serious(String code, String pattern) {
            return new Kind(code, Level.SERIOUS, pattern);
        }

        private int places() {
            int places = 0;
            for (int at = pattern.indexOf("%s"); at >= 0; at = pattern.indexOf("%s", at + 2)) {
                places++;
            }
            return places;
        }

        public Finding with(Object... arguments) {
            return new Finding(
                    this,
                    java.util.Arrays.stream(arguments).map(String::valueOf).toList());
        }
    }
}
