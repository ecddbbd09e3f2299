package org.twinbar.benchmarks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The tables of the kinds beyond two means, a section for each, and their picture. */
record KindTables(List<Kind.Tally> tallies) {

    String text() {
        StringBuilder text = new StringBuilder();
        for (Section section : Section.values()) {
            text.append(table(section));
        }
        return text.toString();
    }

    private String table(Section section) {
        List<Kind.Tally> rows =
                tallies.stream().filter(it -> it.kind().section() == section).toList();
        double most =
                rows.stream().mapToDouble(Kind.Tally::supportedShare).max().orElse(0);
        double least =
                rows.stream().mapToDouble(Kind.Tally::supportedShare).min().orElse(0);
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "## %s%n%n%s Nominal rate of false \"supported\": %s %%; here from %.1f to %.1f %%. %s%n%n",
                section.title(),
                section.worlds(),
                section.promise(),
                100 * least,
                100 * most,
                section.why(rows)));
        text.append(
                        "| what | treated, control | false \"supported\" | contradicted at the edge | coverage |")
                .append(" \"supported\" beyond |\n|---|---|---|---|---|---|\n");
        for (Kind.Tally row : rows) {
            text.append(String.format(
                    Locale.ROOT,
                    "| %s | %s | %.1f | %.1f | %.1f | %.0f |%n",
                    row.kind().words(),
                    row.kind().numbers(),
                    100 * row.supportedShare(),
                    100 * row.contradictedShare(),
                    100 * row.coverage(),
                    100 * row.beyondShare()));
        }
        return text.append('\n').append(above(section, rows)).toString();
    }

    /** Names the rows that are above their nominal rate by more than chance. */
    private static String above(Section section, List<Kind.Tally> rows) {
        double promised = section.promise() / 100;
        List<String> above = rows.stream()
                .filter(row -> row.supportedShare()
                        > promised + CalibrationPage.error(promised, row.studies()))
                .map(row -> "%s (%s)".formatted(row.kind().words(), row.kind().numbers()))
                .toList();
        return above.isEmpty()
                ? "None is above its nominal rate by more than chance.\n\n"
                : "Above it by more than chance: " + String.join("; ", above) + ".\n\n";
    }

    /** Returns false "supported" of every kind, a row of dots for each, its number beside it. */
    String falseSupported() {
        Map<String, SortedMap<Integer, Double>> rows = new LinkedHashMap<>();
        for (Kind.Tally tally : tallies) {
            rows.computeIfAbsent(row(tally.kind()), unused -> new TreeMap<>())
                    .put(tally.kind().dot(), 100 * tally.supportedShare());
        }
        return new DotPlot(
                        "false \"supported\" of other kinds, per cent", 0, 7, new double[] {2.5, 5})
                .of(rows.entrySet().stream()
                        .map(it -> new DotPlot.Row(it.getKey(), it.getValue()))
                        .toList());
    }

    /** Runs, units and mixes are told apart by their number, which stands beside the dot. */
    private static String row(Kind kind) {
        return kind.section().name().toLowerCase(Locale.ROOT)
                + ": "
                + (kind.section() == Section.BLOCKS
                        ? kind.words().replaceFirst("^\\d+ ", "")
                        : kind.words().replaceFirst(" \\(.*\\)", ""));
    }
}
