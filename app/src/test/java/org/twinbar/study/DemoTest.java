package org.twinbar.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.Verdict;
import org.twinbar.method.Methods;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.JudgedClaim;
import org.twinbar.study.judged.JudgedStudy;

class DemoTest {

    private static final Path FOLDER = Path.of("src/main/resources/demo");
    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-05T10:00:00Z"), ZoneId.of("UTC"));

    @TempDir
    Path folder;

    /** The files are what the class that made them up makes up again. */
    @Test
    void readingsAreThoseThatWereMadeUp() throws IOException {
        var made = DemoReadings.make();
        made.forEach((name, text) -> assertThat(FOLDER.resolve(name)).as(name).hasContent(text));
        try (Stream<Path> files = Files.walk(FOLDER)) {
            assertThat(files.filter(Files::isRegularFile)
                            .map(file -> FOLDER.relativize(file).toString().replace('\\', '/')))
                    .hasSize(made.size() + 1)
                    .containsAll(made.keySet());
        }
    }

    @Test
    void everyFileSaysThatItIsInvented() throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            assertThat(files.filter(Files::isRegularFile))
                    .isNotEmpty()
                    .allSatisfy(file -> assertThat(Files.readString(file)
                                    .lines()
                                    .findFirst()
                                    .orElse("")
                                    .toLowerCase(java.util.Locale.ROOT))
                            .contains("invented"));
        }
    }

    @Test
    void endsInDifferentVerdicts() {
        JudgedStudy study = judged();
        assertThat(study.invented()).isTrue();
        Set<Verdict> verdicts = new HashSet<>();
        study.claims().stream().flatMap(claim -> claim.answers().stream()).forEach(answer -> {
            if (answer instanceof Answer.Compared compared) {
                verdicts.add(compared.comparison().verdict());
            } else if (answer instanceof Answer.OffBench) {
                verdicts.add(Verdict.NOT_FOR_THIS_BENCH);
            }
        });
        assertThat(verdicts)
                .contains(Verdict.SUPPORTED, Verdict.TOO_SMALL, Verdict.NOT_FOR_THIS_BENCH)
                .hasSizeGreaterThanOrEqualTo(4);
        assertThat(study.claims())
                .flatExtracting(JudgedClaim::answers)
                .noneMatch(Answer.Unanswered.class::isInstance);
    }

    @Test
    void showsWhatHappensOnARealBench() {
        JudgedStudy study = judged();
        assertThat(study.specimens()).filteredOn(it -> !it.counts()).hasSize(1);
        assertThat(study.specimens())
                .filteredOn(it -> it.result().yields().values().stream()
                        .anyMatch(yield -> yield instanceof Yield.AtLeast bound
                                && bound.reason().contains("shoulder")))
                .hasSize(1);
        assertThat(study.findings()).extracting(finding -> finding.code()).contains("one-batch");
        assertThat(study.specimensOf("tensile")).allMatch(it -> it.curve().isPresent());
    }

    @Test
    void isMadeOnce() {
        try (Workspace workspace = open()) {
            assertThat(Demo.into(workspace)).isEqualTo(Demo.into(workspace));
            assertThat(workspace.studies()).hasSize(1);
        }
    }

    private JudgedStudy judged() {
        try (Workspace workspace = open()) {
            return workspace.judge(Demo.into(workspace), Progress.SILENT);
        }
    }

    private Workspace open() {
        return Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
    }
}
