package org.twinbar.method;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A sort of claim that a test answers, and what a person who plans should know before anything is
 * made.
 *
 * @param topic what such claims say, in a word or two, such as {@code stronger}
 * @param words beginnings of words that such a claim has, in small letters
 * @param how what is done to the specimen, so that a person can choose between tests
 * @param property what answers; where it has siblings on another basis, a person may choose those
 * @param better which way it lies if the claim is right
 * @param usualScatter standard deviation of specimens that are made alike: over the mean for a
 *     ratio, else in the property's unit; common practice, no source
 * @param stated what the answer holds for, and must be settled before
 * @param wayUp whether it matters how the specimen stood on the bed
 * @param shape name of the shape that is usual for it
 */
public record Answering(
        String topic,
        List<String> words,
        String how,
        Property property,
        Better better,
        OptionalDouble usualScatter,
        List<Stated> stated,
        WayUp wayUp,
        String shape) {

    /** Which way a property lies if the claim is right; of a time, the rate at which it happens. */
    public enum Better {
        HIGHER("higher"),
        LOWER("lower"),
        UNCHANGED("same");

        private final String word;

        Better(String word) {
            this.word = word;
        }

        /** Returns the word that a question says it by. */
        public String word() {
            return word;
        }
    }

    /** Whether it matters how the specimen stood on the bed. */
    public enum WayUp {
        MATTERS,
        ANY
    }

    /**
     * Something that the answer holds for.
     *
     * @param named an input or a word of the method, which is then the same for all specimens
     * @param question what is asked, in plain words
     * @param typical what people often take, the most usual first
     */
    public record Stated(Named named, String question, List<Typical> typical) {
        public Stated {
            typical = List.copyOf(typical);
        }
    }

    /** A value that people often take, and what it stands for. */
    public record Typical(String value, String words) {}

    public Answering {
        words = List.copyOf(words);
        stated = List.copyOf(stated);
        if (usualScatter.isPresent() && !(usualScatter.getAsDouble() > 0)) {
            throw new IllegalArgumentException("the usual scatter of %s is %s, must be above zero"
                    .formatted(property.name(), usualScatter.getAsDouble()));
        }
    }

    /** Returns an answer of which nothing more is known. */
    public static Answering of(
            String topic, List<String> words, String how, Property property, Better better) {
        return new Answering(
                topic,
                words,
                how,
                property,
                better,
                OptionalDouble.empty(),
                List.of(),
                WayUp.ANY,
                "");
    }

    public Answering scattering(double usual) {
        return new Answering(
                topic,
                words,
                how,
                property,
                better,
                OptionalDouble.of(usual),
                stated,
                wayUp,
                shape);
    }

    /** Returns the same where something must be settled before, beside what there is. */
    public Answering stating(Named named, String question, Typical... typical) {
        List<Stated> more = new java.util.ArrayList<>(stated);
        more.add(new Stated(named, question, List.of(typical)));
        return new Answering(topic, words, how, property, better, usualScatter, more, wayUp, shape);
    }

    /** Returns the same, made on a shape. */
    public Answering on(String newShape, WayUp newWayUp) {
        return new Answering(
                topic, words, how, property, better, usualScatter, stated, newWayUp, newShape);
    }
}
