package org.twinbar.web;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Limits;
import org.twinbar.method.Named;
import org.twinbar.study.TypedTest;

/**
 * One specimen as somebody at the rig sees it.
 *
 * @param about what tells it apart, as far as whoever reads may know
 * @param questions what is asked of it, each with its fields
 * @param result what it gives so far; empty until the page asks for it
 */
public record RigSpecimen(
        TypedTest.Specimen specimen, String about, List<Question> questions, Result result) {

    /** More fields than this are too many for a phone, so that those that can wait are folded. */
    private static final int MANY_FIELDS = 8;

    public RigSpecimen {
        questions = List.copyOf(questions);
    }

    /**
     * What is asked, and the fields that answer it.
     *
     * @param folded whether it can wait
     * @param fields of the way in which it is answered
     * @param otherwise fields of the other ways
     */
    public record Question(
            String words, boolean folded, List<RigField> fields, List<RigField> otherwise) {
        public Question {
            fields = List.copyOf(fields);
            otherwise = List.copyOf(otherwise);
        }

        public boolean isAsking() {
            return Stream.concat(fields.stream(), otherwise.stream()).anyMatch(RigField::isAsking);
        }

        private Question with(RigField other) {
            return new Question(words, folded, replaced(fields, other), replaced(otherwise, other));
        }

        private static List<RigField> replaced(List<RigField> fields, RigField other) {
            return fields.stream()
                    .map(field -> field.id().equals(other.id()) ? other : field)
                    .toList();
        }
    }

    /**
     * What a specimen gives so far.
     *
     * @param name of the property that matters most
     * @param known whether there is a value of it
     * @param value that, or the reason why there is none
     * @param noticed what a person should know of it
     */
    public record Result(String name, boolean known, String value, List<String> noticed) {

        static final Result NONE = new Result("", false, "", List.of());

        public Result {
            noticed = List.copyOf(noticed);
        }
    }

    /** @param usual of each field, what nobody is asked about */
    static RigSpecimen of(
            String rig,
            TypedTest test,
            Map<TypedTest.Field, Optional<Limits>> usual,
            TypedTest.Specimen specimen,
            Result result) {
        List<String> about = new ArrayList<>();
        if (!specimen.group().isEmpty()) {
            about.add(specimen.group());
        }
        specimen.factors().forEach((factor, level) -> {
            if (!level.isBlank()) {
                about.add(factor.replace('_', ' ') + " " + level);
            }
        });
        return new RigSpecimen(
                specimen, String.join(" · ", about), questions(rig, test, usual, specimen), result);
    }

    private static List<Question> questions(
            String rig,
            TypedTest test,
            Map<TypedTest.Field, Optional<Limits>> usual,
            TypedTest.Specimen specimen) {
        Map<Named, List<RigField>> fields = new LinkedHashMap<>();
        for (TypedTest.Field field : test.fields()) {
            fields.computeIfAbsent(field.named(), it -> new ArrayList<>())
                    .add(RigField.of(
                            rig,
                            test,
                            specimen,
                            field,
                            usual.getOrDefault(field, Optional.empty())));
        }
        boolean many = test.fields().size() > MANY_FIELDS;
        Set<Named> shown = new HashSet<>();
        List<Question> questions = new ArrayList<>();
        for (Ask ask : test.description().asks()) {
            List<Named> way = way(ask, fields, test.sameForAll());
            List<RigField> answers = fields(way, fields, shown);
            List<RigField> otherwise = new ArrayList<>();
            ask.ways().forEach(other -> otherwise.addAll(fields(other, fields, shown)));
            boolean read = answers.stream().anyMatch(field -> !field.text().isBlank());
            if (!answers.isEmpty() || !otherwise.isEmpty()) {
                questions.add(new Question(
                        ask.question(),
                        many && !read && ask.need() == Ask.Need.OPTIONAL,
                        answers,
                        otherwise));
            }
        }
        return questions;
    }

    /** The way that was begun; else the first whose fields are all here. */
    private static List<Named> way(
            Ask ask, Map<Named, List<RigField>> fields, Set<Named> sameForAll) {
        Optional<List<Named>> begun = ask.ways().stream()
                .filter(way -> way.stream()
                        .flatMap(named -> fields.getOrDefault(named, List.of()).stream())
                        .anyMatch(field -> !field.text().isBlank()))
                .findFirst();
        return begun.or(() -> ask.ways().stream()
                        .filter(way -> way.stream()
                                .allMatch(named ->
                                        fields.containsKey(named) || sameForAll.contains(named)))
                        .findFirst())
                .orElse(ask.ways().get(0));
    }

    private static List<RigField> fields(
            List<Named> way, Map<Named, List<RigField>> fields, Set<Named> shown) {
        List<RigField> found = new ArrayList<>();
        for (Named named : way) {
            if (!(named instanceof Channel) && shown.add(named)) {
                found.addAll(fields.getOrDefault(named, List.of()));
            }
        }
        return found;
    }

    /** Returns the specimen with a field as it is asked about. */
    RigSpecimen with(RigField asked) {
        return new RigSpecimen(
                specimen,
                about,
                questions.stream().map(question -> question.with(asked)).toList(),
                result);
    }

    /** Returns one of its fields. */
    Optional<RigField> field(String column) {
        return questions.stream()
                .flatMap(it -> Stream.concat(it.fields().stream(), it.otherwise().stream()))
                .filter(field -> field.field().header().equals(column))
                .findFirst();
    }

    public String code() {
        return specimen.code();
    }

    public int number() {
        return specimen.number();
    }

    /** Returns how far it is, in a word or two. */
    public String state() {
        if (specimen.leftOut().isPresent()) {
            return "left out";
        }
        return specimen.isDone() ? "done" : specimen.isBegun() ? "begun" : "to do";
    }
}
