package org.twinbar.study.table;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Named;
import org.twinbar.method.TestMethod;
import org.twinbar.planning.Placed;
import org.twinbar.planning.Series;
import org.twinbar.study.judged.Plan;

/** The table of a test that is planned: codes and places, and blank cells for what is read. */
public final class PlannedTable {

    private static final String LINE_END = "\r\n";

    private final Plan plan;
    private final Description description;

    private final Set<String> sameForAll;

    /** @param sameForAll names of what needs no cell, being the same for all specimens */
    public PlannedTable(Plan plan, TestMethod method, Set<String> sameForAll) {
        this.plan = plan;
        this.description = method.description();
        this.sameForAll = sameForAll.stream().map(Presets::key).collect(Collectors.toSet());
    }

    /** Returns it in the form of RFC 4180. */
    public String csv() {
        List<Series> series = plan.series().stream()
                .filter(each -> each.method().equals(description.name()))
                .toList();
        if (series.isEmpty()) {
            List<String> methods =
                    plan.series().stream().map(Series::method).distinct().toList();
            throw new InputException("the plan has no %s test, but %s"
                    .formatted(description.name(), String.join(", ", methods)));
        }
        List<String> header = new ArrayList<>(
                List.of("specimen", "test_order", "kind", "orientation", "print_run"));
        List<String> blanks = blanks();
        header.addAll(blanks);
        StringBuilder csv = new StringBuilder(row(header));
        for (Series each : series) {
            for (Placed one : plan.allocation().of(each)) {
                List<String> cells = new ArrayList<>(List.of(
                        one.code(),
                        Integer.toString(one.test()),
                        each.name(),
                        each.orientation().word(),
                        Integer.toString(one.run())));
                blanks.forEach(blank -> cells.add(""));
                csv.append(row(cells));
            }
        }
        return csv.toString();
    }

    /**
     * Every way of everything that is asked, so that no reading is without its cell; a curve has
     * its file's name.
     */
    private List<String> blanks() {
        Set<String> blanks = new LinkedHashSet<>();
        for (Ask ask : description.asks()) {
            for (List<Named> way : ask.ways()) {
                way.stream()
                        .filter(named -> !sameForAll.contains(Presets.key(named.name())))
                        .map(named ->
                                named instanceof Channel ? Columns.CURVE_HEADER : named.column())
                        .forEach(blanks::add);
            }
        }
        return List.copyOf(blanks);
    }

    private static String row(List<String> cells) {
        return String.join(",", cells.stream().map(PlannedTable::cell).toList()) + LINE_END;
    }

    private static String cell(String text) {
        boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c < ' ');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
