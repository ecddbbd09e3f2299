package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.twinbar.report.Sheet.Block;
import org.twinbar.study.judged.JudgedStudy;

/** A report holds what METHODS.md L says that report clauses ask for. */
class ReportClausesTest {

    /**
     * The numbered list of METHODS.md L, each by words of its clause; what is asked of heated bars
     * alone (11) stands in reports of such tests.
     */
    private static final List<String> CLAUSES = List.of(
            "Standard",
            "Material",
            "Specimens: type",
            "Conditioning",
            "Number tested",
            "Apparatus",
            "Speed",
            "Each specimen's result",
            "Mean, standard deviation",
            "left out",
            "Date",
            "Who");

    private static final JudgedStudy STUDY = Studies.pulled(4, 400);

    @Test
    void namesEachClauseWithWhatIsKnownOrThatItIsNot() {
        Map<String, String> rows = rows(ReportClauses.of(STUDY));
        for (String clause : CLAUSES) {
            assertThat(rows.keySet()).as(clause).anyMatch(it -> it.contains(clause));
        }
        assertThat(rows.values()).noneMatch(String::isBlank);
        assertThat(rows.get("Conditioning and atmosphere of the test"))
                .isEqualTo(ReportClauses.NOT_SAID);
        assertThat(rows.get("Date")).isEqualTo(ReportClauses.NOT_SAID);
        assertThat(rows.get("Material and its history"))
                .isEqualTo("Two-part clear coat on printed cleats");
        assertThat(rows.get("Apparatus, and what was set on it")).contains("grip distance 115 mm");
        assertThat(rows.get("Number tested, and number that count"))
                .contains("%s tested".formatted(STUDY.specimens().size()));
    }

    @Test
    void pointsOnlyToSectionsThatAreThere() {
        List<String> headings =
                HowFound.of(STUDY).stream().map(Sheet.Section::heading).toList();
        for (String here : rows(ReportClauses.of(STUDY)).values()) {
            var quoted = java.util.regex.Pattern.compile("“([^”]+)”").matcher(here);
            while (quoted.find()) {
                assertThat(headings).contains(quoted.group(1));
            }
        }
    }

    @Test
    void givesMeanDeviationAndIntervalOfEachGroup() {
        List<Block> blocks = GroupTables.of(STUDY);
        Block.Table table = blocks.stream()
                .filter(Block.Table.class::isInstance)
                .map(Block.Table.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(table.columns())
                .extracting(Sheet.Column::header)
                .containsExactly(
                        "Property",
                        "Group",
                        "Specimens",
                        "Mean",
                        "Standard deviation",
                        "95 % interval");
        assertThat(table.rows()).isNotEmpty().allMatch(row -> row.size() == 6);
        assertThat(table.rows().stream().map(row -> row.get(1)).distinct())
                .hasSizeGreaterThanOrEqualTo(2);
    }

    private static Map<String, String> rows(List<Block> blocks) {
        Map<String, String> rows = new LinkedHashMap<>();
        List<List<String>> all = new ArrayList<>(((Block.Table) blocks.get(0)).rows());
        all.forEach(row -> rows.put(row.get(0), row.get(1)));
        return rows;
    }
}
