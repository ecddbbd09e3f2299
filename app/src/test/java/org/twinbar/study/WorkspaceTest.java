package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.LeftOut;
import org.twinbar.decision.Material;
import org.twinbar.decision.Verdict;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.store.StoreException;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

public class WorkspaceTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final Act ACT = Act.by("the club");
    private static final String TABLE = "specimen,group,area_mm2,peak_force_N\n"
            + "P1,plain,40,2000\nP2,plain,40,2040\nP3,plain,40,1960\n"
            + "C1,coated,40,2400\nC2,coated,40,2440\nC3,coated,40,2360\nC4,coated,40,1200\n";
    private static final String STUDY = """
            study = "bars"
            question = "Does the coat make bars stronger?"
            [[test]]
            method = "tensile"
            things = "bars"
            specimens = "bars.csv"
            [[claim]]
            words = "10 % stronger"
            [[claim.question]]
            name = "strength"
            method = "tensile"
            property = "strength"
            control = "plain"
            claimed = "10%"
            """;

    @TempDir
    Path folder;

    private Workspace workspace;

    @BeforeEach
    void open() {
        workspace = Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void judgesWhatWasImportedAfterReopening() {
        importBars(ACT, TABLE);
        workspace.close();
        open();
        assertThat(workspace.studies()).extracting(StudyName::name).containsExactly("bars");
        JudgedStudy judged = judge();
        assertThat(judged.specimens()).hasSize(7);
        assertThat(judged.files()).extracting(KeptFile::name).containsExactly("bars.csv");
        assertThat(workspace.bytes(judged.files().get(0))).isEqualTo(TABLE.getBytes(UTF_8));
        assertThat(verdict(judged)).isEqualTo(Verdict.OPEN);
    }

    @Test
    void keepsSpecimenListedThatIsLeftOut() {
        StudyName study = importBars(ACT, TABLE);
        workspace.leaveOut(
                Act.by("the club"),
                study,
                "tensile",
                "C4",
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN,
                "it fell on the floor");
        JudgedStudy judged = judge();
        assertThat(judged.specimens()).hasSize(7);
        assertThat(judged.specimens().get(6).leftOut()).hasValueSatisfying(out -> {
            assertThat(out.why()).isEqualTo("it fell on the floor");
            assertThat(out.when()).isEqualTo(NOON.instant().atZone(NOON.getZone()));
        });
        assertThat(verdict(judged)).isEqualTo(Verdict.SUPPORTED);
        workspace.takeBack(Act.by("the club"), study, "tensile", "C4", "it was another one");
        assertThat(verdict(judge())).isEqualTo(Verdict.OPEN);
        assertThat(judge().history())
                .extracting(Change::what)
                .containsExactly("C4 was left out, before its value was seen", "C4 counts again");
        assertThatThrownBy(() ->
                        workspace.takeBack(Act.by("the club"), study, "tensile", "C4", "again"))
                .hasMessageContaining("counts already");
    }

    @Test
    void correctsReadingAndKeepsWhatStoodThere() {
        StudyName study = importBars(ACT, TABLE);
        workspace.correct(
                Act.by("the club"),
                study,
                "tensile",
                "C4",
                "peak_force_N",
                "2400",
                "1200 was read on the wrong scale");
        JudgedSpecimen specimen = judge().specimens().get(6);
        Reading force = specimen.readings().get(1);
        assertThat(force.text()).isEqualTo("1200");
        assertThat(force.counting()).isEqualTo("2400");
        assertThat(force.corrected())
                .hasValueSatisfying(corrected -> assertThat(corrected.change().what())
                        .isEqualTo("peak_force_N of C4: 1200 → 2400"));
        assertThat(specimen.result().budgets().values().iterator().next().value())
                .isCloseTo(60, within(1e-12));
        workspace.correct(
                Act.by("the club"), study, "tensile", "C4", "peak_force_N", "2410", "read again");
        assertThat(judge().history()).hasSize(2);
    }

    @Test
    void refusesCorrectionThatIsNoReading() {
        StudyName study = importBars(ACT, TABLE);
        assertThatThrownBy(() -> workspace.correct(
                        Act.by("x"), study, "tensile", "C4", "peak_force_N", "much", "typing"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'much' is not a number");
        assertThatThrownBy(() -> workspace.correct(
                        Act.by("x"), study, "tensile", "C4", "group", "plain", "typing"))
                .hasMessageContaining("no reading 'group'");
        assertThatThrownBy(() -> workspace.correct(
                        Act.by("x"), study, "tensile", "C9", "peak_force_N", "1", "typing"))
                .hasMessageContaining("no specimen 'C9'");
        assertThatThrownBy(() -> workspace.correct(
                        Act.by("x"), study, "tensile", "C4", "peak_force_N", "1", " "))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("reason");
        assertThat(judge().history()).isEmpty();
    }

    @Test
    void doesEachActOnce() {
        StudyName first = importBars(ACT, TABLE);
        assertThat(importBars(ACT, TABLE)).isEqualTo(first);
        Act act = Act.by("the club");
        for (int i = 0; i < 2; i++) {
            workspace.leaveOut(
                    act, first, "tensile", "C4", LeftOut.Sight.AFTER_VALUE_WAS_SEEN, "a bubble");
        }
        assertThat(judge().history()).hasSize(1);
        assertThat(workspace.studies()).hasSize(1);
    }

    @Test
    void writesNothingOfWhatItRefuses() throws IOException {
        assertThatThrownBy(() -> importBars(ACT, TABLE.replace("2040", "many")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("bars.csv, line 3");
        assertThatThrownBy(() -> importBars(ACT, TABLE.replace("plain", "bare")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("plain");
        assertThatThrownBy(() -> workspace.importStudy(
                        ACT,
                        StudyFile.parse(
                                "s.toml",
                                STUDY.replace("\"strength\"\ncontrol", "\"lenght\"\ncontrol")),
                        handed(TABLE)))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("yields no 'lenght'");
        assertThat(workspace.studies()).isEmpty();
        try (Stream<Path> files = Files.walk(folder.resolve("files"))) {
            assertThat(files.filter(Files::isRegularFile)).isEmpty();
        }
    }

    /** Worked by hand: 48 mm² over 40 mm² is 1.2, and 1.2 times the force over it is 1. */
    @Test
    void tellsThickerPartFromBetterMaterial() {
        String table = "specimen,group,area_before_mm2,area_mm2,peak_force_N\n"
                + "P1,plain,40,40,2000\nP2,plain,40,40,2040\nP3,plain,40,40,1960\n"
                + "C1,coated,40,48,2400\nC2,coated,40,48,2448\nC3,coated,40,48,2352\n";
        importBars(ACT, table);
        Answer.Compared answer =
                (Answer.Compared) judge().claims().get(0).answers().get(0);
        Material material = answer.comparison().material().orElseThrow();
        assertThat(material.bases())
                .extracting(Material.OnBasis::words)
                .containsExactly(
                        "per part", "per section as tested", "per section before treatment");
        assertThat(material.bases().get(1).found().estimate().orElse(0))
                .isCloseTo(1, within(1e-12));
        assertThat(material.expected().orElseThrow().ratio()).isCloseTo(1.2, within(1e-12));
        assertThat(material.excess().orElseThrow().ratio()).isCloseTo(1, within(1e-12));
    }

    @Test
    void saysNothingOfMaterialWhereNoSectionChanged() {
        importBars(ACT, TABLE);
        Answer.Compared answer =
                (Answer.Compared) judge().claims().get(0).answers().get(0);
        assertThat(answer.comparison().material()).isEmpty();
    }

    @Test
    void refusesNameThatIsTaken() {
        importBars(ACT, TABLE);
        assertThatThrownBy(() -> importBars(Act.by("another"), TABLE))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'bars'")
                .hasMessageContaining("already");
        assertThatThrownBy(() -> workspace.study("bar"))
                .hasMessageContaining("did you mean 'bars'?");
    }

    @Test
    void waitsForReadingsOfAnEmptyStudy() {
        StudyName study = workspace.create(
                ACT,
                new StudyFile.Head("cups", "Do cups stay dry?", "", JudgedStudy.Origin.MEASURED));
        workspace.addClaim(
                Act.by("the club"),
                study,
                StudyFile.parse("s.toml", STUDY).claims().get(0));
        JudgedStudy judged = workspace.judge(study, Progress.SILENT);
        assertThat(judged.claims().get(0).answers())
                .singleElement()
                .isInstanceOfSatisfying(
                        Answer.Unanswered.class,
                        answer -> assertThat(answer.reason())
                                .contains("No readings of the tensile test"));
        workspace.addTest(
                Act.by("the club"),
                study,
                StudyFile.parse("s.toml", STUDY).tests().get(0),
                handed(TABLE));
        assertThat(verdict(workspace.judge(study, Progress.SILENT))).isEqualTo(Verdict.OPEN);
    }

    @Test
    void noticesThatARawFileWasChanged() throws IOException {
        importBars(ACT, TABLE);
        String digest = judge().files().get(0).sha256();
        Files.writeString(folder.resolve("files").resolve(digest), TABLE.replace("1200", "2400"));
        assertThatThrownBy(this::judgeAnew)
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(digest);
    }

    private void judgeAnew() {
        try (Workspace again = Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test")) {
            again.judge(again.studies().get(0), Progress.SILENT);
        }
    }

    private StudyName importBars(Act act, String table) {
        return importBars(workspace, act, table);
    }

    public static StudyName importBars(Workspace workspace) {
        return importBars(workspace, ACT, TABLE);
    }

    public static StudyName importBars(Workspace workspace, UnaryOperator<String> change) {
        return workspace.importStudy(
                ACT, StudyFile.parse("s.toml", change.apply(STUDY)), handed(TABLE));
    }

    private static StudyName importBars(Workspace workspace, Act act, String table) {
        return workspace.importStudy(act, StudyFile.parse("s.toml", STUDY), handed(table));
    }

    private static Handed handed(String table) {
        return Handed.among(List.of(Upload.of("bars.csv", table.getBytes(UTF_8))));
    }

    private JudgedStudy judge() {
        return workspace.judge(workspace.study("bars"), Progress.SILENT);
    }

    private static Verdict verdict(JudgedStudy judged) {
        return ((Answer.Compared) judged.claims().get(0).answers().get(0))
                .comparison()
                .verdict();
    }
}
