package org.twinbar.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.report.Sheet;
import org.twinbar.study.judged.JudgedStudy;

/** The parts of a study's sheet below its answers, each folded to a line that says its state. */
public final class StudyParts {

    private final JudgedStudy study;

    private StudyParts(JudgedStudy study) {
        this.study = study;
    }

    /** A part: its heading, how it stands, and what unfolds. */
    public record Part(Sheet.Section section, String state) {}

    static List<Part> of(JudgedStudy study, Sheet sheet) {
        StudyParts parts = new StudyParts(study);
        return sheet.sections().stream()
                .map(section -> new Part(section, parts.state(section.anchor())))
                .toList();
    }

    private String state(String anchor) {
        return switch (anchor) {
            case "method" ->
                study.methods().isEmpty()
                        ? "no test yet"
                        : study.methods().stream()
                                .map(used -> used.description().title())
                                .collect(Collectors.joining(", "));
            case "published" ->
                study.lastPublished().flatMap(it -> it.correction(study)).isPresent()
                        ? "judged otherwise since: a correction is due"
                        : "all of it still stands";
            case "plan" ->
                study.making().seal().isPresent()
                        ? "sealed, " + Words.count(study.making().departures().size(), "departure")
                        : "a plan that was not sealed";
            case "treatment" -> treatment();
            case "groups" -> "mean, scatter and interval";
            case "clauses" -> "what standards ask for, and what nobody said";
            case "instruments" -> instruments();
            case "findings" -> findings();
            case "specimens" -> Words.count(study.specimens().size(), "specimen");
            case "uncertainty" -> "what each value's uncertainty is made of";
            case "left-out" -> leftOut();
            case "changes" ->
                study.history().isEmpty()
                        ? "nothing was corrected"
                        : Words.count(study.history().size(), "change");
            case "readings" -> Words.count(study.files().size(), "file") + ", byte for byte";
            case "cautions" -> "before you test again";
            default -> "";
        };
    }

    /** Returns what was published of a study, and whether that still stands, in a line. */
    static String published(JudgedStudy study) {
        if (study.published().isEmpty()) {
            return "keeps these verdicts as you are about to say them";
        }
        return "published %s, the last time on %s; %s"
                .formatted(
                        study.published().size() == 1
                                ? "once"
                                : study.published().size() + " times",
                        study.lastPublished().orElseThrow().when().toLocalDate(),
                        study.lastPublished()
                                        .flatMap(it -> it.correction(study))
                                        .isPresent()
                                ? "judged otherwise since: a correction is due"
                                : "all of it still stands");
    }

    private String instruments() {
        List<Instrument> all = study.methods().stream()
                .flatMap(used -> used.instruments().stream())
                .distinct()
                .toList();
        long assumed = all.stream()
                .filter(it -> it.origin() == Instrument.Origin.ASSUMED)
                .count();
        return Words.count(all.size(), "instrument")
                + (assumed == 0 ? "" : ", " + assumed + " of them assumed");
    }

    private String treatment() {
        int mixes = study.making().mixes().size();
        return "%s, %s, %s"
                .formatted(
                        Words.count(study.making().recipes().size(), "recipe"),
                        Words.count(study.making().steps().size(), "step") + " noted",
                        mixes == 1 ? "1 mix" : mixes + " mixes");
    }

    private String leftOut() {
        long out = study.specimens().stream().filter(it -> !it.counts()).count();
        return out == 0 ? "no specimen" : Words.count((int) out, "specimen");
    }

    private String findings() {
        List<String> counted = new ArrayList<>();
        for (Finding.Level level : Finding.Level.values()) {
            long number = Stream.concat(
                            study.findings().stream(),
                            study.specimens().stream()
                                    .flatMap(it -> it.result().findings().stream()))
                    .filter(it -> it.level() == level)
                    .map(Finding::code)
                    .distinct()
                    .count();
            if (number > 0) {
                counted.add(0, Words.count((int) number, "sort") + " of " + level.word());
            }
        }
        return counted.isEmpty() ? "none" : String.join(", ", counted);
    }
}
