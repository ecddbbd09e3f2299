package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.study.bench.Drift;
import org.twinbar.study.bench.InstrumentSheet;
import org.twinbar.study.bench.KeptReference;
import org.twinbar.study.bench.ReferenceSheet;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Upload;

/** References that watch the bench, and the studies that were tested meanwhile. */
class ReferencesTest {

    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);

    private static final String BARS = "specimen,group,width_mm,thickness_mm,peak_force_N\n"
            + "P1,plain,10,4,1000\nP2,plain,10,4,1010\nP3,plain,10,4,1021\n"
            + "C1,coated,10,4,1200\nC2,coated,10,4,1190\nC3,coated,10,4,1215\n";

    /** Invented: ten looks in April that agree, then one that doesn't, on 20 May. */
    private static final String[] STRENGTHS = {
        "50.1", "49.8", "50.3", "49.9", "50.2", "50.0", "49.7", "50.1", "50.2", "49.8"
    };

    @TempDir
    Path folder;

    private Workspace workspace;
    private References references;

    @BeforeEach
    void open() {
        workspace =
                Workspace.open(folder.resolve("here"), Methods.builtIn(), CLOCK, "Twinbar test");
        workspace
                .instruments()
                .add(
                        Act.by("club"),
                        new InstrumentSheet("Cell A", "load cell", "", "0.1 N", "", "", ""));
        references = workspace.references();
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private KeptReference begun() {
        return references.begin(
                Act.by("club"),
                "cell a",
                new ReferenceSheet("bars of spool 12", "tensile", "strength", 10));
    }

    private KeptReference drifted() {
        KeptReference bars = begun();
        for (int i = 0; i < STRENGTHS.length; i++) {
            bars = references.note(
                    Act.by("club"), bars, LocalDate.of(2026, 4, 1 + i), STRENGTHS[i]);
        }
        return references.note(Act.by("club"), bars, LocalDate.of(2026, 5, 20), "44 MPa");
    }

    private JudgedStudy tested(String name, String date) {
        StudyName study = workspace.importStudy(
                Act.by("club"),
                StudyFile.parse("bars.toml", """
                        study = "%s"
                        [[test]]
                        method = "tensile"
                        specimens = "bars.csv"
                        %s
                        instrument = { "load cell" = "Cell A" }
                        [[claim]]
                        words = "stronger"
                        [[claim.question]]
                        method = "tensile"
                        property = "strength"
                        control = "plain"
                        expect = "higher"
                        """.formatted(name, date)),
                (file, from) -> Upload.of(file, BARS.getBytes(StandardCharsets.UTF_8)));
        return workspace.judge(study, Progress.SILENT);
    }

    private static List<String> codes(JudgedStudy study) {
        return study.findings().stream().map(Finding::code).toList();
    }

    @Test
    void limitsComeFromTheFirstValuesAndTheNewestIsBeyondThem() {
        Drift drift = drifted().drift().orElseThrow();
        assertThat(drift.baseline()).isEqualTo(10);
        assertThat(drift.said()).containsOnlyKeys(10);
        assertThat(drift.said().get(10)).contains("beyond the limits");
    }

    @Test
    void aStudyThatWasTestedWhileTheBenchWasOutOfControlSaysSoBesideItsVerdict() {
        drifted();
        JudgedStudy judged = tested("late", "date = \"2026-05-20\"");
        assertThat(codes(judged)).contains("bench-out-of-control");
        assertThat(judged.compared().get(0).comparison().findings())
                .extracting(Finding::code)
                .contains("bench-out-of-control");
        assertThat(judged.compared().get(0).comparison().reasons())
                .contains("The bench was out of control when this was tested.");
        assertThat(judged.findings())
                .extracting(Finding::text)
                .anyMatch(it -> it.contains("'bars of spool 12' read 44.00 MPa on 2026-05-20"));
        assertThat(Report.html(judged)).contains("when the bench was out of control");
    }

    @Test
    void aStudyThatWasTestedWhileItWasInControlSaysNothing() {
        drifted();
        JudgedStudy judged = tested("early", "date = \"2026-04-05\"");
        assertThat(codes(judged)).noneMatch(it -> it.startsWith("bench-"));
        assertThat(judged.compared().get(0).comparison().reasons())
                .noneMatch(it -> it.contains("out of control"));
    }

    @Test
    void aTestBetweenAGoodAndABadLookIsInDoubt() {
        drifted();
        JudgedStudy judged = tested("between", "date = \"2026-05-01\"");
        assertThat(judged.findings())
                .filteredOn(it -> it.code().equals("bench-changed-around-test"))
                .extracting(Finding::text)
                .singleElement()
                .asString()
                .contains("on 2026-05-20", "was in control on 2026-04-10");
    }

    @Test
    void aTestWithoutADateCannotBeTold() {
        drifted();
        assertThat(codes(tested("undated", ""))).contains("bench-date-unknown");
    }

    @Test
    void whatAnotherTestOrAnotherInstrumentReadsIsNotConcerned() {
        workspace
                .instruments()
                .add(
                        Act.by("club"),
                        new InstrumentSheet("Cell B", "load cell", "", "0.1 N", "", "", ""));
        KeptReference other = references.begin(
                Act.by("club"),
                "Cell B",
                new ReferenceSheet("others", "tensile", "strength_MPa", 4));
        for (String value : List.of("50", "51", "50", "51", "80")) {
            other = references.note(Act.by("club"), other, LocalDate.of(2026, 5, 1), value);
        }
        assertThat(other.drift().orElseThrow().isInControl()).isFalse();
        assertThat(codes(tested("apart", "date = \"2026-05-20\"")))
                .noneMatch(it -> it.startsWith("bench-"));
    }

    @Test
    void aWithdrawnValueStaysReadableAndSaysNoMore() {
        KeptReference bars = drifted();
        KeptReference.Value last = bars.values().get(10);
        assertThatThrownBy(() -> references.withdraw(Act.by("club"), bars, last.id(), " "))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("say why");
        KeptReference now =
                references.withdraw(Act.by("club"), bars, last.id(), "it slipped in the grips");
        assertThat(now.drift().orElseThrow().isInControl()).isTrue();
        assertThat(now.withdrawn())
                .extracting(KeptReference.Withdrawn::why)
                .containsExactly("it slipped in the grips");
        assertThat(codes(tested("late", "date = \"2026-05-20\"")))
                .noneMatch(it -> it.startsWith("bench-"));
    }

    @Test
    void goesAlongInADataPackageSoThatAStrangerIsToldTheSame() {
        drifted();
        JudgedStudy judged = tested("late", "date = \"2026-05-20\"");
        Path zip = folder.resolve("late.zip");
        workspace.packages().write(workspace.study("late"), judged, Optional.empty(), zip);
        try (OpenPackage open = OpenPackage.of(zip);
                Workspace elsewhere = Workspace.open(
                        folder.resolve("there"), Methods.builtIn(), CLOCK, "Twinbar test")) {
            JudgedStudy brought = elsewhere.packages().bring(PackagedStudy.verified(open));
            assertThat(brought.findings()).isEqualTo(judged.findings());
            assertThat(elsewhere.references().get("bars of spool 12").values()).hasSize(11);
        }
    }

    @Test
    void refusesWhatCannotBeCharted() {
        assertThatThrownBy(() -> references.begin(
                        Act.by("club"),
                        "Cell X",
                        new ReferenceSheet("a", "tensile", "strength", 8)))
                .hasMessageContaining("no instrument 'Cell X'");
        assertThatThrownBy(() -> references.begin(
                        Act.by("club"), "Cell A", new ReferenceSheet("a", "tensile", "stress", 8)))
                .hasMessageContaining("yields no 'stress'");
        assertThatThrownBy(() -> references.begin(
                        Act.by("club"),
                        "Cell A",
                        new ReferenceSheet("a", "tensile", "strength", 3)))
                .hasMessageContaining("3 values should set the limits");
        KeptReference bars = begun();
        assertThatThrownBy(this::begun).hasMessageContaining("already");
        assertThatThrownBy(() -> references.note(Act.by("club"), bars, references.today(), "much"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("much");
        assertThat(bars.drift()).isEmpty();
    }
}
