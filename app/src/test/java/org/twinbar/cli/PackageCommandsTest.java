package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.datapackage.Zips;

/** Data packages at the command line. */
class PackageCommandsTest {

    private static final String BARS = "specimen,group,area_mm2,peak_force_N\n"
            + "P1,plain,40,2000\nP2,plain,40,2040\nP3,plain,40,1960\n"
            + "C1,coated,40,2400\nC2,coated,40,2440\nC3,coated,40,2360\n";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder).file("bars.csv", BARS.split("\n"));
    }

    private void makeStudy() {
        desk.type("study import --workspace @w --name bars --method tensile --specimens @bars.csv"
                        + " --property strength --control plain --claimed 10%")
                .done();
    }

    private void export(String to) {
        assertThat(desk.type("study export bars --workspace @w --out @" + to).done())
                .isEqualToIgnoringNewLines(desk.path(to));
    }

    @Test
    void comesBackInAnotherWorkspaceWithTheSameVerdicts() {
        makeStudy();
        export("bars.zip");
        String shown = desk.type("study show bars --workspace @w").done();
        assertThat(desk.type("study import --package @bars.zip --workspace @other")
                        .done())
                .isEqualTo(shown)
                .contains("supported");
        assertThat(desk.type("study show bars --workspace @other").done()).isEqualTo(shown);
    }

    @Test
    void writesFolderThatIsReadToo() {
        makeStudy();
        export("bars");
        assertThat(desk.files()).contains("bars/datapackage.json", "bars/raw/bars.csv");
        desk.type("study check @bars").done();
        desk.refuses("study export bars --workspace @w --out @bars", "holds files already");
    }

    @Test
    void readsPackageFromStandardInput() throws IOException {
        makeStudy();
        export("bars.zip");
        desk.pipe(Files.readAllBytes(folder.resolve("bars.zip")));
        assertThat(desk.type("study check -").done()).contains("Nothing differs");
    }

    @Test
    void reportWritesThePackageThatItsDocumentCarries() throws IOException {
        makeStudy();
        desk.type("report bars --workspace @w --out @out --pdf --package").done();
        assertThat(desk.files()).contains("out/report.pdf", "out/package.zip");
        desk.type("study check @out/package.zip").done();
        try (PDDocument document =
                Loader.loadPDF(folder.resolve("out/report.pdf").toFile())) {
            assertThat(document.getDocumentCatalog()
                            .getNames()
                            .getEmbeddedFiles()
                            .getNames()
                            .get("package.zip")
                            .getEmbeddedFile()
                            .toByteArray())
                    .isEqualTo(Files.readAllBytes(folder.resolve("out/package.zip")));
        }
    }

    @Test
    void checkSaysThatNothingDiffers() {
        makeStudy();
        export("bars.zip");
        assertThat(desk.type("study check @bars.zip").done())
                .contains("The study 'bars'", "1 verdict", "Nothing differs");
        JsonNode json = desk.type("study check @bars.zip --json").json();
        assertThat(json.at("/same").asBoolean()).isTrue();
        assertThat(json.at("/compared/verdicts").asInt()).isEqualTo(1);
        assertThat(json.at("/differences")).isEmpty();
    }

    @Test
    void checkListsDifferencesAndEndsWithThree() throws IOException {
        makeStudy();
        export("bars.zip");
        Zips.altered(
                folder.resolve("bars.zip"),
                folder.resolve("bad.zip"),
                "data/verdicts.csv",
                text -> text.replace(",supported,", ",contradicted,"));
        Desk.Run run = desk.type("study check @bad.zip --json");
        assertThat(run.status()).isEqualTo(3);
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(json.at("/same").asBoolean()).isFalse();
        assertThat(json.at("/differences/1")).isEqualTo(new ObjectMapper().readTree("""
                        {"kind": "verdict", "where": "verdicts: 1, verdict",
                         "packaged": "contradicted", "now": "supported"}
                        """));
        assertThat(desk.type("study check @bad.zip").out())
                .contains("2 differences:", "digest", "contradicted");
    }

    @Test
    void refusesPackageWithAnotherDigestAndWritesNothing() {
        makeStudy();
        export("bars.zip");
        Zips.altered(
                folder.resolve("bars.zip"),
                folder.resolve("bad.zip"),
                "raw/bars.csv",
                text -> text.replace("2400", "2401"));
        desk.refuses(
                "study import --package @bad.zip --workspace @new",
                "raw/bars.csv has the SHA-256",
                "datapackage.json says");
        desk.refuses("study import --package @none.zip --workspace @new", "there is no package");
        desk.refuses(
                "study import --package @bars.zip --name other --workspace @new",
                "leave the other options out");
        desk.refuses("study export bars --workspace @w --out @x.zip --licence mine", "none of CC0");
    }

    @Test
    void takesPackageMadeByHandWithSpecimensAndCurves() {
        desk.file("pulled/datapackage.json", """
                {"name": "club-bars", "title": "Are they stronger?", "resources": [
                  {"name": "bars", "path": "bars.csv", "schema": {"fields": [{"name": "specimen"}]}},
                  {"name": "p1", "path": "curves/p1.csv"},
                  {"name": "c1", "path": "curves/c1.csv"}]}
                """);
        desk.file(
                "pulled/curves/p1.csv", "displacement_mm,force_N", "0,0", "1,900", "2,2000", "3,5");
        desk.file(
                "pulled/curves/c1.csv", "displacement_mm,force_N", "0,0", "1,900", "2,2400", "3,5");
        desk.file(
                "pulled/bars.csv",
                "specimen,group,area_mm2,curve_file",
                "P1,plain,40,curves/p1.csv",
                "C1,coated,40,curves/c1.csv");
        assertThat(desk.type("study import --package @pulled --method tensile --property strength"
                                + " --control plain --workspace @w")
                        .done())
                .contains("Are they stronger?", "open");
        assertThat(desk.type("study list --workspace @w").done()).contains("club-bars");
        desk.refuses("study import --package @pulled --workspace @w", "say its --method");
        desk.refuses("study check @pulled", "holds no verdicts of Twinbar");
        desk.refuses(
                "study import --package @pulled --method tensile --specimens bar --workspace @w",
                "no resource 'bar' among bars, p1, c1; did you mean 'bars'?");
    }

    @Test
    void asksWhichTableHoldsTheSpecimens() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(
                "datapackage.json",
                "{\"resources\": [{\"name\": \"one\", \"path\": \"a.csv\"},"
                        + " {\"name\": \"two\", \"path\": \"b.csv\"}]}");
        files.put("a.csv", BARS);
        files.put("b.csv", "x\n");
        Zips.of(folder.resolve("two.zip"), files);
        desk.refuses(
                "study import --package @two.zip --method tensile --workspace @w",
                "which resource holds the specimens? Name one of one, two");
        desk.type("study import --package @two.zip --method tensile --specimens one"
                        + " --name bars --workspace @w")
                .done();
    }

    @Test
    void showsThatWhatWasPublishedStillStands() {
        makeStudy();
        assertThat(desk.type("study show bars --workspace @w").done()).doesNotContain("Published");
        assertThat(desk.run(
                                "study",
                                "publish",
                                "bars",
                                "--workspace",
                                desk.path("w"),
                                "--who",
                                "Ada",
                                "--where",
                                "the club's page")
                        .done())
                .startsWith("Kept as published (the club's page):")
                .contains("supported");
        assertThat(desk.type("study show bars --workspace @w").done())
                .contains(
                        "Published on 1 March 2026 by Ada (the club's page); all of it still stands.");
        JsonNode json = desk.type("study show bars --workspace @w --json").json();
        assertThat(json.at("/published/0/who").asText()).isEqualTo("Ada");
        assertThat(json.at("/published/0/differs")).isEmpty();
        assertThat(json.at("/published/0/correction").isMissingNode()).isTrue();
    }
}
