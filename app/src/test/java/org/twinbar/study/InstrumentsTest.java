package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Finding;
import org.twinbar.instrument.Instrument;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptInstrument;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.CalibrationSheet;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.KeptFile;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/** Studies whose readings were made on instruments of the workspace. */
class InstrumentsTest {

    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);

    private static final String STUDY = """
            study = "bars"
            [[test]]
            method = "tensile"
            specimens = "bars.csv"
            date = "2026-05-04"
            instrument = { "load cell" = "Cell A" }
            """;

    private static final String BARS = "specimen,group,width_mm,thickness_mm,peak_force_N\n"
            + "P1,plain,10,4,1000\nP2,plain,10,4,1010\nC1,coated,10,4,1200\n";

    @TempDir
    Path folder;

    private Workspace workspace;

    @BeforeEach
    void open() {
        workspace = Workspace.open(folder, Methods.builtIn(), CLOCK, "Twinbar test");
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private KeptInstrument cell() {
        return workspace
                .instruments()
                .add(
                        Act.by("club"),
                        new InstrumentSheet("Cell A", "load cell", "", "0.1 N", "90 d", "", ""));
    }

    private KeptInstrument calibrate(KeptInstrument cell, String date, double slope) {
        StringBuilder table = new StringBuilder("reference_N,reading_N\n");
        for (int n = 0; n <= 1500; n += 250) {
            table.append(n).append(',').append(slope * n + 2).append('\n');
        }
        return workspace
                .instruments()
                .calibrate(
                        Act.by("club"),
                        cell,
                        new CalibrationSheet(LocalDate.parse(date), "weights", ""),
                        Upload.of(
                                "cell-%s.csv".formatted(date),
                                table.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private StudyName study() {
        return workspace.importStudy(
                Act.by("club"),
                StudyFile.parse("bars.toml", STUDY),
                (name, from) -> Upload.of(name, BARS.getBytes(StandardCharsets.UTF_8)));
    }

    private static double force(JudgedStudy study) {
        var result = study.specimens().get(0).result();
        return result.budgets().entrySet().stream()
                .filter(it -> it.getKey().name().equals("peak_force"))
                .findFirst()
                .orElseThrow()
                .getValue()
                .value();
    }

    private static List<String> codes(JudgedStudy study) {
        return study.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aStudyIsCorrectedByTheCalibrationThatHeldAtItsTest() {
        KeptInstrument cell = calibrate(cell(), "2026-04-01", 1.02);
        StudyName bars = study();
        JudgedStudy judged = workspace.judge(bars, Progress.SILENT);
        assertThat(force(judged)).isCloseTo((1000 - 2) / 1.02, within(1e-9));
        assertThat(judged.files()).extracting(KeptFile::name).contains("cell-2026-04-01.csv");
        Instrument used = judged.methods().get(0).instruments().stream()
                .filter(it -> it.name().equals("Cell A"))
                .findFirst()
                .orElseThrow();
        assertThat(used.correction().orElseThrow().standsOn())
                .contains("calibration of 2026-04-01");
        assertThat(Report.html(judged))
                .contains("from the calibration of 2026-04-01 against weights");

        // One that is made after the test leaves its study as it was.
        int before = workspace.entries(bars);
        calibrate(cell, "2026-05-20", 1.05);
        assertThat(workspace.entries(bars)).isGreaterThan(before);
        assertThat(force(workspace.judge(bars, Progress.SILENT)))
                .isCloseTo((1000 - 2) / 1.02, within(1e-9));
    }

    @Test
    void whatDriftedBeforeTheTestIsInItsBudget() {
        KeptInstrument cell = calibrate(cell(), "2026-03-01", 1.02);
        calibrate(cell, "2026-04-01", 1.03);
        JudgedStudy judged = workspace.judge(study(), Progress.SILENT);
        assertThat(codes(judged)).contains("instrument-drifted");
        double drift = judged.specimens().get(0).result().budgets().entrySet().stream()
                .filter(it -> it.getKey().name().equals("peak_force"))
                .flatMap(it -> it.getValue().shifts().entrySet().stream())
                .filter(it -> it.getKey().identity().equals("Cell A drift"))
                .mapToDouble(it -> Math.abs(it.getValue()))
                .sum();
        double value = (1000 - 2) / 1.03;
        assertThat(drift).isCloseTo(value * (1.03 / 1.02 - 1) / Math.sqrt(3), within(1e-6));
    }

    @Test
    void aCalibrationThatIsTooOldIsTold() {
        calibrate(cell(), "2025-12-01", 1.02);
        assertThat(codes(workspace.judge(study(), Progress.SILENT)))
                .contains("calibration-expired");
    }

    @Test
    void anInstrumentThatIsNotThereIsRefusedBeforeAnythingIsWritten() {
        assertThatThrownBy(this::study)
                .isInstanceOf(InputException.class)
                .hasMessageContaining("no instrument 'Cell A'");
        assertThat(workspace.studies()).isEmpty();
    }

    @Test
    void whatItIsCalledAnewIsFoundAndTheOldNameIsNot() {
        KeptInstrument cell = cell();
        workspace
                .instruments()
                .describe(
                        Act.by("club"),
                        cell.id(),
                        new InstrumentSheet("Cell B", "load cell", "", "", "", "", ""),
                        "a label");
        assertThat(workspace.instruments().names()).containsExactly("Cell B");
        assertThatThrownBy(() -> workspace
                        .instruments()
                        .describe(
                                Act.by("club"),
                                cell.id(),
                                new InstrumentSheet("Cell B", "caliper", "", "", "", "", ""),
                                "no"))
                .hasMessageContaining("is another instrument");
    }

    @Test
    void anActThatIsSentAgainIsDoneOnce() {
        Act act = new Act(UUID.fromString("0b0a7000-0000-4000-8000-000000000002"), "club");
        InstrumentSheet sheet = new InstrumentSheet("Cell A", "load cell", "", "", "", "", "");
        workspace.instruments().add(act, sheet);
        workspace.instruments().add(act, sheet);
        assertThat(workspace.instruments().all()).hasSize(1);
    }

    /** The load cell was not noted at first; once it is, its calibration corrects the readings. */
    @Test
    void whatATestWasReadOnMayBeSaidAfterwards() {
        calibrate(cell(), "2026-05-01", 1.1);
        StudyName study = workspace.importStudy(
                Act.by("club"),
                StudyFile.parse(
                        "bars.toml",
                        STUDY.replace("instrument = { \"load cell\" = \"Cell A\" }", "")),
                (name, from) -> Upload.of(name, BARS.getBytes(StandardCharsets.UTF_8)));
        assertThat(force(workspace.judge(study, Progress.SILENT))).isEqualTo(1000);
        ToolsOfTest.Said cell = new ToolsOfTest.Said(
                Map.of("load cell", "Cell A"), Optional.of(LocalDate.parse("2026-05-04")));
        Act act = Act.by("club");
        workspace.tools().say(act, study, "tensile", cell, "not noted at first");
        workspace.tools().say(act, study, "tensile", cell, "not noted at first");
        assertThat(workspace.tools().of(study, "tensile")).isEqualTo(cell);
        JudgedStudy judged = workspace.judge(study, Progress.SILENT);
        assertThat(force(judged)).isCloseTo((1000 - 2) / 1.1, within(1e-6));
        assertThat(judged.methods().get(0).instruments())
                .filteredOn(it -> it.correction().isPresent())
                .singleElement()
                .satisfies(it -> assertThat(it.correction().orElseThrow().standsOn())
                        .contains("2026-05-01"));
        assertThat(judged.history()).singleElement().satisfies(change -> {
            assertThat(change.what())
                    .isEqualTo("the tensile test was read on 2026-05-04 on Cell A (load cell)");
            assertThat(change.why()).isEqualTo("not noted at first");
        });
        workspace
                .tools()
                .say(
                        Act.by("club"),
                        study,
                        "tensile",
                        new ToolsOfTest.Said(Map.of(), Optional.empty()),
                        "it was another one");
        assertThat(force(workspace.judge(study, Progress.SILENT))).isEqualTo(1000);
    }

    @Test
    void whatCannotHaveBeenReadOnItIsRefused() {
        cell();
        StudyName study = study();
        for (String[] wrong : new String[][] {
            {"load cell", "Cell B", "there is no instrument 'Cell B'"},
            {"caliper", "Cell A", "'Cell A' is a load cell; caliper is read on a caliper"},
            {"spring", "Cell A", "no reading of tensile and no instrument is called so"}
        }) {
            ToolsOfTest.Said said =
                    new ToolsOfTest.Said(Map.of(wrong[0], wrong[1]), Optional.empty());
            assertThatThrownBy(
                            () -> workspace.tools().say(Act.by("club"), study, "tensile", said, ""))
                    .isInstanceOf(InputException.class)
                    .hasMessageContaining(wrong[2]);
        }
        ToolsOfTest.Said same = workspace.tools().of(study, "tensile");
        assertThatThrownBy(() -> workspace.tools().say(Act.by("club"), study, "tensile", same, ""))
                .hasMessageContaining("said to be read on these already");
        assertThatThrownBy(() -> workspace.tools().of(study, "impact"))
                .hasMessageContaining("the study has no test 'impact'");
    }
}
