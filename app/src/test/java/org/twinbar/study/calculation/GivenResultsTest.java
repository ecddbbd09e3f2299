package org.twinbar.study.calculation;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.LeftOut;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Yield;
import org.twinbar.study.Act;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.JudgedSpecimen;
import org.twinbar.study.judged.JudgedStudy;
import org.twinbar.study.judged.Reading;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.TableFile;
import org.twinbar.study.table.Upload;

class GivenResultsTest {

    private static final Clock NOON =
            Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneId.of("Europe/Rome"));
    private static final String TABLE = "specimen,coat,print_run,load_N,load_N_own_u,"
            + "load_N_move_load_cell_gain,dry_h,leaked,feel\n"
            + "P1,plain,1,2000,4,10,8,yes,2\nP2,plain,2,2040,4,10,12,yes,1\n"
            + "P3,plain,3,1960,4,10,\u2265 24,no,3\nC1,coated,1,2400,4,12,\u2265 24,no,4\n"
            + "C2,coated,2,2440,4,12,\u2265 24,no,5\nC3,coated,3,2360,4,12,20,yes,4\n";

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
    void comparesAsTheTableOfResultsItselfIsCompared() {
        JudgedStudy judged = keep(TABLE, asked("load_N").with(Asked.Term.BLOCK, "print_run"));
        Answer.Compared answer =
                (Answer.Compared) judged.claims().get(0).answers().get(0);
        var direct = Comparisons.of(
                        TableFile.read(Upload.of("t.csv", TABLE.getBytes(UTF_8))),
                        asked("load_N").with(Asked.Term.BLOCK, "print_run"),
                        "coat",
                        Methods.builtIn())
                .comparisons()
                .get(0)
                .comparison();
        assertThat(answer.comparison().verdict()).isEqualTo(direct.verdict());
        assertThat(answer.comparison().found()).isEqualTo(direct.found());
    }

    @Test
    void keepsBoundsWordsAndWhatIsKnownOfErrors() {
        JudgedStudy judged = keep(TABLE, asked("dry").with(Asked.Term.EXPECT, "lower"));
        JudgedSpecimen specimen = judged.specimens().get(2);
        assertThat(specimen.factors()).containsEntry("print_run", "3").containsEntry("feel", "3");
        Map<String, Yield> yields = new java.util.HashMap<>();
        specimen.result().yields().forEach((property, it) -> yields.put(property.name(), it));
        assertThat(yields.get("dry")).isEqualTo(new Yield.AtLeast(24, "as the table says"));
        Property load = judged.methods().get(0).description().property("load").orElseThrow();
        assertThat(specimen.result().budgets().get(load).u())
                .isCloseTo(Math.sqrt(16 + 100), within(1e-12));
        assertThat(judged.methods()
                        .get(0)
                        .description()
                        .property("dry")
                        .orElseThrow()
                        .scale())
                .isEqualTo(Property.Scale.TIME_TO_EVENT);
    }

    @Test
    void takesColumnWithoutUnitWhereAQuestionAsksForIt() {
        JudgedStudy judged = keep(TABLE, asked("feel").with(Asked.Term.EFFECT, "rank"));
        assertThat(judged.methods().get(0).description().properties())
                .extracting(Property::name)
                .containsExactly("load", "dry", "feel");
        assertThat(((Answer.Compared) judged.claims().get(0).answers().get(0))
                        .comparison()
                        .question()
                        .effect())
                .isEqualTo(org.twinbar.decision.Effect.RANK);
        assertThat(keepAs("words", TABLE, asked("leaked")).claims()).isNotEmpty();
    }

    @Test
    void correctsAndLeavesOutAsInAnyTest() {
        keep(TABLE, asked("load"));
        StudyName study = workspace.study("given");
        workspace.correct(
                Act.by("the club"), study, "results", "C3", "load_N", "2500", "read again");
        workspace.leaveOut(
                Act.by("the club"),
                study,
                "results",
                "P3",
                LeftOut.Sight.BEFORE_VALUE_WAS_SEEN,
                "it fell on the floor");
        JudgedStudy judged = workspace.judge(study, Progress.SILENT);
        Reading load = judged.specimens().get(5).readings().get(0);
        assertThat(load.text()).isEqualTo("2360");
        assertThat(load.counting()).isEqualTo("2500");
        Property property =
                judged.methods().get(0).description().property("load").orElseThrow();
        assertThat(judged.specimens().get(5).result().yields().get(property))
                .isEqualTo(new Yield.Value(2500));
        assertThat(judged.specimens().get(2).leftOut()).isPresent();
    }

    @Test
    void refusesWhatCannotBeTakenAsResults() {
        refuses("specimen,coat,load_N\nA,plain,2\nA,coated,3\n", "'A' stands in line 2 already");
        refuses("specimen,coat,load_N\nA,,2\nB,coated,3\n", "is empty: every specimen");
        refuses("specimen,coat,load_N\nA,plain,much\nB,coated,3\n", "'much' is not a number");
        refuses("specimen,coat,load\nA,plain,2\nB,coated,3\n", "has no column of results");
        refuses(
                "specimen,coat,load_N,load_kN\nA,plain,2,1\nB,coated,3,1\n",
                "'load_N' and 'load_kN' are the same thing");
        refuses("specimen,kind,load_N\nA,plain,2\nB,coated,3\n", "there is no column 'coat'");
        assertThatThrownBy(() ->
                        keepAs("set", TABLE, asked("load"), sheet(Map.of("gauge_length", "25 mm"))))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'gauge_length' plays no part in results");
        assertThat(workspace.studies()).isEmpty();
    }

    private void refuses(String table, String words) {
        assertThatThrownBy(() -> keep(table, asked("load_N")))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(words);
    }

    private static Asked asked(String property) {
        return Asked.of(property).with(Asked.Term.CONTROL, "plain");
    }

    private static TestSheet sheet(Map<String, String> set) {
        return TestSheet.of(TestSheet.OF_RESULTS).withSet(set);
    }

    private JudgedStudy keep(String table, Asked asked) {
        return keepAs("given", table, asked);
    }

    private JudgedStudy keepAs(String name, String table, Asked asked) {
        return keepAs(name, table, asked, sheet(Map.of("group", "coat")));
    }

    private JudgedStudy keepAs(String name, String table, Asked asked, TestSheet sheet) {
        StudyFile file = new StudyFile(
                java.util.Optional.of(
                        new StudyFile.Head(name, "?", "", JudgedStudy.Origin.INVENTED)),
                List.of(new StudyFile.Test(sheet, "t.csv", java.util.Optional.empty())),
                List.of(new Claim(
                        "It does more",
                        "",
                        List.of(new Claim.Question("more", TestSheet.OF_RESULTS, asked)),
                        java.util.Optional.empty())),
                List.of());
        StudyName study = workspace.importStudy(
                Act.by("the club"),
                file,
                Handed.among(List.of(Upload.of("t.csv", table.getBytes(UTF_8)))));
        return workspace.judge(study, Progress.SILENT);
    }
}
