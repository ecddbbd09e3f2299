package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stranger may hand in: refused in one sentence, or told as a finding. */
class BadInputTest {

    private static final String PULL = "calculate tensile --specimens @t.csv";
    private static final String PEAKS = "specimen,group,width_mm,thickness_mm,peak_force_N";
    private static final String CURVES = "specimen,group,width_mm,thickness_mm,curve_file";
    private static final String COMPARE = "compare @v.csv --group group --control plain";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder.resolve("desk"));
        desk.file(
                "v.csv",
                "specimen,group,strength_MPa,below_MPa",
                "A1,plain,30.1,-1",
                "A2,plain,30.9,0.5",
                "A3,plain,31.4,0.2",
                "B1,coated,34.1,2",
                "B2,coated,34.9,3",
                "B3,coated,35.2,2.5");
    }

    @Test
    void emptyFile() {
        desk.file("t.csv", new byte[0]);
        desk.refuses(PULL, "t.csv", "is empty");
        desk.refuses("compare @t.csv --value x --group group --control plain", "is empty");
    }

    @Test
    void emptyStandardInput() {
        desk.refuses(
                "compare - --value x --group group --control plain", "standard input", "empty");
    }

    @Test
    void binaryFile() {
        byte[] bytes = new byte[3000];
        new Random(1).nextBytes(bytes);
        desk.file("t.csv", bytes);
        desk.refuses(PULL, "t.csv", "is not a text file");
        desk.refuses("compare @t.csv --value x --group group --control plain", "not a text file");
    }

    @Test
    void noFileOrAFolder() {
        desk.refuses(PULL, "t.csv", "there is no such file");
        desk.file("t.csv/inner.csv", PEAKS);
        desk.refuses(PULL, "t.csv", "is a folder, not a file");
    }

    @Test
    void headerAlone() {
        desk.file("t.csv", PEAKS);
        desk.refuses(PULL, "t.csv");
    }

    @Test
    void missingColumn() {
        desk.file("t.csv", "specimen,group,width_mm,peak_force_N", "A1,plain,10,1200");
        desk.refuses(PULL, "t.csv", "needs width_mm and thickness_mm, or");
        desk.file("t.csv", "group,width_mm,thickness_mm,peak_force_N", "plain,10,4,1200");
        desk.refuses(PULL, "t.csv", "'specimen'");
    }

    @Test
    void misspeltColumn() {
        desk.file("t.csv", PEAKS.replace("width", "widht"), "A1,plain,10,4,1200");
        desk.refuses(PULL, "t.csv", "is 'widht_mm' meant to be 'width_mm'?");
        desk.refuses(
                COMPARE + " --value strenght_MPa",
                "there is no column 'strenght_MPa'",
                "did you mean 'strength_MPa'?");
    }

    @Test
    void repeatedColumn() {
        desk.file("t.csv", PEAKS + ",width_mm", "A1,plain,10,4,1200,10");
        desk.refuses(PULL, "t.csv", "stands there twice, as column 3 and column 6");
    }

    @Test
    void unitOfTheWrongDimension() {
        desk.file("t.csv", PEAKS.replace("width_mm", "width_N"), "A1,plain,10,4,1200");
        desk.refuses(PULL, "t.csv", "column width_N", "N is a force, not a length as mm is");
        desk.file("t.csv", CURVES, "A1,plain,10,4,c.csv");
        desk.file("c.csv", "time_s,force_mm", "0,0", "1,2", "2,0");
        desk.refuses(PULL, "c.csv", "column force_mm", "mm is a length, not a force as N is");
    }

    @ParameterizedTest
    @CsvSource({"about", "12..4", "1e", "Infinity", "10 N"})
    void textWhereANumberBelongs(String cell) {
        desk.file("t.csv", PEAKS, "A1,plain,10,4,1200", "A2,plain,10," + cell + ",1200");
        desk.refuses(PULL, "t.csv, line 3, column thickness_mm", cell);
    }

    @Test
    void textWhereANumberBelongsInWhatIsCompared() {
        desk.file("v.csv", "specimen,group,x_MPa", "A1,plain,1.5", "A2,plain,two", "B1,coated,3");
        desk.refuses(COMPARE + " --value x_MPa", "v.csv, line 3, column x_MPa", "'two'");
    }

    @Test
    void curveThatIsMissingOrNamedTwice() {
        desk.file("t.csv", CURVES, "A1,plain,10,4,none.csv");
        desk.refuses(PULL, "t.csv, line 2, column curve_file", "'none.csv' is not in");
        desk.file("t.csv", CURVES, "A1,plain,10,4,c.csv", "A2,plain,10,4,c.csv");
        desk.file("c.csv", "time_s,force_N", "0,0", "1,100", "2,0");
        desk.refuses(PULL, "t.csv, line 3, column curve_file", "'c.csv' is named in line 2");
    }

    @Test
    void specimenNamedTwice() {
        desk.file("t.csv", PEAKS, "A1,plain,10,4,1200", "A1,plain,10,4,1201");
        desk.refuses(PULL, "t.csv, line 3, column specimen", "'A1' stands in line 2 already");
    }

    @Test
    void pathOutOfTheFolder() {
        new Desk(folder).file("secret.csv", "time_s,force_N", "0,0", "1,100", "2,0");
        for (String way :
                List.of("../secret.csv", "a/../../secret.csv", desk.path("../secret.csv"))) {
            desk.file("t.csv", CURVES, "A1,plain,10,4," + way);
            desk.refuses(PULL, "t.csv, line 2, column curve_file", way, "leads out of the folder");
        }
    }

    @ParameterizedTest
    @CsvSource({"0", "-3"})
    void sectionThatIsNotAboveZero(String width) {
        desk.file("t.csv", PEAKS, "A1,plain,10,4,1200", "A2,plain," + width + ",4,1200");
        desk.refuses(PULL, "t.csv, line 3, column width_mm", "A2", width, "above 0 mm");
    }

    @Test
    void ambiguousDecimalMark() {
        desk.file("v.csv", "specimen;group;x_MPa", "A1;plain;1,234", "B1;coated;2,346");
        desk.refuses(COMPARE + " --value x_MPa", "'1,234'", "--decimal point or --decimal comma");
    }

    @Test
    void ratioOfAMeanThatIsNotAboveZero() {
        desk.refuses(
                COMPARE + " --value below_MPa", "mean of plain is −0.1 MPa", "means above zero");
    }

    @Test
    void groupThatIsNotThere() {
        desk.refuses(
                "compare @v.csv --value strength_MPa --group group --control plan",
                "no specimen of the control 'plan'",
                "coated, plain");
        desk.refuses(COMPARE + " --value strength_MPa --treated painted", "painted");
        desk.refuses(COMPARE + " --value strength_MPa --treated plain", "plain");
    }

    @Test
    void groupOfOneSpecimenIsOpen() {
        desk.file("v.csv", "specimen,group,x_MPa", "A1,plain,30", "A2,plain,31", "B1,coated,40");
        JsonNode one = desk.type(COMPARE + " --value x_MPa --expect higher --json")
                .json()
                .at("/comparisons/0");
        assertThat(one.get("verdict").asText()).isEqualTo("open");
        assertThat(one.at("/effect/estimate").asDouble()).isEqualTo(40 / 30.5);
        assertThat(one.at("/effect/low/reason").asText()).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "--effect nonsense | 'nonsense' is none of ratio, difference",
                "--expect sideways | 'sideways' is none of higher, lower, same",
                "--expect same | needs the smallest change that would matter",
                "--worth 5 | '5' may be per cent or a factor",
                "--worth three | 'three'",
                "--worth 3°C | '3°C' is in °C, not a share",
                "--seed x | 'x' is not a whole number",
                "--interval foo | 'foo' is none of fieller, welch, log, bca, permutation",
                "--by nosuch | there is no column 'nosuch'",
                "--block nosuch | there is no column 'nosuch'",
                "--unit nosuch | there is no column 'nosuch'",
                "--event nosuch --effect rate | there is no column 'nosuch'",
                "--resolution 1mm | '1mm': mm is a length",
                "--effect level --at 20MPa | needs the share of parts",
                "--effect level --at 20kN --of 90% | '20kN': kN is a force",
                "--effect level --at 20MPa --of 90 | '90' may be per cent or a factor",
                "--column x | 'x'",
                "--decimal semicolon | 'semicolon'",
                "--delimiter plus | 'plus'",
                "--encoding ebcdic | 'ebcdic'",
                "--bogus | Unknown option: '--bogus'",
            })
    void optionOfCompareThatMakesNoSense(String option, String says) {
        desk.refuses(COMPARE + " --value strength_MPa " + option, says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "calculate | name a method",
                "calculate tensil --specimens @v.csv | did you mean 'tensile'?",
                "calculate tensile | needs --specimens",
                "calculate tensile --specimens @v.csv --json --csv | can't both",
                "calculate tensile --specimens @v.csv --set width | 'width': write NAME=VALUE",
                "calculate tensile --specimens @v.csv --set wdith=3mm | wdith",
                "calculate tensile --specimens @v.csv --set width=3N | N is a force",
                "calculate tensile --specimens @v.csv --resolution froce=1N | froce",
                "compare @v.csv | --value",
                "study show nosuch --workspace @nowhere | there is no workspace folder",
                "report nosuch --workspace @nowhere --out @o | there is no workspace folder",
                "study import --workspace @nowhere | needs a FILE, a --package, or --name",
                "bogus | bogus",
            })
    void commandThatMakesNoSense(String line, String says) {
        desk.refuses(line, says);
    }

    @Test
    void curveOfOnePointIsTold() {
        JsonNode one = pulled(List.of("0,5"));
        assertThat(one.at("/values/strength_MPa/atLeast").asDouble()).isPositive();
        assertThat(one.at("/values/strength_MPa/reason").asText())
                .isEqualTo("a record of one or two rows proves no peak");
        assertThat(codes(one)).contains("peak-at-last-point");
    }

    @Test
    void curveWithoutRowsHasNoValueButAReason() {
        assertThat(pulled(List.of()).at("/values/strength_MPa/reason").asText()).isNotEmpty();
    }

    @Test
    void fallingTimeIsTold() {
        List<String> rows = ramp(60);
        rows.set(30, "1.5,300");
        assertThat(findings(rows)).contains("time-falls");
    }

    @Test
    void rowsWithoutANumberAreTold() {
        List<String> rows = ramp(60);
        rows.set(30, "30,NaN");
        assertThat(findings(rows)).contains("rows-without-number", "rows-unread");
    }

    @Test
    void gapIsTold() {
        List<String> rows = ramp(60);
        rows.subList(20, 45).clear();
        assertThat(findings(rows)).contains("gap-in-record");
    }

    @Test
    void gapBehindThePeakIsTold() {
        List<String> rows = ramp(60);
        rows.set(rows.size() - 1, "300,900");
        assertThat(findings(rows)).contains("gap-in-record");
    }

    @Test
    void saturatingSensorGivesABound() {
        List<String> rows = new ArrayList<>();
        for (int row = 0; row <= 100; row++) {
            rows.add("%d,%d".formatted(row, Math.min(20 * row, 1000)));
        }
        rows.add("101,3");
        JsonNode result = pulled(rows);
        assertThat(codes(result)).contains("saturated");
        assertThat(result.at("/values/strength_MPa/atLeast").asDouble()).isEqualTo(1000.0 / 40);
    }

    /** Steadily up to 10 N for each of so many rows, 1 s apart, then broken. */
    private static List<String> ramp(int rows) {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            all.add("%d,%d".formatted(row, 10 * row));
        }
        all.add(rows + ",1");
        return all;
    }

    private List<String> findings(List<String> rows) {
        JsonNode result = pulled(rows);
        assertThat(result.at("/values/strength_MPa/value").asDouble()).isPositive();
        return codes(result);
    }

    private JsonNode pulled(List<String> rows) {
        List<String> lines = new ArrayList<>(rows);
        lines.add(0, "time_s,force_N");
        desk.file("t.csv", CURVES, "A1,plain,10,4,c.csv");
        desk.file("c.csv", lines.toArray(String[]::new));
        return desk.type(PULL + " --json").json().at("/results/0");
    }

    private static List<String> codes(JsonNode result) {
        return StreamSupport.stream(result.get("findings").spliterator(), false)
                .map(it -> it.get("code").asText())
                .toList();
    }
}
