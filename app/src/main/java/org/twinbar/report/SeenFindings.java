package org.twinbar.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.twinbar.finding.Finding;
import org.twinbar.report.Sheet.Block;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;

/** Findings by their sort, what weighs most first, so that forty of one sort are one sentence. */
final class SeenFindings {

    private static final int NAMED = 12;

    private SeenFindings() {}

    /** A finding and where it was seen: a specimen's code, or empty for the whole study. */
    /** What is to be said of a plan stands beside the plan. */
    private static final String OF_THE_PLAN = "plan-";

    private record Seen(Finding finding, String specimen) {}

    static List<Block> of(JudgedStudy study) {
        List<Seen> all = new ArrayList<>();
        study.findings().forEach(finding -> all.add(new Seen(finding, "")));
        study.making().findings().stream()
                .filter(finding -> !finding.code().startsWith(OF_THE_PLAN))
                .forEach(finding -> all.add(new Seen(finding, "")));
        for (JudgedSpecimen specimen : study.specimens()) {
            for (Finding finding : specimen.result().findings()) {
                all.add(new Seen(finding, specimen.code()));
            }
        }
        List<Block> blocks = new ArrayList<>();
        int specimens = study.specimens().size();
        add(blocks, "What must be mended", all, Finding.Level.SERIOUS, specimens);
        add(blocks, "What may change a result", all, Finding.Level.WARNING, specimens);
        add(blocks, "Good to know", all, Finding.Level.NOTE, specimens);
        return blocks.isEmpty()
                ? List.of(new Block.Paragraph("Nothing unusual was found in the readings."))
                : blocks;
    }

    private static void add(
            List<Block> blocks,
            String heading,
            List<Seen> all,
            Finding.Level level,
            int specimens) {
        Map<String, List<Seen>> bySort = new LinkedHashMap<>();
        for (Seen seen : all) {
            if (seen.finding().level() == level) {
                bySort.computeIfAbsent(seen.finding().code(), code -> new ArrayList<>())
                        .add(seen);
            }
        }
        if (bySort.isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading(heading));
        blocks.add(new Block.Sentences(
                bySort.values().stream().map(sort -> sentence(sort, specimens)).toList(),
                level == Finding.Level.NOTE ? Sheet.Weight.PLAIN : Sheet.Weight.ATTENTION));
    }

    private static String sentence(List<Seen> sort, int specimens) {
        Seen first = sort.get(0);
        List<String> codes = sort.stream()
                .map(Seen::specimen)
                .filter(code -> !code.isEmpty())
                .distinct()
                .toList();
        boolean same = sort.stream()
                .allMatch(s -> s.finding().text().equals(first.finding().text()));
        if (codes.isEmpty()) {
            return first.finding().text();
        }
        if (codes.size() == 1) {
            return codes.get(0) + ": " + first.finding().text();
        }
        return same
                ? (codes.size() == specimens ? "Every specimen" : named(codes)) + ": "
                        + first.finding().text()
                : codes.get(0)
                        + ": "
                        + first.finding().text()
                        + " Likewise, with their own numbers: "
                        + named(codes.subList(1, codes.size()))
                        + ".";
    }

    private static String named(List<String> codes) {
        int rest = codes.size() - NAMED;
        return rest <= 0
                ? String.join(", ", codes)
                : String.join(", ", codes.subList(0, NAMED)) + " and " + rest + " more";
    }
}
