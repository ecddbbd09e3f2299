package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.method.Property;
import org.twinbar.report.Sheet.Block;
import org.twinbar.report.Sheet.Column;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.MethodUsed;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.judged.Registered;

/**
 * What test standards want in a report, and where it stands in this one. What nobody said is listed
 * as not said: a reader must see the gap.
 *
 * <p>Source: METHODS.md L, the common core of the report clauses of ISO 527-1, 179-1 and 75-1; the
 * lists are from memory.
 */
final class ReportClauses {

    static final String NOT_SAID = "Not said.";

    private final JudgedStudy study;

    private ReportClauses(JudgedStudy study) {
        this.study = study;
    }

    static List<Block> of(JudgedStudy study) {
        if (study.methods().isEmpty()) {
            return List.of();
        }
        ReportClauses clauses = new ReportClauses(study);
        return List.of(new Block.Table(
                "What the report clauses of test standards ask for",
                List.of(Column.name("Asked for"), Column.text("Here")),
                clauses.rows()));
    }

    private List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>(List.of(
                List.of("Standard, and departures from it", standards()),
                List.of(
                        "Material and its history",
                        study.about().isBlank() ? NOT_SAID : study.about().strip()),
                List.of("Specimens: type, dimensions, preparation, orientation", specimens()),
                List.of("Conditioning and atmosphere of the test", conditions()),
                List.of("Number tested, and number that count", numbers()),
                List.of("Apparatus, and what was set on it", apparatus()),
                List.of("Speed or rate", noted("speed", "rate", "ramp", "time", "velocity")),
                List.of("Each specimen's result", "Under “Every specimen”."),
                List.of(
                        "Mean, standard deviation, interval of the mean; types of break",
                        "Under “Each group”.")));
        if (heated()) {
            rows.add(List.of(
                    "Load and stress in the heat", noted("stress", "mass", "span", "load")));
        }
        rows.add(List.of("Specimens left out, and why", leftOut()));
        rows.add(List.of("Date", dates()));
        rows.add(List.of("Who tested", people()));
        return rows;
    }

    /** A temperature that is found is compared by difference: it has no true zero. */
    private boolean heated() {
        return study.methods().stream()
                .flatMap(used -> used.description().properties().stream())
                .anyMatch(it -> it.scale() == Property.Scale.INTERVAL);
    }

    private String standards() {
        return study.methods().stream()
                .map(it -> it.description().title() + ": " + it.description().standard())
                .collect(Collectors.joining(" "));
    }

    private String specimens() {
        List<String> said = new ArrayList<>();
        study.making()
                .plan()
                .ifPresent(plan -> plan.series()
                        .forEach(it -> said.add("%s, %s, %s"
                                .formatted(
                                        it.name(), it.shape(), it.orientation().word()))));
        if (said.isEmpty()) {
            Set<String> orientations = new LinkedHashSet<>();
            study.specimens().stream()
                    .map(it -> it.factors().getOrDefault("orientation", ""))
                    .filter(it -> !it.isBlank())
                    .forEach(orientations::add);
            if (!orientations.isEmpty()) {
                said.add("printed " + String.join(" and ", orientations));
            }
        }
        said.add("dimensions as read, under “Readings as they came”");
        return Answers.capital(String.join("; ", said)) + ".";
    }

    private String conditions() {
        List<String> said = new ArrayList<>();
        study.making().specimens().stream()
                .flatMap(it -> it.done(Registered.Step.CONDITIONED).stream())
                .map(Registered.Done::what)
                .filter(it -> !it.isBlank())
                .distinct()
                .forEach(said::add);
        String noted = noted("temperature", "humidity", "conditioning", "celsius");
        if (!noted.equals(NOT_SAID)) {
            said.add(noted);
        }
        return said.isEmpty() ? NOT_SAID : String.join("; ", said);
    }

    private String numbers() {
        return study.methods().stream()
                .map(used -> {
                    List<JudgedSpecimen> all = study.specimensOf(used.name());
                    long counting = all.stream().filter(JudgedSpecimen::counts).count();
                    return "%s: %s tested, %s count"
                            .formatted(used.description().title(), all.size(), counting);
                })
                .collect(Collectors.joining("; ", "", "."));
    }

    private String apparatus() {
        Set<String> names = new LinkedHashSet<>();
        study.methods().forEach(used -> used.instruments().forEach(it -> names.add(it.name())));
        String instruments = names.isEmpty()
                ? "instruments not said"
                : String.join(", ", names) + " (under “Instruments”)";
        String set = settings(name -> true);
        return Answers.capital(instruments) + (set.isEmpty() ? "." : "; " + set + ".");
    }

    private String settings(java.util.function.Predicate<String> wanted) {
        List<String> said = new ArrayList<>();
        for (MethodUsed used : study.methods()) {
            used.settings().forEach((name, value) -> {
                if (wanted.test(name.toLowerCase(Locale.ROOT))) {
                    said.add(name.replace('_', ' ') + " " + value);
                }
            });
        }
        return said.stream().distinct().collect(Collectors.joining(", "));
    }

    /** What was said once for a test, else in which columns it was read on each specimen. */
    private String noted(String... words) {
        String set = settings(name -> Stream.of(words).anyMatch(name::contains));
        Set<String> columns = new LinkedHashSet<>();
        for (JudgedSpecimen specimen : study.specimens()) {
            for (Reading reading : specimen.readings()) {
                String name = reading.column().toLowerCase(Locale.ROOT);
                if (Stream.of(words).anyMatch(name::contains)
                        && !reading.counting().isBlank()) {
                    columns.add(reading.column());
                }
            }
        }
        List<String> said = new ArrayList<>();
        if (!set.isEmpty()) {
            said.add(set);
        }
        if (!columns.isEmpty()) {
            said.add("read on each specimen: " + String.join(", ", columns));
        }
        boolean recorded = Stream.of(words).anyMatch("time"::equals)
                && study.specimens().stream().anyMatch(it -> it.curve().isPresent());
        if (said.isEmpty() && recorded) {
            said.add("as the recorded curves show; findings name what a standard would refuse");
        }
        return said.isEmpty() ? NOT_SAID : Answers.capital(String.join("; ", said)) + ".";
    }

    private String leftOut() {
        long out = study.specimens().stream().filter(it -> !it.counts()).count();
        return out == 0 ? "None." : Cells.count(out, "specimen") + ", under “What was left out”.";
    }

    private String dates() {
        Map<String, String> byTest = study.methods().stream()
                .filter(it -> it.tested().isPresent())
                .collect(Collectors.toMap(
                        it -> it.description().title(),
                        it -> it.tested().orElseThrow().toString(),
                        (one, other) -> one,
                        java.util.LinkedHashMap::new));
        List<String> said = new ArrayList<>();
        byTest.forEach((test, day) -> said.add(test + " " + day));
        List<Registered.Done> tested = study.making().specimens().stream()
                .flatMap(it -> it.done(Registered.Step.TESTED).stream())
                .toList();
        tested.stream()
                .map(Registered.Done::when)
                .min(java.util.Comparator.naturalOrder())
                .ifPresent(first -> said.add("first specimen " + Cells.time(first)));
        tested.stream()
                .map(Registered.Done::when)
                .max(java.util.Comparator.naturalOrder())
                .ifPresent(last -> said.add("last specimen " + Cells.time(last)));
        return said.isEmpty() ? NOT_SAID : String.join("; ", said) + ".";
    }

    private String people() {
        Set<String> people = new LinkedHashSet<>();
        study.making().specimens().stream()
                .flatMap(it -> it.done(Registered.Step.TESTED).stream())
                .forEach(it -> people.add(it.who()));
        study.specimens()
                .forEach(specimen -> specimen.readings()
                        .forEach(reading ->
                                reading.typed().ifPresent(typed -> people.add(typed.who()))));
        return people.isEmpty() ? NOT_SAID : String.join(", ", people) + ".";
    }
}
