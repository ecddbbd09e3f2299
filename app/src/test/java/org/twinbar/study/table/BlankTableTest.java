package org.twinbar.study.table;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Ask;
import org.twinbar.method.Channel;
import org.twinbar.method.Description;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Named;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.StudyName;

class BlankTableTest {

    private static final String LIST = "P1, plain, R1\nC1, coated, R1\n";

    @TempDir
    Path folder;

    @Test
    void putsBlankCellsBesideAListWithoutAHeader() {
        assertThat(text(LIST, asked("tensile", "thickness", 2), asked("tensile", "broke_at", 1)))
                .isEqualTo("specimen,group,print_run,thickness_1_mm,thickness_2_mm,broke_at\n"
                        + "P1,plain,R1,,,\nC1,coated,R1,,,\n");
    }

    @Test
    void takesATableAsItCopiesFromASpreadsheet() {
        assertThat(text(
                        "Specimen\tgroup\tThickness (mm)\nP 1\tplain\t4.01\nC1\tcoated\t\n",
                        asked("tensile", "thickness", 1),
                        asked("tensile", "peak_force", 1)))
                .isEqualTo("Specimen,group,Thickness (mm),peak_force_N\n"
                        + "P 1,plain,4.01,\nC1,coated,,\n");
    }

    @Test
    void refusesAListThatLeavesADoubt() {
        assertThatThrownBy(() -> text(" \n"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("write down the specimens");
        assertThatThrownBy(() -> text("P1, plain\nP1, coated\n"))
                .hasMessageContaining("specimen 'P1' stands there twice");
        assertThatThrownBy(() -> text("P1,a,b,c,d,e\nP2,a,b,c,d,e\n"))
                .hasMessageContaining("has 6 columns; write a header line");
    }

    /** Whoever begins a test of any method by hand finds blanks, and no verdict fails for them. */
    @Test
    void beginsATestOfEveryMethodThatNeedsNoCurve() {
        Methods methods = Methods.builtIn();
        Clock clock = Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC);
        List<String> begun = new ArrayList<>();
        try (Workspace workspace = Workspace.open(folder, methods, clock, "Twinbar test")) {
            for (TestMethod method : methods.all()) {
                Description description = method.description();
                Optional<List<BlankTable.Asked>> asked = byHand(description);
                if (asked.isEmpty()) {
                    continue;
                }
                String name = description.name();
                begun.add(name);
                Act act = Act.by("the club");
                StudyName study = workspace.create(
                        act, new StudyFile.Head(name, name, "", JudgedStudy.Origin.MEASURED));
                Upload table = BlankTable.of(name + ".csv", LIST, asked.get());
                workspace.addTest(
                        Act.by("the club"),
                        study,
                        new StudyFile.Test(TestSheet.of(name), table.name(), Optional.empty()),
                        Handed.among(List.of(table)));
                JudgedStudy judged = workspace.judge(study, Progress.SILENT);
                assertThat(judged.specimens())
                        .as(name)
                        .hasSize(2)
                        .allSatisfy(specimen -> assertThat(
                                        specimen.result().yields().values())
                                .as(name)
                                .allMatch(Yield.Missing.class::isInstance));
                assertThat(workspace.typing().test(study, name).progress())
                        .isEqualTo("0 of 2 done, 2 to go");
            }
        }
        assertThat(begun).contains("tensile", "impact", "leak", "hardness");
    }

    private static Optional<List<BlankTable.Asked>> byHand(Description description) {
        List<BlankTable.Asked> asked = new ArrayList<>();
        for (Ask ask : description.asks()) {
            Optional<List<Named>> way = ask.ways().stream()
                    .filter(it -> it.stream().noneMatch(Channel.class::isInstance))
                    .findFirst();
            if (way.isEmpty() && ask.need() == Ask.Need.REQUIRED) {
                return Optional.empty();
            }
            way.orElse(List.of()).stream()
                    .filter(it ->
                            asked.stream().noneMatch(other -> other.named().equals(it)))
                    .forEach(
                            it -> asked.add(new BlankTable.Asked(it, it instanceof Input ? 2 : 1)));
        }
        return Optional.of(asked);
    }

    private static BlankTable.Asked asked(String method, String name, int times) {
        Named named = Methods.builtIn().named(method).orElseThrow().description().asked().stream()
                .filter(it -> it.name().equals(name))
                .findFirst()
                .orElseThrow();
        return new BlankTable.Asked(named, times);
    }

    private static String text(String list, BlankTable.Asked... asked) {
        return new String(BlankTable.of("t.csv", list, List.of(asked)).bytes(), UTF_8);
    }
}
