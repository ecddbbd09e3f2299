package org.twinbar.study;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.finding.Finding;
import org.twinbar.method.Methods;
import org.twinbar.study.calculation.Comparisons;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.judged.Answer;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Asked.Term;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** Means are taken within one type of break alone. */
class ApartTest {

    private static final Methods METHODS = Methods.builtIn();
    private static final Asked TOUGHER =
            Asked.of("impact_strength").with(Term.CONTROL, "plain").with(Term.EXPECT, "higher");
    private static final String HEADER =
            "specimen,group,print_run,break_type,impact_strength_kJ_per_m2\n";
    private static final String BROKE_C = "P1,plain,1,C,4.0\nP2,plain,1,C,4.2\nP3,plain,2,C,4.1\n"
            + "C1,coated,1,C,4.9\nC2,coated,1,C,5.1\nC3,coated,2,C,5.0\n";

    @TempDir
    Path folder;

    private static Comparisons.Outcome compare(String rows, Asked asked) {
        Table table =
                Table.read(Source.of("t.csv", (HEADER + rows).getBytes(UTF_8)), ReadAs.found());
        return Comparisons.of(table, asked, "group", METHODS);
    }

    @Test
    void oneTypeIsComparedAsItIs() {
        Comparisons.Outcome outcome = compare(BROKE_C, TOUGHER);
        assertThat(outcome.comparisons()).singleElement().satisfies(one -> {
            assertThat(one.by()).isEmpty();
            assertThat(one.comparison().findings())
                    .extracting(Finding::code)
                    .doesNotContain("means-within-one");
        });
        assertThat(outcome.unmade()).isEmpty();
    }

    @Test
    void eachTypeHasItsOwnMeans() {
        Comparisons.Outcome outcome = compare(
                BROKE_C
                        + "P4,plain,1,H,7.0\nP5,plain,2,H,7.2\nC4,coated,1,H,9.9\nC5,coated,2,H,9.7\n",
                TOUGHER);
        assertThat(outcome.comparisons())
                .extracting(Comparisons.Parted::by)
                .containsExactly(Map.of("break_type", "C"), Map.of("break_type", "H"));
        assertThat(outcome.comparisons())
                .extracting(one -> one.comparison().treated().n())
                .containsExactly(3, 2);
        assertThat(outcome.comparisons())
                .allSatisfy(one -> assertThat(one.comparison().reasons())
                        .anySatisfy(sentence -> assertThat(sentence)
                                .startsWith(
                                        "Type of break differs between the specimens (C 6, H 4), so each"
                                                + " is compared within its own.")));
        assertThat(outcome.unmade()).isEmpty();
    }

    /** A bar that did not break is in no mean, so that it keeps nothing apart. */
    @Test
    void aBoundMixesNothing() {
        Comparisons.Outcome outcome = compare(BROKE_C + "C4,coated,1,N,≥6.1\n", TOUGHER);
        assertThat(outcome.comparisons()).singleElement().satisfies(one -> {
            assertThat(one.by()).isEmpty();
            assertThat(one.comparison().findings())
                    .extracting(Finding::code)
                    .contains("bound-not-averaged");
        });
    }

    @Test
    void whatHasNothingToBeHeldAgainstIsSaid() {
        Comparisons.Outcome outcome = compare(
                BROKE_C + "C4,coated,1,H,9.9\nC5,coated,2,N,≥6.1\nP9,plain,1,,4.4\n", TOUGHER);
        assertThat(outcome.comparisons())
                .extracting(Comparisons.Parted::by)
                .containsExactly(Map.of("break_type", "C"));
        assertThat(outcome.unmade())
                .extracting(Comparisons.Unmade::reason)
                .containsExactly(
                        "No specimen of 'plain' with type of break H has a value, so that C4 cannot"
                                + " be held against any: means are compared within one alone.",
                        "No specimen with type of break N has a value that a mean could be taken of"
                                + " (C5).",
                        "Type of break was not noted for P9, so they are in no mean.");
    }

