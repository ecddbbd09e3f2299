package org.twinbar.study.judged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.study.Act;
import org.twinbar.study.PackagedStudy;
import org.twinbar.study.Workspace;
import org.twinbar.study.WorkspaceTest;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.packed.ResultsAsTables;

/** What was published stays published. */
class PublicationTest {

    private static final Instant NOON = Instant.parse("2026-05-04T10:00:00Z");

    @TempDir
    Path folder;

    private Instant now = NOON;
    private Workspace workspace;
    private StudyName study;

    @BeforeEach
    void open() {
        workspace = open("Twinbar 0.1.0");
        study = WorkspaceTest.importBars(workspace);
    }

    private Workspace open(String program) {
        Clock clock = new Clock() {
            @Override
            public ZoneId getZone() {
                return ZoneId.of("Europe/Rome");
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                now = now.plus(Duration.ofMinutes(1));
                return now;
            }
        };
        return Workspace.open(folder.resolve("w"), Methods.builtIn(), clock, program);
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private Publication publish() {
        return workspace.publish(Act.by("Ada"), study, "Do coats help? (video)");
    }

    private JudgedStudy judge() {
        return workspace.judge(study, Progress.SILENT);
    }

    private void leaveOutTheWeakBar() {
        now = now.plus(Duration.ofDays(2));
        workspace.leaveOut(
                Act.by("Ben"),
                study,
                "tensile",
                "C4",
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN,
                "it was cracked before the test");
    }

    @Test
    void keepsVerdictsDigestsVersionsAndSettings() {
        Publication kept = publish();
        assertThat(kept.who()).isEqualTo("Ada");
        assertThat(kept.where()).isEqualTo("Do coats help? (video)");
        assertThat(kept.program()).isEqualTo("Twinbar 0.1.0");
        assertThat(kept.said()).hasSize(1);
        assertThat(kept.said().get(0).verdict()).hasValue("open");
        assertThat(kept.said().get(0).numbers()).containsOnlyKeys("estimate", "low", "high");
        assertThat(kept.methods()).extracting(Publication.Method::name).containsExactly("tensile");
        assertThat(kept.methods().get(0).version()).isPositive();
        assertThat(kept.files()).isEqualTo(judge().files()).hasSize(1);
        assertThat(kept.readings()).matches("[0-9a-f]{64}");
        workspace.close();
        workspace = open("Twinbar 0.1.0");
        assertThat(judge().published()).containsExactly(kept);
    }

    @Test
    void stillStandsWhereNothingChanged() {
        Publication kept = publish();
        assertThat(kept.against(judge())).isEmpty();
        assertThat(kept.correction(judge())).isEmpty();
        assertThat(Report.html(judge())).contains("all of it").doesNotContain("correction to post");
    }

    @Test
    void showsBothVerdictsAndWhatChangedBetween() {
        Publication kept = publish();
        leaveOutTheWeakBar();
        JudgedStudy later = judge();
        assertThat(kept.against(later)).containsOnlyKeys(0);
        assertThat(kept.against(later).get(0)).is(fromOpenToSupported());
        assertThat(kept.causes(later))
                .containsExactly("C4 was left out, before its value was seen (it was cracked before"
                        + " the test; Ben, 6 May 2026).");
        assertThat(kept.correction(later).orElseThrow())
                .startsWith(
                        "Correction to what we published on 4 May 2026 (Do coats help? (video)).")
                .contains("“10 % stronger” (strength): open. It must read: supported.")
                .contains("Then: ", "Now: ", "it was cracked before the test");
        Sheet sheet = Report.sheet(later);
        assertThat(sheet.answers().get(0).items().get(0).term()).isEqualTo("Published otherwise");
        assertThat(sheet.sections().get(0).heading()).isEqualTo("What was published");
    }

    private static org.assertj.core.api.Condition<Publication.Divergence> fromOpenToSupported() {
        return new org.assertj.core.api.Condition<>(
                it -> it.verdict()
                        && it.then().word().equals("open")
                        && it.now().word().equals("supported"),
                "from open to supported");
    }

    @Test
    void tellsNumbersThatMovedFromVerdictsThatChanged() {
        publish();
        workspace.correct(Act.by("Ben"), study, "tensile", "P1", "peak_force_N", "2001", "misread");
        JudgedStudy later = judge();
        Publication.Divergence divergence =
                later.lastPublished().orElseThrow().against(later).get(0);
        assertThat(divergence.verdict()).isFalse();
        assertThat(later.lastPublished().orElseThrow().correction(later).orElseThrow())
                .contains("the verdict stays: open. Its numbers are others.")
                .contains("2000 → 2001 (misread; Ben, 4 May 2026)");
        assertThat(later.lastPublished().orElseThrow().readings())
                .isNotEqualTo(ResultsAsTables.digest(later));
    }

    @Test
    void namesTheProgramThatJudgesOtherwise() {
        Publication kept = publish();
        leaveOutTheWeakBar();
        workspace.close();
        workspace = open("Twinbar 0.2.0");
        assertThat(kept.causes(judge()))
                .contains("Twinbar 0.1.0 calculated it, Twinbar 0.2.0 calculates it now.");
    }

    @Test
    void namesMethodVersionsAndSettingsThatAreOthers() {
        Publication kept = publish();
        Publication older = new Publication(
                kept.when(),
                kept.who(),
                kept.where(),
                kept.program(),
                kept.said(),
                List.of(new Publication.Method(
                        "tensile",
                        0,
                        java.util.Map.of("modulus_by", "ends"),
                        kept.methods().get(0).instruments())),
                kept.files(),
                kept.readings());
        assertThat(older.causes(judge()))
                .containsExactly(
                        "The method 'tensile' was in version 0 and is in version %s now."
                                .formatted(kept.methods().get(0).version()),
                        "The setting 'modulus_by' of tensile was ends and is as preset now.");
    }

    @Test
    void keepsOldPublicationsReadableAfterNewOnes() {
        Publication first = publish();
        leaveOutTheWeakBar();
        Publication second = publish();
        JudgedStudy later = judge();
        assertThat(later.published()).containsExactly(first, second);
        assertThat(second.correction(later)).isEmpty();
        assertThat(Report.html(later)).contains("all but 1 of 1").contains("all of it");
    }

    @Test
    void isNotConfusedByClaimsThatCameLater() {
        publish();
        workspace.addClaim(
                Act.by("Ada"), study, new Claim("Stiffer", "", List.of(), Optional.empty()));
        JudgedStudy later = judge();
        assertThat(later.lastPublished().orElseThrow().against(later)).isEmpty();
    }

    @Test
    void goesWithThePackage() throws Exception {
        publish();
        leaveOutTheWeakBar();
        Path zip = folder.resolve("bars.zip");
        workspace.packages().write(study, judge(), Optional.empty(), zip);
        assertThat(Files.size(zip)).isPositive();
        try (Workspace other = Workspace.open(
                        folder.resolve("other"),
                        Methods.builtIn(),
                        Clock.fixed(NOON, ZoneId.of("UTC")),
                        "Twinbar 0.1.0");
                OpenPackage open = OpenPackage.of(zip)) {
            assertThat(other.packages().bring(PackagedStudy.verified(open)).published())
                    .isEqualTo(judge().published());
        }
    }

    @Test
    void refusesStudyWithoutVerdict() {
        StudyName empty = workspace.create(
                Act.by("Ada"), new StudyFile.Head("cups", "Dry?", "", JudgedStudy.Origin.MEASURED));
        assertThatThrownBy(() -> workspace.publish(Act.by("Ada"), empty, ""))
                .isInstanceOf(InputException.class)
                .hasMessage("the study 'cups' has no verdict yet that could be published");
    }
}
