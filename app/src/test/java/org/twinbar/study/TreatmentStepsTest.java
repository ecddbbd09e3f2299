package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.report.Report;
import org.twinbar.study.TreatmentSteps.Told;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Registered;
import org.twinbar.study.judged.StepDone;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.treatment.Procedure;
import org.twinbar.treatment.Procedure.Annealing;

class TreatmentStepsTest {

    private static final Told NOTHING =
            new Told(OptionalDouble.empty(), OptionalDouble.empty(), "");
    private static final int HOLD = 3;

    @TempDir
    Path folder;

    private final Clock clock = new Wound();
    private Instant now = Instant.parse("2026-05-04T10:00:00Z");
    private Workspace workspace;
    private StudyName study;
    private List<String> coated;

    /** Stands still until a test winds it on. */
    private final class Wound extends Clock {
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
            return now;
        }
    }

    @BeforeEach
    void open() {
        workspace = Workspace.open(folder, Methods.builtIn(), clock, "Twinbar test");
        study = workspace.importStudy(
                act(), StudyFile.parse("c.toml", PlansTest.STUDY), Handed.nothing());
        coated = workspace.plans().forTreating(study).specimens().stream()
                .filter(each -> each.placed().group().equals("coated"))
                .map(Registered::code)
                .toList();
        workspace
                .treating()
                .recipe(
                        act(),
                        study,
                        "coated",
                        Procedure.annealing(new Annealing(20, 80, 60, 1, 0.5)));
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    @Test
    void aStepGoesOnUntilItIsEnded() {
        steps().begin(act(), study, "coated", HOLD, coated);
        assertThat(noted()).singleElement().satisfies(step -> {
            assertThat(step.ended()).isEmpty();
            assertThat(step.specimens()).isEqualTo(coated);
            assertThat(step.what()).startsWith("Hold");
        });
        now = now.plus(Duration.ofMinutes(42));
        steps().end(
                        act(),
                        study,
                        noted().get(0).id(),
                        new Told(
                                OptionalDouble.empty(),
                                OptionalDouble.of(79),
                                "the door was opened once"));
        StepDone done = noted().get(0);
        assertThat(done.minutes()).hasValue(42);
        assertThat(done.celsius()).hasValue(79);
        assertThat(done.noted()).isEqualTo("the door was opened once");
        assertThat(findings())
                .anyMatch(it -> it.startsWith("Step 4 took 42 min for") && it.contains("60 min"));
        assertThatThrownBy(() -> steps().end(act(), study, done.id(), NOTHING))
                .isInstanceOf(InputException.class)
                .hasMessage("step 4 has ended already");
    }

    @Test
    void whatIsSentTwiceIsDoneOnce() {
        Act once = act();
        steps().begin(once, study, "coated", 0, coated);
        steps().begin(once, study, "coated", 0, coated);
        assertThat(noted()).hasSize(1);
    }

    @Test
    void aStepWithoutAClockTellsHowLongItTook() {
        steps().done(
                        act(),
                        study,
                        "coated",
                        HOLD,
                        coated,
                        new Told(OptionalDouble.of(61), OptionalDouble.empty(), ""));
        assertThat(noted().get(0).minutes()).hasValue(61);
        assertThat(findings()).noneMatch(it -> it.startsWith("Step 4 took"));
    }

    @Test
    void whatWasNotedByMistakeIsTakenBackWithAReason() {
        steps().begin(act(), study, "coated", 0, coated);
        StepDone step = noted().get(0);
        assertThatThrownBy(() -> steps().takeBack(act(), study, step.id(), ""))
                .isInstanceOf(InputException.class);
        steps().takeBack(act(), study, step.id(), "the wrong tray");
        assertThat(noted()).isEmpty();
    }

    @Test
    void refusesWhatTheRecipeAndThePlanDoNotKnow() {
        assertRefused("coated", 9, coated, "the recipe of 'coated' has steps 1 to 6, not 10");
        assertRefused("plain", 0, coated, "'plain' has no recipe yet");
        assertRefused("coated", 0, List.of(), "tick the specimens that step 1 is done to");
        String plain = workspace.plans().forTreating(study).specimens().stream()
                .filter(each -> each.placed().group().equals("plain"))
                .map(Registered::code)
                .findFirst()
                .orElseThrow();
        assertRefused(
                "coated",
                0,
                List.of(plain),
                "specimen '%s' is 'plain', not 'coated'".formatted(plain));
        steps().begin(act(), study, "coated", 0, coated);
        assertRefused(
                "coated", 0, coated, "step 1 goes on for '%s' already".formatted(coated.get(0)));
        assertThatThrownBy(() -> new Told(OptionalDouble.of(-1), OptionalDouble.empty(), ""))
                .isInstanceOf(InputException.class);
    }

    @Test
    void whoeverReadsABlindStudyIsNotToldWhatWasTreated() {
        steps().begin(act(), study, "coated", 0, coated);
        assertThat(workspace.plans().of(study).steps()).isEmpty();
        assertThat(workspace.plans().of(study).findings())
                .extracting(Finding::code)
                .doesNotContain("step-skipped");
    }

    @Test
    void theReportTellsWhatWasDone() {
        steps().done(act(), study, "coated", HOLD, coated, NOTHING);
        workspace.plans().openKey(act(), study, Optional.of("the test of the report"));
        assertThat(Report.html(workspace.judge(study, Progress.SILENT)))
                .contains("Steps as they were done", "Hold; the time counts");
    }

    private void assertRefused(String group, int step, List<String> codes, String sentence) {
        assertThatThrownBy(() -> steps().begin(act(), study, group, step, codes))
                .isInstanceOf(InputException.class)
                .hasMessage(sentence);
    }

    private TreatmentSteps steps() {
        return workspace.treating().steps();
    }

    private List<StepDone> noted() {
        return workspace.plans().forTreating(study).steps();
    }

    private List<String> findings() {
        return workspace.plans().forTreating(study).findings().stream()
                .map(Finding::text)
                .toList();
    }

    private static Act act() {
        return Act.by("the club");
    }
}