    @Test
    void groupsThatBrokeUnlikeAreNotMixed() {
        String unlike =
                BROKE_C.replace("coated,1,C", "coated,1,H").replace("coated,2,C", "coated,2,H");
        assertThatThrownBy(() -> compare(unlike, TOUGHER))
                .isInstanceOf(QuestionException.class)
                .hasMessageContaining("Only 'plain' has specimens with type of break C and a value")
                .hasMessageContaining("No specimen of 'plain' with type of break H has a value");
    }

    @Test
    void aPersonMayAskOfOneTypeOrPartByIt() {
        String mixed = BROKE_C + "P4,plain,1,H,7.0\nC4,coated,1,H,9.9\n";
        assertThat(compare(mixed, TOUGHER.where("break_type", "C")).comparisons())
                .singleElement()
                .satisfies(one -> assertThat(one.by()).isEmpty());
        assertThat(compare(mixed, TOUGHER.by(List.of("break_type"))).comparisons())
                .hasSize(2)
                .allSatisfy(one -> assertThat(one.comparison().findings())
                        .extracting(Finding::code)
                        .doesNotContain("means-within-one"));
    }

    /** An order and a share take no mean. */
    @Test
    void ranksAreComparedOverAllTypes() {
        String mixed = BROKE_C + "P4,plain,1,H,7.0\nC4,coated,1,H,9.9\n";
        assertThat(compare(mixed, TOUGHER.with(Term.EFFECT, "rank")).comparisons())
                .singleElement()
                .satisfies(one -> assertThat(one.by()).isEmpty());
    }

    @Test
    void aStudyAnswersWithinEachType() {
        String bars = "specimen,group,moment_Nm,release_angle_deg,rise_angle_deg,friction_J,"
                + "thickness_mm,remaining_width_mm,break_type\n"
                + row("P1", "plain", 126, "C")
                + row("P2", "plain", 125, "C")
                + row("P3", "plain", 127, "C")
                + row("C1", "coated", 118, "C")
                + row("C2", "coated", 117, "C")
                + row("C3", "coated", 119, "C")
                + row("C4", "coated", 60, "H")
                + row("C5", "coated", 20, "N");
        Clock noon = Clock.fixed(Instant.parse("2026-05-02T10:00:00Z"), ZoneId.of("UTC"));
        try (Workspace workspace = Workspace.open(folder, METHODS, noon, "Twinbar test")) {
            workspace.importStudy(
                    Act.by("the club"),
                    StudyFile.parse("s.toml", """
                            study = "cleats"
                            question = "Does the coat make cleats tougher?"
                            [[test]]
                            method = "impact"
                            things = "cleats"
                            specimens = "bars.csv"
                            [[claim]]
                            words = "tougher"
                            [[claim.question]]
                            name = "impact strength"
                            method = "impact"
                            property = "impact_strength"
                            control = "plain"
                            """),
                    Handed.among(List.of(Upload.of("bars.csv", bars.getBytes(UTF_8)))));
            List<Answer> answers = workspace
                    .judge(workspace.study("cleats"), Progress.SILENT)
                    .claims()
                    .get(0)
                    .answers();
            assertThat(answers)
                    .extracting(Answer::question)
                    .containsExactly(
                            "impact strength, type of break C",
                            "impact strength, type of break H",
                            "impact strength, type of break N");
            assertThat(((Answer.Compared) answers.get(0)).where()).containsEntry("break_type", "C");
            assertThat(answers.get(1).sentence()).startsWith("No specimen of 'plain' with type of");
            assertThat(answers.get(2).sentence()).endsWith("could be taken of (C5).");
        }
    }

    private static String row(String code, String group, int rise, String type) {
        return "%s,%s,4,150,%s,0.04,4,8,%s\n".formatted(code, group, rise, type);
    }
}
