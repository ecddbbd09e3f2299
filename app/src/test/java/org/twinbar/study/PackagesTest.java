package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.Licence;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.exchange.datapackage.Zips;
import org.twinbar.method.Methods;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Making;
import org.twinbar.study.judged.Photo;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

class PackagesTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final JsonMapper JSON = new JsonMapper();

    private static final String HOOKS = """
            study = "hooks"
            [[test]]
            method = "hook-load"
            specimens = "specimens.csv"
            [[claim]]
            words = "stronger hooks"
            [[claim.question]]
            method = "hook-load"
            property = "load"
            control = "plain"
            """;

    @TempDir
    static Path demoFolder;

    private static JudgedStudy demo;

    @TempDir
    Path folder;

    @BeforeAll
    static void packDemo() {
        try (Workspace workspace = demoWorkspace()) {
            StudyName study = Demo.into(workspace);
            demo = workspace.judge(study, Progress.SILENT);
            workspace.packages().write(study, demo, Optional.empty(), demoZip());
        }
    }

    private static Workspace demoWorkspace() {
        return Workspace.open(demoFolder.resolve("demo"), Methods.builtIn(), NOON, "Twinbar test");
    }

    private static Path demoZip() {
        return demoFolder.resolve("demo.zip");
    }

    @Test
    void followsThePublishedSchema() throws IOException {
        JsonNode descriptor = JSON.readTree(Zips.files(demoZip()).get("datapackage.json"));
        assertThat(schema("data-package").validate(descriptor)).isEmpty();
        JsonSchema table = schema("tabular-data-resource");
        JsonSchema file = schema("data-resource");
        int tables = 0;
        for (JsonNode resource : descriptor.path("resources")) {
            boolean tabular = resource.path("profile").asText().equals("tabular-data-resource");
            assertThat((tabular ? table : file).validate(resource))
                    .as(resource.path("name").asText())
                    .isEmpty();
            tables += tabular ? 1 : 0;
        }
        assertThat(tables).isEqualTo(21);
    }

    @Test
    void schemaRefusesWhatIsNoPackage() throws IOException {
        JsonNode without = JSON.readTree("{\"name\": \"x\", \"resources\": []}");
        assertThat(schema("data-package").validate(without)).isNotEmpty();
    }

    private static JsonSchema schema(String name) throws IOException {
        try (InputStream in = PackagesTest.class.getResourceAsStream(
                "/org/twinbar/exchange/datapackage/" + name + ".json")) {
            return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V4).getSchema(in);
        }
    }

    @Test
    void holdsEveryKeyThatTablesReferTo() {
        try (OpenPackage open = OpenPackage.of(demoZip())) {
            JsonNode resources = open.own("resources");
            for (JsonNode resource : resources) {
                for (JsonNode key : resource.path("schema").path("foreignKeys")) {
                    String mine = resource.path("name").asText();
                    String theirs = key.path("reference").path("resource").asText();
                    Set<List<String>> known = cells(
                            open,
                            theirs.isEmpty() ? mine : theirs,
                            key.path("reference").path("fields"));
                    assertThat(cells(open, mine, key.path("fields")))
                            .as("%s to %s", mine, theirs)
                            .allMatch(it -> it.contains("") || known.contains(it));
                }
            }
        }
    }

    private static Set<List<String>> cells(OpenPackage open, String name, JsonNode fields) {
        var resource = open.resource(name).orElseThrow();
        Set<List<String>> cells = new HashSet<>();
        for (List<String> row : open.rows(resource)) {
            List<String> some = new java.util.ArrayList<>();
            fields.forEach(it -> some.add(row.get(resource.columns().indexOf(it.asText()))));
            cells.add(some);
        }
        return cells;
    }

    @Test
    void isTheSameToTheByteWhereverItIsWritten() throws IOException {
        byte[] there = elsewhere(() -> {
            try (Workspace workspace = demoWorkspace()) {
                StudyName study = workspace.study(Demo.NAME);
                return workspace.packages().zip(study, demo, Optional.empty());
            }
        });
        assertThat(there).isEqualTo(Files.readAllBytes(demoZip()));
    }

    @Test
    void keepsRawFilesByteForByte() {
        Map<String, byte[]> files = Zips.files(demoZip());
        try (Workspace workspace = demoWorkspace()) {
            assertThat(demo.files())
                    .hasSizeGreaterThan(40)
                    .allSatisfy(file -> assertThat(files.get("raw/" + file.name()))
                            .isEqualTo(workspace.bytes(file)));
        }
    }

    @Test
    void saysThatInventedDataAreInvented() {
        String readme = new String(Zips.files(demoZip()).get("README.md"), UTF_8);
        assertThat(readme)
                .contains("**The data in this package are invented.**")
                .contains("Nobody said under which licence")
                .contains("certifies nothing");
    }

    @Test
    void namesItsLicence() throws IOException {
        Path zip = folder.resolve("free.zip");
        try (Workspace workspace = workspace("bars")) {
            StudyName study = bars(workspace);
            JudgedStudy judged = workspace.judge(study, Progress.SILENT);
            workspace.packages().write(study, judged, Optional.of(Licence.of("cc-by-4.0")), zip);
        }
        JsonNode descriptor = JSON.readTree(Zips.files(zip).get("datapackage.json"));
        assertThat(descriptor.at("/licenses/0/name").asText()).isEqualTo("CC-BY-4.0");
        assertThat(schema("data-package").validate(descriptor)).isEmpty();
        assertThatThrownBy(() -> Licence.of("CC-BY-4"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("did you mean 'CC-BY-4.0'");
    }

    @Test
    void judgesTheSameElsewhere() throws IOException {
        JudgedStudy brought = elsewhere(() -> {
            try (Workspace empty = workspace("empty");
                    OpenPackage open = OpenPackage.of(demoZip())) {
                return empty.packages().bring(PackagedStudy.verified(open));
            }
        });
        assertThat(brought).usingRecursiveComparison().isEqualTo(demo);
        Recheck recheck = elsewhere(() -> check(demoZip()));
        assertThat(recheck.differences()).isEmpty();
        assertThat(recheck.counted().files()).isGreaterThan(60);
        assertThat(recheck.counted().values()).isGreaterThan(1000);
        assertThat(recheck.counted().verdicts()).isGreaterThan(5);
    }

    @Test
    void bringsCorrectionsAndLeftOutSpecimensWithWhoWhenAndWhy() {
        Path zip = folder.resolve("bars.zip");
        JudgedStudy before;
        try (Workspace workspace = workspace("bars")) {
            StudyName study = bars(workspace);
            workspace.leaveOut(
                    Act.by("Ada"),
                    study,
                    "tensile",
                    "C4",
                    LeftOut.Sight.AFTER_VALUE_WAS_SEEN,
                    "it slipped, \"twice\",\nsays Ada");
            workspace.correct(
                    Act.by("Ben"), study, "tensile", "C3", "peak_force_N", "2370", "misread");
            before = workspace.judge(study, Progress.SILENT);
            workspace.packages().write(study, before, Optional.empty(), zip);
        }
        JudgedStudy after;
        try (Workspace other = workspace("other")) {
            after = bring(other, zip);
            assertThat(other.judge(other.study("bars"), Progress.SILENT).history())
                    .isEqualTo(after.history());
            assertThat(bring(other, zip)).as("once more").isEqualTo(after);
            assertThat(other.studies()).hasSize(1);
        }
        assertThat(after.history()).isEqualTo(before.history()).hasSize(2);
        assertThat(after.history().get(0).who()).isEqualTo("Ada");
        assertThat(after.history().get(0).when().getZone()).isEqualTo(NOON.getZone());
    }

    @Test
    void bringsEntriesThatAreNewAndNoneThatContradict() {
        Path first = folder.resolve("first.zip");
        Path second = folder.resolve("second.zip");
        try (Workspace workspace = workspace("bars");
                Workspace other = workspace("other")) {
            StudyName study = bars(workspace);
            write(workspace, study, first);
            bring(other, first);
            correct(workspace, study, "2370");
            write(workspace, study, second);
            assertThat(bring(other, second).history()).hasSize(1);
            assertThat(bring(other, first).history()).as("an older one").hasSize(0);
            assertThat(other.judge(study, Progress.SILENT).history()).hasSize(1);
        }
        try (Workspace third = workspace("third")) {
            bring(third, first);
            correct(third, third.study("bars"), "2390");
            assertThatThrownBy(() -> bring(third, second))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("since then other things were entered here");
        }
    }

    @Test
    void refusesNameThatIsTaken() {
        Path zip = folder.resolve("bars.zip");
        try (Workspace workspace = workspace("bars");
                Workspace other = workspace("other")) {
            write(workspace, bars(workspace), zip);
            other.create(
                    Act.by("the club"),
                    new StudyFile.Head("bars", "Others?", "", JudgedStudy.Origin.MEASURED));
            assertThatThrownBy(() -> bring(other, zip))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("there is a study 'bars' in")
                    .hasMessageContaining("another workspace");
        }
    }

    @Test
    void carriesMethodsOfOnesOwn() throws IOException {
        Path example = Path.of(System.getProperty("basedir", ""))
                .toAbsolutePath()
                .resolveSibling("docs/examples/own-method");
        Path mine = Files.createDirectories(folder.resolve("own/methods")).resolve("hook.toml");
        Files.copy(example.resolve("hook.toml"), mine);
        Path zip = folder.resolve("own.zip");
        JudgedStudy here;
        try (Workspace workspace = workspace("own")) {
            StudyName study = workspace.importStudy(
                    Act.by("the club"), StudyFile.parse("hooks.toml", HOOKS), Handed.in(example));
            write(workspace, study, zip);
            here = workspace.judge(study, Progress.SILENT);
        }
        assertThat(check(zip).same()).isTrue();
        try (Workspace empty = workspace("empty")) {
            assertThat(bring(empty, zip)).usingRecursiveComparison().isEqualTo(here);
        }
        try (Workspace again = workspace("empty")) {
            assertThat(again.judge(again.study("hooks"), Progress.SILENT).claims())
                    .usingRecursiveComparison()
                    .isEqualTo(here.claims());
        }
        Files.createDirectories(folder.resolve("others/methods"));
        Files.writeString(
                folder.resolve("others/methods/other.toml"),
                Files.readString(mine).replace("version = 1", "version = 2"));
        try (Workspace other = workspace("others")) {
            assertThatThrownBy(() -> bring(other, zip))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("another one of that name is here already");
        }
    }

    @Test
    void carriesInstrumentsWithTheirCalibrations() {
        Path zip = folder.resolve("bars.zip");
        JudgedStudy here;
        try (Workspace workspace = workspace("bars")) {
            KeptInstrument cell = workspace
                    .instruments()
                    .add(
                            Act.by("Ada"),
                            new InstrumentSheet("Cell A", "load cell", "N", "0.1", "", "", ""));
            workspace
                    .instruments()
                    .calibrate(
                            Act.by("Ada"),
                            cell,
                            new CalibrationSheet(LocalDate.of(2026, 4, 2), "weights", "0.1%"),
                            Upload.of(
                                    "weights.csv",
                                    "reference_N,reading_N\n0,0.1\n500,502\n1000,1003\n1500,1506\n"
                                            .concat("2000,2007\n2500,2508\n")
                                            .getBytes(UTF_8)));
            StudyName study = WorkspaceTest.importBars(
                    workspace,
                    text -> text.replace(
                            "things = \"bars\"",
                            "things = \"bars\"\ninstrument = { \"load cell\" = \"Cell A\" }"));
            write(workspace, study, zip);
            here = workspace.judge(study, Progress.SILENT);
        }
        assertThat(check(zip).differences()).isEmpty();
        assertThat(Zips.files(zip)).containsKey("raw/weights.csv");
        try (Workspace empty = workspace("empty")) {
            assertThat(bring(empty, zip)).usingRecursiveComparison().isEqualTo(here);
            assertThat(empty.judge(empty.study("bars"), Progress.SILENT))
                    .usingRecursiveComparison()
                    .isEqualTo(here);
            assertThat(empty.instruments().get("Cell A").calibrations()).hasSize(1);
        }
        try (Workspace other = workspace("others")) {
            other.instruments()
                    .add(
                            Act.by("Ben"),
                            new InstrumentSheet("Cell A", "load cell", "N", "1", "", "", ""));
            assertThatThrownBy(() -> bring(other, zip))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining("there is another instrument 'Cell A'");
            assertThat(other.studies()).isEmpty();
        }
    }

    @Test
    void carriesPhotosOfTheRegister() {
        Path zip = folder.resolve("registered.zip");
        byte[] jpeg = {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0, '\r', '\n', 7};
        try (Workspace workspace = workspace("planned");
                Workspace empty = workspace("empty")) {
            StudyName study = workspace.importStudy(
                    Act.by("Ada"), StudyFile.parse("c.toml", PlansTest.STUDY), Handed.nothing());
            String code = workspace.plans().of(study).specimens().get(0).code();
            Upload photo = Upload.of("seam.jpg", jpeg);
            workspace
                    .register()
                    .photo(Act.by("Ada"), study, code, photo, Optional.empty(), "the seam");
            write(workspace, study, zip);
            assertThat(Zips.files(zip).get("raw/seam.jpg")).isEqualTo(jpeg);
            bring(empty, zip);
            StudyName brought = empty.study("cleats");
            List<Photo> photos =
                    empty.plans().of(brought).specimen(code).orElseThrow().photos();
            assertThat(photos)
                    .isEqualTo(workspace
                            .plans()
                            .of(study)
                            .specimen(code)
                            .orElseThrow()
                            .photos())
                    .singleElement()
                    .satisfies(it -> assertThat(empty.bytes(it.file())).isEqualTo(jpeg));
        }
    }

    @Test
    void carriesThePlanAsItWasSealed() throws IOException {
        Path zip = folder.resolve("plan.zip");
        Making here;
        try (Workspace workspace = workspace("plan")) {
            StudyName study = workspace.importStudy(
                    Act.by("Ada"), StudyFile.parse("c.toml", PlansTest.STUDY), Handed.nothing());
            workspace.plans().seal(Act.by("Ada"), study);
            write(workspace, study, zip);
            here = workspace.judge(study, Progress.SILENT).making();
        }
        assertThat(check(zip).differences()).isEmpty();
        try (Workspace empty = workspace("empty")) {
            assertThat(bring(empty, zip).making()).usingRecursiveComparison().isEqualTo(here);
        }
        JsonNode descriptor = JSON.readTree(Zips.files(zip).get("datapackage.json"));
        assertThat(descriptor.at("/twinbar/sealedPlan/sha256").asText())
                .isEqualTo(here.seal().orElseThrow().sha256());
        assertThat(new String(Zips.files(zip).get("data/planned.csv"), UTF_8).lines())
                .hasSize(7);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "raw/bars.csv | 2400 | 2800 | raw/bars.csv has the SHA-256",
                "data/entries.csv | bars.csv | cars.csv | data/entries.csv has the SHA-256",
                "data/results.csv | tensile | impact | data/results.csv has",
            })
    void refusesDigestThatIsAnother(String file, String from, String to, String says) {
        Path bad = tampered(file, from, to);
        refusesToBring(bad, says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                "\"format\" : 1 | \"format\" : 2 | is written in format 2, this version reads 1",
                "\"name\" : \"entries\" | \"name\" : \"things\" | the resource 'entries' is missing",
                "\"name\" : \"supersedes\" | \"name\" : \"follows\" | its columns are id, subject",
                "\"path\" : \"raw/bars.csv\" | \"path\" : \"raw/../../bars.csv\" | leads out of the package",
            })
    void refusesDescriptorThatIsAnother(String from, String to, String says) {
        refusesToBring(tampered("datapackage.json", from, to), says);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '§',
            value = {
                ",claim, | ,oracle, | which this version does not know",
                "Europe/Rome | Europe/Atlantis | entry 1 is damaged",
                ",the club, | ,, | entry 1 is damaged",
                "2026-05-04T10 | 2026-15-04T10 | entry 1 is damaged",
                ",test,\"{ | ,test,\"{{ | is damaged",
                "\"\"method\"\":\"\"tensile\"\",\"\"things\"\" | \"\"method\"\":\"\"oracle\"\",\"\"things\"\" | oracle",
                "\"\"sha256\"\":\"\" | \"\"sha257\"\":\"\" | damaged",
            })
    void refusesEntryThatIsNone(String from, String to, String says) {
        Path bad = tampered("data/entries.csv", from, to);
        Path honest = folder.resolve("honest.zip");
        // Whoever changes entries may change their digest too.
        Zips.altered(
                bad,
                honest,
                "datapackage.json",
                text -> text.replaceAll(
                        "(?s)(\"name\" : \"entries\".*?)\"bytes\" : \\d+,\\s*\"hash\" : \"[^\"]*\",",
                        "$1"));
        refusesToBring(honest, says);
    }

    private void refusesToBring(Path bad, String says) {
        try (Workspace empty = workspace("empty")) {
            assertThatThrownBy(() -> bring(empty, bad))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining(says)
                    .message()
                    .doesNotContain("\n", "Exception", "null");
            assertThat(empty.studies()).isEmpty();
        }
        assertThat(folder.resolve("empty/files/incoming")).isEmptyDirectory();
        assertThat(folder.resolve("empty/files").toFile().list()).containsExactly("incoming");
    }

    @Test
    void recheckListsEveryDifference() {
        Path bad = tampered("data/results.csv", ",50,", ",50.00000001,");
        Recheck recheck = check(bad);
        assertThat(recheck.same()).isFalse();
        assertThat(recheck.differences())
                .extracting(it -> it.kind().word(), Recheck.Difference::where)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("digest", "data/results.csv"),
                        org.assertj.core.groups.Tuple.tuple(
                                "value", "results: tensile, P1, strength, value"));
    }

    @Test
    void recheckGoesOnWithRawFileThatIsAnother() {
        Recheck recheck = check(tampered("raw/bars.csv", "2400", "2900"));
        assertThat(recheck.differences())
                .extracting(it -> it.kind().word())
                .contains("digest", "value", "text");
    }

    @Test
    void recheckListsVerdictThatIsAnother() {
        Recheck recheck = check(tampered("data/verdicts.csv", ",open,", ",supported,"));
        assertThat(recheck.differences())
                .filteredOn(it -> it.kind() == Recheck.Kind.VERDICT)
                .containsExactly(new Recheck.Difference(
                        Recheck.Kind.VERDICT, "verdicts: 1, verdict", "supported", "open"));
    }

    @Test
    void otherVersionIsNoDifferenceByItself() {
        Path zip = folder.resolve("bars.zip");
        try (Workspace workspace = workspace("bars")) {
            write(workspace, bars(workspace), zip);
        }
        try (OpenPackage open = OpenPackage.of(zip)) {
            Recheck recheck = Recheck.of(open, Methods.builtIn(), "Twinbar later");
            assertThat(recheck.same()).isTrue();
            assertThat(recheck.differences())
                    .containsExactly(new Recheck.Difference(
                            Recheck.Kind.VERSION, "program", "Twinbar test", "Twinbar later"));
        }
    }

    private Path tampered(String file, String from, String to) {
        Path good = folder.resolve("good.zip");
        try (Workspace workspace = workspace("bars")) {
            write(workspace, bars(workspace), good);
        }
        return Zips.altered(good, folder.resolve("bad.zip"), file, text -> text.replace(from, to));
    }

    private Recheck check(Path zip) {
        try (OpenPackage open = OpenPackage.of(zip)) {
            return Recheck.of(open, Methods.builtIn(), "Twinbar test");
        }
    }

    private JudgedStudy bring(Workspace workspace, Path zip) {
        try (OpenPackage open = OpenPackage.of(zip)) {
            return workspace.packages().bring(PackagedStudy.verified(open));
        }
    }

    private void write(Workspace workspace, StudyName study, Path zip) {
        workspace
                .packages()
                .write(study, workspace.judge(study, Progress.SILENT), Optional.empty(), zip);
    }

    private static void correct(Workspace workspace, StudyName study, String to) {
        workspace.correct(Act.by("Ben"), study, "tensile", "C3", "peak_force_N", to, "misread");
    }

    private static StudyName bars(Workspace workspace) {
        return workspace.find("bars").orElseGet(() -> WorkspaceTest.importBars(workspace));
    }

    private Workspace workspace(String name) {
        return Workspace.open(folder.resolve(name), Methods.builtIn(), NOON, "Twinbar test");
    }

    private interface Work<T> {
        T run() throws IOException;
    }

    /** Runs work on a machine that writes numbers, dates and letters in another way. */
    private static <T> T elsewhere(Work<T> work) throws IOException {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
            return work.run();
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
