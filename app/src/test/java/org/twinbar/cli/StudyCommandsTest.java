package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Studies from the command line: made, listed, shown, reported; and what ends a command early. */
class StudyCommandsTest {

    private static final String IMPORT = "study import --workspace @club --name bars"
            + " --method tensile --specimens @bars.csv --claim stronger --property peak_force"
            + " --control plain --expect higher --claimed 10%";

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void lay() {
        desk = new Desk(folder)
                .file(
                        "bars.csv",
                        "specimen,group,area_mm2,peak_force_N",
                        "P1,plain,40,2000",
                        "P2,plain,40,2040",
                        "P3,plain,40,1960",
                        "C1,coated,40,2500",
                        "C2,coated,40,2540",
                        "C3,coated,40,2460");
    }

    @Test
    void makesListsAndShowsStudies() {
        assertThat(desk.type("study new --workspace @club --name empty").done())
                .isEqualTo("empty\n");
        assertThat(desk.type(IMPORT).done()).contains("bars", "supported", "higher in coated");
        JsonNode studies =
                desk.type("study list --workspace @club --json").json().path("studies");
        assertThat(studies.findValuesAsText("name")).containsExactly("empty", "bars");
        assertThat(desk.type("study show bars --workspace @club").done())
                .contains("stronger", "supported");
        JsonNode answer = desk.type("study show bars --workspace @club --json")
                .json()
                .at("/claims/0/answers/0");
        assertThat(answer.path("verdict").asText()).isEqualTo("supported");
        assertThat(answer.at("/effect/estimate").asDouble()).isCloseTo(1.25, within(1e-9));
    }

    @Test
    void writesEveryFormOfAReportOrTheOneAskedFor() throws IOException {
        desk.type(IMPORT).done();
        assertThat(desk.type("report bars --workspace @club --out @all").status())
                .isZero();
        assertThat(Files.readString(folder.resolve("all/report.html")).contains("higher in coated"))
                .isTrue();
        assertThat(Files.readAllBytes(folder.resolve("all/report.pdf")))
                .startsWith('%', 'P', 'D', 'F');
        assertThat(folder.resolve("all/kit/verdict-1-16x9-dark.png")).exists();
        desk.file("theme.toml", "[light]", "treated = \"#5b2a86\"");
        assertThat(desk.type("report bars --workspace @club --out @other --kit --theme @theme.toml")
                        .status())
                .isZero();
        assertThat(Files.readString(folder.resolve("other/kit/verdict-1-1x1-light.svg"))
                        .contains("#5b2a86"))
                .isTrue();
        desk.file("pale.toml", "[light]", "treated = \"#eeeeee\"");
        desk.refuses(
                "report bars --workspace @club --out @no --kit --theme @pale.toml",
                "pale.toml",
                "treated on paper has a contrast of");
        desk.type("report bars --workspace @club --out @page --html").done();
        assertThat(folder.resolve("page")).isDirectoryNotContaining("glob:**.pdf");
        desk.refuses("report barz --workspace @club --out @no", "no study 'barz'", "bars");
        desk.refuses("report bars --workspace @nowhere --out @no", "nowhere");
    }

    @Test
    void jsonOfTheDemoTellsEachKindOfAnswer() {
        desk.type("demo --no-serve --workspace @w --out @d");
        String demo = desk.type("study list --workspace @w --json")
                .json()
                .at("/studies/0/name")
                .asText();
        JsonNode claims = desk.run("study", "show", demo, "--workspace", desk.path("w"), "--json")
                .json()
                .path("claims");
        assertThat(claims.findValuesAsText("verdict"))
                .contains("supported", "too small", "open", "not for this bench");
        assertThat(claims.findValue("decidedBy").asText()).contains("laboratory");
    }

    @Test
    void demoPrintsItsVerdictsAndWritesItsReport() {
        Desk.Run run = desk.type("demo --no-serve --workspace @w --out @d");
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("invented data", "supported", "too small", "not for this bench");
        assertThat(run.err()).contains("Report: ");
        assertThat(folder.resolve("d/report.html")).exists();
    }

    @Test
    void refusesStudyThatIsThereAlreadyOrCannotBe() {
        desk.type(IMPORT).done();
        desk.refuses(IMPORT, "there is a study 'bars'");
        desk.refuses(
                IMPORT.replace("bars --method", "more --method").replace("tensile", "tensil"),
                "no method 'tensil'",
                "tensile");
        desk.refuses(
                IMPORT.replace("bars --method", "more --method").replace("plain", "bare"), "bare");
    }

    @Test
    void hugeFilesAreRefusedWithoutBeingHeld() throws IOException {
        try (RandomAccessFile huge =
                new RandomAccessFile(folder.resolve("huge.csv").toFile(), "rw")) {
            huge.setLength(3L << 30);
        }
        desk.file("curves.csv", "specimen,group,area_mm2,curve_file", "A,plain,40,huge.csv");
        desk.refuses("calculate tensile --specimens @huge.csv", "huge.csv");
        desk.refuses("calculate tensile --specimens @curves.csv", "huge.csv", "not a text file");
        desk.refuses(
                "compare @huge.csv --value x --group g --control c --expect higher", "huge.csv");
    }

    @Test
    void ownFailureEndsWithStatusOne() {
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(new byte[0]),
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                Terminal.Kind.PROGRAM);
        Door closed = (workspace, port) -> {
            throw new IllegalStateException("nothing is served here");
        };
        Cli cli = new Cli(
                terminal,
                () -> {
                    throw new IllegalStateException("the wires are crossed");
                },
                Clock.systemUTC(),
                closed);
        assertThat(cli.run("calculate", "--methods")).isEqualTo(Cli.OWN_FAILURE);
        assertThat(err.toString()).contains("twinbar failed", "the wires are crossed");
    }
}
