package org.twinbar.report.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.method.Caution;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.report.Sheet;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;

/** What of the kit is words: to paste beneath a video, into a forum, or to film by. */
final class KitWords {

    private static final String LIMIT = "What limits it";
    private static final String INVENTED =
            "All data here are invented: they show how a study is told, and nothing about any"
                    + " product.";
    private static final String NEVER =
            "This tells what was measured on one bench. It certifies nothing: food contact, drinking"
                    + " water and loads that people depend on are for the local rules and an"
                    + " accredited laboratory.";

    private final JudgedStudy study;
    private final Sheet sheet;

    KitWords(JudgedStudy study, Sheet sheet) {
        this.study = study;
        this.sheet = sheet;
    }

    String description() {
        StringBuilder text = new StringBuilder(sheet.title()).append("\n\n");
        if (sheet.invented()) {
            text.append(INVENTED).append("\n\n");
        }
        text.append(sheet.about()).append("\n\n");
        for (TablePoster.Row row : TablePoster.rows(sheet)) {
            text.append(claim(row)).append(": ").append(row.answer().verdict()).append(".\n");
            text.append(row.answer().brief()).append('\n');
            limits(row.answer())
                    .forEach(limit -> text.append("Limit: ").append(limit).append('\n'));
            text.append('\n');
        }
        text.append("Who wants to check it: the data package holds every reading, and the same"
                + " readings give the same verdicts on any machine.\n");
        text.append(NEVER).append('\n');
        return text.toString();
    }

    private static String claim(TablePoster.Row row) {
        String said = row.claim().saidBy().isBlank() ? "" : " (" + row.claim().saidBy() + ")";
        return "“%s”%s, %s".formatted(row.claim().quoted(), said, row.answer().heading());
    }

    private static List<String> limits(Sheet.Answer answer) {
        return answer.items().stream()
                .filter(item -> item.term().equals(LIMIT))
                .flatMap(item -> item.paragraphs().stream())
                .toList();
    }

    String markdown() {
        StringBuilder table = new StringBuilder("| claim | asked of | verdict | found |\n");
        table.append("|---|---|---|---|\n");
        for (TablePoster.Row row : TablePoster.rows(sheet)) {
            table.append("| “%s” | %s | **%s** | %s |\n"
                    .formatted(
                            cell(row.claim().quoted()),
                            cell(row.answer().heading()),
                            row.answer().verdict(),
                            cell(row.answer().brief())));
        }
        return table + (sheet.invented() ? "\n" + INVENTED + "\n" : "");
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace('\n', ' ');
    }

    String plain() {
        StringBuilder table = new StringBuilder();
        for (TablePoster.Row row : TablePoster.rows(sheet)) {
            table.append(claim(row))
                    .append("\n  ")
                    .append(row.answer().verdict())
                    .append('\n');
        }
        return table + (sheet.invented() ? "\n" + INVENTED + "\n" : "");
    }

    /** The list of shots that the study calls for, with the specimens that show it best. */
    String shots() {
        StringBuilder list =
                new StringBuilder("# Shots for: ").append(sheet.title()).append("\n\n");
        shot(
                list,
                "Before and after: the same specimen from the same place in the same light,"
                        + " untreated and treated.");
        shot(
                list,
                "Half and half: one part with its one half treated, the line between them in"
                        + " the middle of the frame.");
        shot(
                list,
                "The treatment being done: what is weighed, and the scale's display in the frame.");
        for (MethodUsed used : study.methods()) {
            list.append("\n## ").append(used.description().title()).append("\n\n");
            ofTest(list, used);
        }
        list.append("\n## What must not be missing\n\n");
        for (JudgedSpecimen out : study.specimens()) {
            out.leftOut()
                    .ifPresent(why -> shot(
                            list,
                            "Specimen %s, which does not count: %s."
                                    .formatted(out.code(), why.why())));
        }
        shot(list, "The verdict pictures of this kit, as long as they take to read aloud twice.");
        shot(list, "Where the data can be had, in the last frame.");
        return list.toString();
    }

    private void ofTest(StringBuilder list, MethodUsed used) {
        List<JudgedSpecimen> specimens = study.specimensOf(used.name());
        boolean curves = specimens.stream().anyMatch(it -> it.curve().isPresent());
        shot(list, "The rig whole, then the display that is read, with its unit.");
        for (String group : groups(specimens)) {
            List<JudgedSpecimen> ofGroup = specimens.stream()
                    .filter(it -> it.group().equals(group) && it.counts())
                    .toList();
            typical(used, ofGroup)
                    .ifPresent(it -> shot(
                            list,
                            "%s: specimen %s, which lies nearest".formatted(group, it.code())
                                    + " to the middle of its group"
                                    + (curves
                                            ? ", from the first load to the break, slowed down."
                                            : ".")));
        }
        asked(used).ifPresent(property -> {
            extreme(used, property, 1)
                    .ifPresent(it -> shot(
                            list,
                            "%s, the highest of all: %s (%s)."
                                    .formatted(property.label(), it.code(), it.group())));
            extreme(used, property, -1)
                    .ifPresent(it -> shot(
                            list,
                            "%s, the lowest of all: %s (%s)."
                                    .formatted(property.label(), it.code(), it.group())));
        });
        for (Caution caution : used.description().cautions()) {
            list.append("- Caution: ").append(caution.text()).append('\n');
        }
    }

    private static void shot(StringBuilder list, String text) {
        list.append("- [ ] ").append(text).append('\n');
    }

    private static Set<String> groups(List<JudgedSpecimen> specimens) {
        return specimens.stream()
                .map(JudgedSpecimen::group)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The property that a claim asks of the test first. */
    private Optional<Property> asked(MethodUsed used) {
        return study.claims().stream()
                .flatMap(claim -> claim.answers().stream())
                .filter(Answer.Compared.class::isInstance)
                .map(Answer.Compared.class::cast)
                .filter(answer -> answer.method().equals(used.name()))
                .map(Answer.Compared::property)
                .findFirst();
    }

    private Optional<JudgedSpecimen> typical(MethodUsed used, List<JudgedSpecimen> group) {
        Optional<Property> asked = asked(used);
        if (asked.isEmpty()) {
            return group.stream().findFirst();
        }
        List<JudgedSpecimen> sorted = sorted(group, asked.get());
        return sorted.isEmpty()
                ? group.stream().findFirst()
                : Optional.of(sorted.get((sorted.size() - 1) / 2));
    }

    private Optional<JudgedSpecimen> extreme(MethodUsed used, Property property, int which) {
        List<JudgedSpecimen> all = new ArrayList<>(study.specimensOf(used.name()));
        all.removeIf(it -> !it.counts());
        List<JudgedSpecimen> sorted = sorted(all, property);
        return sorted.size() < 3
                ? Optional.empty()
                : Optional.of(sorted.get(which > 0 ? sorted.size() - 1 : 0));
    }

    private static List<JudgedSpecimen> sorted(List<JudgedSpecimen> specimens, Property property) {
        return specimens.stream()
                .filter(it -> number(it, property).isPresent())
                .sorted(Comparator.comparing(it -> number(it, property).orElseThrow()))
                .toList();
    }

    private static Optional<Double> number(JudgedSpecimen specimen, Property property) {
        Yield yield = specimen.result().yields().get(property);
        return yield instanceof Yield.Value value
                ? Optional.of(value.value())
                : yield instanceof Yield.Fitted fitted
                        ? Optional.of(fitted.value())
                        : Optional.empty();
    }
}
