package org.twinbar.study.calculation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.method.Yield;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;
import org.twinbar.uncertainty.Budget;
import org.twinbar.uncertainty.Source;

class CalculationTest {

    private static final Methods METHODS = Methods.builtIn();
    private static final String PEAKS = "specimen,group,run,width_mm,thickness_mm,peak_force_N\n";

    @TempDir
    Path outside;

    private Path folder;

    @BeforeEach
    void makeFolder() throws IOException {
        folder = Files.createDirectory(outside.resolve("pulled"));
    }

    @Test
    void calculatesEachSpecimenWithItsFactors() {
        Calculated calculated = peaks("A1,plain,R1,10,4,2000\nA2,coated,R2,10,4,2200\n");
        assertThat(calculated.specimens())
                .extracting(JudgedSpecimen::code)
                .containsExactly("A1", "A2");
        JudgedSpecimen second = calculated.specimens().get(1);
        assertThat(second.group()).isEqualTo("coated");
        assertThat(second.factors()).containsExactly(Map.entry("run", "R2"));
        assertThat(strength(second)).isEqualTo(55);
        assertThat(second.readings())
                .extracting(Reading::column)
                .containsExactly("width_mm", "thickness_mm", "peak_force_N");
    }

    /** Oven loads are read by the method, and are blocks of the comparison too. */
    @Test
    void wordsThatPartSpecimensAreFactors() {
        Calculated calculated = run(
                TestSheet.of("oven"),
                "specimen,group,oven_load,thermometer_in,held_until_C\n"
                        + "A1,plain,1,bar,60\nA2,coated,2,bar,60\n",
                Handed.nothing());
        assertThat(calculated.specimens().get(1).factors())
                .containsEntry("oven_load", "2")
                .containsEntry("thermometer_in", "bar");
        assertThat(codes(calculated.findings())).contains("group-is-block");
        Calculated mixed = run(
                TestSheet.of("oven"),
                "specimen,group,oven_load,thermometer_in,held_until_C\n"
                        + "A1,plain,1,bar,60\nA2,coated,1,air,60\n",
                Handed.nothing());
        assertThat(codes(mixed.findings()))
                .contains("mixed-specimens")
                .doesNotContain("group-is-block");
    }

    @Test
    void saysOnceThatNobodyNotedHowSpecimensWereConditioned() {
        assertThat(codes(
                        peaks("A1,plain,R1,10,4,2000\nA2,coated,R2,10,4,2200\n").findings()))
                .containsOnlyOnce("conditioning-unknown");
        Calculated noted = run("specimen,conditioned_h,area_mm2,peak_force_N\nA,96,40,2000\n");
        assertThat(codes(noted.findings())).doesNotContain("conditioning-unknown");
    }

    @Test
    void convertsUnitsOfTheHeader() {
        assertThat(strength(run("specimen,width_cm,thickness (µm),peak_force [kN]\nA,1,4000,2\n")
                        .specimens()
                        .get(0)))
                .isCloseTo(50, within(1e-12));
    }

    @Test
    void takesTheMeanOfRepeatedReadings() {
        JudgedSpecimen specimen = run("specimen,width_1_mm,width_2_mm,width_3_mm,thickness_mm,"
                        + "peak_force_N\nA,9,11,,4,2000\n")
                .specimens()
                .get(0);
        assertThat(strength(specimen)).isEqualTo(50);
    }

    @Test
    void takesTheUncertaintyOfOneReadingFromItsColumn() {
        String table = "specimen,area_mm2,area_u_mm2,peak_force_N\nA,40,%s,2000\n";
        assertThat(ownUncertainty(run(table.formatted("4"))))
                .isCloseTo((2000 / 36.0 - 2000 / 44.0) / 2, within(0.001));
        assertThat(ownUncertainty(run(table.formatted("0.004")))).isLessThan(0.05);
    }

    @Test
    void takesWhatWasSetForAll() {
        TestSheet sheet = TestSheet.of("tensile").withSet(Map.of("area", "0.4 cm2"));
        Calculated calculated =
                run(sheet, "specimen,peak_force_N\nA,2000\nB,1000\n", Handed.nothing());
        assertThat(calculated.specimens())
                .extracting(CalculationTest::strength)
                .containsExactly(50.0, 25.0);
    }

    @Test
    void assumesTheUsualInstrumentAndSaysSo() {
        assertThat(codes(peaks("A1,plain,R1,10,4,2000\n").findings()))
                .containsExactly(
                        "instrument-assumed", "instrument-assumed", "conditioning-unknown");
        TestSheet sheet = TestSheet.of("tensile")
                .withErrors(
                        Map.of("caliper", "0.02 mm", "load cell", "1 N"),
                        Map.of("load cell", "1%"),
                        Map.of());
        Calculated given = run(sheet, PEAKS + "A1,plain,R1,10,4,2000\n", Handed.nothing());
        assertThat(codes(given.findings())).containsExactly("conditioning-unknown");
        Budget budget = budget(given.specimens().get(0));
        assertThat(budget.shifts().entrySet())
                .filteredOn(it -> it.getKey().identity().equals("load cell gain"))
                .singleElement()
                .satisfies(it -> assertThat(it.getValue()).isCloseTo(0.5, within(1e-9)));
    }

