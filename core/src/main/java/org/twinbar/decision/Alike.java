package org.twinbar.decision;

/**
 * Whether a treatment does to one kind of specimens what it does to another, flat and upright say.
 *
 * @param here one kind, in words
 * @param there the other
 * @param contrast the effect here over the effect there for ratios and rates, else less it; the
 *     interval holds together with those of all other kinds
 * @param answer what that interval says
 * @param words both effects and the answer, in a sentence
 */
public record Alike(String here, String there, Found contrast, Answer answer, String words) {

    /** Whether it acts alike. */
    public enum Answer {
        /** The two effects lie nearer than is worth having. */
        ALIKE("alike"),
        DIFFERENT("different"),
        OPEN("open");

        private final String word;

        Answer(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
