package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;

/** A report shows the plan as it was sealed, and what departed from it. */
class PlanInReportTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));

    @TempDir
    Path folder;

    @Test
    void showsSealRuleReasonsAndDepartures() {
        try (Workspace workspace =
                Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test")) {
            StudyName study = workspace.importStudy(
                    Act.by("Ada"), StudyFile.parse("c.toml", PlansTest.STUDY), Handed.nothing());
            assertThat(page(workspace, study)).contains("The plan was never sealed");
            workspace.plans().seal(Act.by("Ada"), study);
            String sealed = page(workspace, study);
            String digest = workspace.plans().of(study).seal().orElseThrow().sha256();
            assertThat(sealed)
                    .contains("The plan was sealed on 2026-05-04 12:00 +02:00 by Ada")
                    .contains(digest)
                    .contains("one coat of clear resin")
                    .contains("A specimen is left out only before its value is seen")
                    .contains("scatter 6% (common practice)")
                    .containsPattern("cured for 168\\S{1,8}h, then conditioned for 88\\S{1,8}h")
                    .contains("Nothing departed from the plan as it was sealed.");
            workspace.addClaim(
                    Act.by("Ben"),
                    study,
                    new Claim("Stiffer", "", java.util.List.of(), Optional.empty()));
            assertThat(page(workspace, study))
                    .contains("Each departure, the oldest first")
                    .contains("was added after the plan was sealed");
        }
    }

    private static String page(Workspace workspace, StudyName study) {
        return Report.html(workspace.judge(study, Progress.SILENT));
    }
}