    @Test
    void asksOnceAboutWhatIsImplausible() {
        Calculated calculated = peaks("A1,plain,R1,1000,4,2000\n");
        assertThat(codes(calculated.specimens().get(0).result().findings()))
                .contains("implausible");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "specimen,width_mm,thickness_mm|peak_force_N",
                "specimen,width_mm,thicknes_mm,peak_force_N|is 'thicknes_mm' meant to be 'thickness_mm'?",
                "specimens,width_mm,thickness_mm,peak_force_N|did you mean 'specimens'?",
                "specimen,width_mm,width_cm,thickness_mm,peak_force_N|keep one",
                "specimen,run,run,width_mm,thickness_mm,peak_force_N|keep one",
                "specimen,width_N,thickness_mm,peak_force_N|column width_N: N is",
            })
    void refusesColumns(String header, String words) {
        String row = "A" + ",7".repeat(header.split(",", -1).length - 1) + "\n";
        assertThatThrownBy(() -> run(header + "\n" + row))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("bars.csv")
                .hasMessageContaining(words);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "A1,plain,R1,ten,4,2000|line 2, column width_mm: 'ten' is not a number",
                "A1,plain,R1,10,-4,2000|line 2, column thickness_mm: thickness of A1 is -4, must be above 0",
                "A1,plain,R1,10,0,2000|thickness of A1 is 0, must be above 0",
                ",plain,R1,10,4,2000|line 2, column specimen: this row has no specimen code",
            })
    void refusesCells(String row, String words) {
        assertThatThrownBy(() -> peaks(row + "\n"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("bars.csv")
                .hasMessageContaining(words);
    }

    @Test
    void refusesSpecimenTwice() {
        assertThatThrownBy(() -> peaks("A1,plain,R1,10,4,2000\nA1,coated,R1,10,4,2000\n"))
                .hasMessageContaining("line 3")
                .hasMessageContaining("line 2 already");
    }

    @Test
    void refusesTableWithoutRows() {
        assertThatThrownBy(() -> run(PEAKS)).hasMessageContaining("no row below the header");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gauge_lenght|25mm|did you mean 'gauge_length'?",
                "gauge_length|25 N|gauge_length: N is",
                "gauge_length|-1 mm|must be above 0",
                "modulus_by|guess|must be one of regression, chord",
                "broke_at|moon|must be one of gauge, shoulder, grip",
            })
    void refusesSettings(String name, String value, String words) {
        TestSheet sheet = TestSheet.of("tensile").withSet(Map.of(name, value));
        assertThatThrownBy(() -> run(sheet, PEAKS + "A1,p,R,10,4,2000\n", Handed.nothing()))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(words);
    }

    @Test
    void refusesErrorsOfWhatIsNotRead() {
        TestSheet sheet = TestSheet.of("tensile")
                .withErrors(Map.of("calliper", "0.01 mm"), Map.of(), Map.of());
        assertThatThrownBy(() -> run(sheet, PEAKS + "A1,p,R,10,4,2000\n", Handed.nothing()))
                .hasMessageContaining("did you mean 'caliper'?");
        TestSheet negative = TestSheet.of("tensile")
                .withErrors(Map.of("caliper", "-0.01 mm"), Map.of(), Map.of());
        assertThatThrownBy(() -> run(negative, PEAKS + "A1,p,R,10,4,2000\n", Handed.nothing()))
                .hasMessageContaining("zero or more");
    }

    @Test
    void refusesMethodThatIsNotThere() {
        assertThatThrownBy(() -> Calculation.of(METHODS, TestSheet.of("tensil")))
                .hasMessageContaining("did you mean 'tensile'?");
    }

    @Test
    void readsCurvesOfAFolder() throws IOException {
        curve("a.csv", "time_s,force_N\n0,0\n1,900\n2,1000\n3,20\n4,0\n");
        Calculated calculated = curves("A,40,a.csv\n");
        JudgedSpecimen specimen = calculated.specimens().get(0);
        assertThat(strength(specimen)).isEqualTo(25);
        assertThat(specimen.curve()).hasValueSatisfying(curve -> {
            assertThat(curve.y()).containsExactly(0, 900, 1000, 20, 0);
            assertThat(curve.rowsRead()).isEqualTo(5);
        });
        assertThat(specimen.result().yields().entrySet())
                .filteredOn(it -> it.getKey().name().equals("modulus"))
                .singleElement()
                .satisfies(it -> assertThat(it.getValue()).isInstanceOf(Yield.Missing.class));
    }

    @Test
    void refusesCurveThatIsNotThere() {
        assertThatThrownBy(() -> curves("A,40,gone.csv\n"))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("bars.csv, line 2, column curve_file")
                .hasMessageContaining("gone.csv");
    }

    @Test
    void refusesCurveNamedTwice() throws IOException {
        curve("a.csv", "time_s,force_N\n0,0\n1,900\n");
        assertThatThrownBy(() -> curves("A,40,a.csv\nB,40,a.csv\n"))
                .hasMessageContaining("line 3")
                .hasMessageContaining("'a.csv' is named in line 2 already");
    }

    @ParameterizedTest
    @CsvSource({"../secret.csv", "/etc/passwd", "sub/../../secret.csv"})
    void refusesPathThatLeadsOutOfTheFolder(String name) throws IOException {
        Files.createDirectories(folder.resolve("sub"));
        Files.writeString(outside.resolve("secret.csv"), "time_s,force_N\n0,0\n");
        assertThatThrownBy(() -> curves("A,40," + name + "\n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("leads out of the folder");
    }

    @Test
    void refusesLinkThatLeadsOutOfTheFolder() throws IOException {
        Path secret = Files.writeString(outside.resolve("secret.csv"), "time_s,force_N\n");
        Files.createSymbolicLink(folder.resolve("link.csv"), secret);
        assertThatThrownBy(() -> curves("A,40,link.csv\n"))
                .hasMessageContaining("leads out of the folder");
    }

    @Test
    void refusesCurveWithoutAnyColumnOfTheMethod() throws IOException {
        curve("a.csv", "x,y\n0,0\n1,900\n");
        assertThatThrownBy(() -> curves("A,40,a.csv\n"))
                .hasMessageContaining("a.csv")
                .hasMessageContaining("force_N");
    }

    @Test
    void findsWhatIsWrongWithACurveAndGivesAValueStill() throws IOException {
        curve("a.csv", "time_s,force_N\n0,0\n1,900\n2,broken\n3,1000\n2.5,20\n4,0\n");
        JudgedSpecimen specimen = curves("A,40,a.csv\n").specimens().get(0);
        assertThat(strength(specimen)).isEqualTo(25);
        assertThat(codes(specimen.result().findings())).contains("rows-unread", "time-falls");
    }

    @Test
    void givesTheSameWhateverTheNumberOfThreads() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < 40; i++) {
            curve("c" + i + ".csv", "time_s,force_N\n0,0\n1,%s\n2,0\n".formatted(900 + i));
            rows.append("S").append(i).append(",40,c").append(i).append(".csv\n");
        }
        List<Integer> heard = new ArrayList<>();
        Calculated calculated = Calculation.of(METHODS, TestSheet.of("tensile"))
                .with(Handed.in(folder))
                .with((Progress) (done, of) -> heard.add(done * 100 + of))
                .run(
                        TableFile.read(upload("specimen,area_mm2,curve_file\n" + rows)),
                        upload(rows.toString()).described());
        for (int i = 0; i < 40; i++) {
            assertThat(strength(calculated.specimens().get(i))).isEqualTo((900 + i) / 40.0);
        }
        assertThat(heard).hasSize(40).isSorted().last().isEqualTo(4040);
    }

    private Calculated curves(String rows) {
        return run(
                TestSheet.of("tensile"),
                "specimen,area_mm2,curve_file\n" + rows,
                Handed.in(folder));
    }

    private void curve(String name, String text) throws IOException {
        Files.writeString(folder.resolve(name), text);
    }

    private static Calculated peaks(String rows) {
        return run(PEAKS + rows);
    }

    private static Calculated run(String table) {
        return run(TestSheet.of("tensile"), table, Handed.nothing());
    }

    private static Calculated run(TestSheet sheet, String table, Handed curves) {
        return Calculation.of(METHODS, sheet)
                .with(curves)
                .run(TableFile.read(upload(table)), upload(table).described());
    }

    private static Upload upload(String table) {
        return Upload.of("bars.csv", table.getBytes(UTF_8));
    }

    private static double ownUncertainty(Calculated calculated) {
        return budget(calculated.specimens().get(0)).u(Source.Reach.OWN);
    }

    private static Budget budget(JudgedSpecimen specimen) {
        Result result = specimen.result();
        return result.budgets().get(property(result));
    }

    private static double strength(JudgedSpecimen specimen) {
        Result result = specimen.result();
        Yield yield = result.yields().get(property(result));
        assertThat(yield).isInstanceOf(Yield.Value.class);
        return ((Yield.Value) yield).value();
    }

    private static Property property(Result result) {
        return result.yields().keySet().iterator().next();
    }

    private static List<String> codes(List<Finding> findings) {
        return findings.stream().map(Finding::code).toList();
    }
}
