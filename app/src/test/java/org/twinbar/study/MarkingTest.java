package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Mark;
import org.twinbar.method.Methods;
import org.twinbar.method.Yield;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Change;
import org.twinbar.study.judged.Curve;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

class MarkingTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final Marking.On PEAK = new Marking.On("tensile", "A1", "peak");

    @TempDir
    Path folder;

    private Workspace workspace;
    private StudyName study;

    @BeforeEach
    void keep() {
        workspace = Workspace.open(folder, Methods.builtIn(), NOON, "Twinbar test");
        List<Upload> files = new ArrayList<>();
        files.add(file("bars.csv", "specimen,group,area_mm2,curve_file\nA1,plain,40,A1.csv\n"));
        StringBuilder curve = new StringBuilder("displacement_mm,force_N\n");
        for (int row = 0; row <= 100; row++) {
            // A spike of the amplifier at 0.8 mm stands above all that the bar carried.
            double force = row == 80 ? 2600 : 20.0 * row;
            curve.append(row / 100.0).append(',').append(force).append('\n');
        }
        files.add(file("A1.csv", curve.append("1.01,3\n1.02,2\n").toString()));
        StudyFile of = new StudyFile(
                java.util.Optional.of(
                        new StudyFile.Head("bars", "?", "", JudgedStudy.Origin.INVENTED)),
                List.of(new StudyFile.Test(
                        TestSheet.of("tensile"), "bars.csv", java.util.Optional.empty())),
                List.of(),
                List.of());
        study = workspace.importStudy(act(), of, Handed.among(files));
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private static Upload file(String name, String text) {
        return Upload.of(name, text.getBytes(UTF_8));
    }

    private static Act act() {
        return Act.by("the club");
    }

    @Test
    void putsAMarkWhereAPersonWantsItWithAReason() {
        assertThat(strength()).isCloseTo(65, within(1e-9));
        workspace.marking().put(act(), study, PEAK, "1,004 mm", "a spike at 0.8 mm");
        assertThat(strength()).isCloseTo(50, within(1e-9));
        Curve curve = specimen().curve().orElseThrow();
        assertThat(curve.moved()).extracting(Mark::name).containsExactly("peak");
        assertThat(judged().history())
                .extracting(Change::what, Change::why)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        "peak of A1 was put at 1.0 mm", "a spike at 0.8 mm"));
    }

    @Test
    void itsUncertaintyIsThatOfAFoundMark() {
        double found = uncertaintyShare();
        workspace.marking().put(act(), study, PEAK, "1", "a spike at 0.8 mm");
        assertThat(uncertaintyShare()).isCloseTo(found, within(0.02 * found));
    }

    private double uncertaintyShare() {
        return specimen().result().budgets().entrySet().stream()
                .filter(it -> it.getKey().name().equals("strength"))
                .mapToDouble(it -> it.getValue().u() / it.getValue().value())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void letsTheMethodFindItAgain() {
        workspace.marking().put(act(), study, PEAK, "1", "a spike at 0.8 mm");
        workspace.marking().findAgain(act(), study, PEAK, "it was no spike");
        assertThat(strength()).isCloseTo(65, within(1e-9));
        assertThat(judged().history()).hasSize(2);
        assertThatThrownBy(() -> workspace.marking().findAgain(act(), study, PEAK, "again"))
                .hasMessageContaining("is where the method finds it already");
    }

    @Test
    void anActThatIsSentTwiceIsDoneOnce() {
        Act act = act();
        workspace.marking().put(act, study, PEAK, "1", "a spike");
        workspace.marking().put(act, study, PEAK, "1", "a spike");
        assertThat(judged().history()).hasSize(1);
    }

    @Test
    void refusesPlacesAndMarksThatAreNone() {
        refuses(PEAK, "3 mm", "why", "lies off the curve, which runs from 0.0 to 1.02 mm");
        refuses(PEAK, "much", "why", "the place 'much' on the curve");
        refuses(PEAK, "5 N", "why", "the place '5 N' on the curve");
        refuses(PEAK, "1", " ", "say why the mark is moved");
        refuses(new Marking.On("tensile", "A1", "peek"), "1", "why", "no mark 'peek'");
        refuses(new Marking.On("tensile", "A9", "peak"), "1", "why", "no specimen 'A9'");
        assertThat(judged().history()).isEmpty();
    }

    private void refuses(Marking.On on, String at, String why, String words) {
        assertThatThrownBy(() -> workspace.marking().put(act(), study, on, at, why))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(words);
    }

    private JudgedStudy judged() {
        return workspace.judge(study, Progress.SILENT);
    }

    private JudgedSpecimen specimen() {
        return judged().specimens().get(0);
    }

    private double strength() {
        Map<String, Yield> yields = specimen().result().yields().entrySet().stream()
                .collect(Collectors.toMap(it -> it.getKey().name(), Map.Entry::getValue));
        return ((Yield.Value) yields.get("strength")).value();
    }
}
