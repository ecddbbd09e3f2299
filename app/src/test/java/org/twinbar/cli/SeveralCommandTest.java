package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What {@code compare} and a study say of several treatments, parts, amounts and of grounds. */
class SeveralCommandTest {

    private static final String COMPARE =
            "compare @v.csv --group group --control plain --value load_N --worth 5% ";

    @TempDir
    Path folder;

    private Desk desk;

    /** Invented cleats: a thin and a thick coat, flat and upright. */
    @BeforeEach
    void lay() {
        desk = new Desk(folder);
        desk.file(
                "v.csv",
                "specimen,group,orientation,film_um,tested_at,position,load_N",
                "A1,plain,flat,0,2026-05-01 09:10,front,401",
                "A2,plain,flat,0,2026-05-01 09:40,back,411",
                "A3,plain,flat,0,2026-05-01 11:20,front,396",
                "A4,plain,flat,0,2026-05-01 11:50,back,405",
                "B1,thin,flat,80,2026-05-01 09:20,front,428",
                "B2,thin,flat,80,2026-05-01 10:00,back,441",
                "B3,thin,flat,80,2026-05-01 11:30,front,434",
                "B4,thin,flat,80,2026-05-01 12:00,back,445",
                "C1,thick,flat,160,2026-05-01 09:30,front,480",
                "C2,thick,flat,160,2026-05-01 10:10,back,472",
                "C3,thick,flat,160,2026-05-01 11:40,front,468",
                "C4,thick,flat,160,2026-05-01 12:10,back,477",
                "D1,plain,upright,0,2026-05-01 13:10,front,201",
                "D2,plain,upright,0,2026-05-01 13:40,back,206",
                "D3,plain,upright,0,2026-05-01 14:20,front,197",
                "E1,thin,upright,80,2026-05-01 13:20,front,230",
                "E2,thin,upright,80,2026-05-01 13:50,back,238",
                "E3,thin,upright,80,2026-05-01 14:30,front,226",
                "F1,thick,upright,160,2026-05-01 13:30,front,301",
                "F2,thick,upright,160,2026-05-01 14:00,back,311",
                "F3,thick,upright,160,2026-05-01 14:40,front,295");
    }

    @Test
    void compareWritesWhatStandsTogether() {
        JsonNode all =
                desk.type(COMPARE + "--by orientation --trend film_um --json").json();
        assertThat(all.at("/comparisons")).hasSize(4);
        double[] alone = new double[4];
        for (int i = 0; i < 4; i++) {
            alone[i] = all.at("/comparisons/" + i + "/effect/p").asDouble();
        }
        // Holm by hand: the smallest of four p counts four times, the largest once.
        double[] rising = alone.clone();
        Arrays.sort(rising);
        for (int i = 0; i < 4; i++) {
            double together = all.at("/comparisons/" + i + "/holm/p").asDouble();
            assertThat(together).isGreaterThanOrEqualTo(alone[i]);
            if (alone[i] == rising[0]) {
                assertThat(together).isCloseTo(4 * alone[i], within(1e-12));
            }
        }
        JsonNode thick = all.at("/comparisons/1");
        assertThat(thick.at("/together/againstControl")).hasSize(2);
        JsonNode held = thick.at("/together/againstControl/1");
        assertThat(held.get("treated").asText()).isEqualTo("thick");
        assertThat(held.get("low").asDouble())
                .isLessThan(thick.at("/effect/low").asDouble());
        assertThat(held.get("high").asDouble())
                .isGreaterThan(thick.at("/effect/high").asDouble());
        assertThat(thick.at("/together/pairs")).hasSize(3);
        assertThat(thick.at("/actsAlike/0/answer").asText()).isEqualTo("different");
        assertThat(thick.at("/actsAlike/0/here").asText()).isEqualTo("flat");
        assertThat(thick.at("/grounds")).hasSize(4);
        assertThat(all.at("/lines")).hasSize(2);
        JsonNode line = all.at("/lines/1");
        assertThat(line.at("/by/orientation").asText()).isEqualTo("upright");
        assertThat(line.at("/amount/unit").asText()).isEqualTo("µm");
        assertThat(line.at("/slope/estimate").asDouble()).isPositive();
        assertThat(line.at("/fromLeastToMost/estimate").asDouble())
                .isCloseTo(
                        160 * line.at("/slope/estimate").asDouble(),
                        org.assertj.core.api.Assertions.within(1e-9));
        assertThat(line.at("/verdict").asText()).isEqualTo("supported");
        assertThat(line.at("/findings/0/code").asText()).isEqualTo("line-is-bent");
    }

    @Test
    void compareSaysItInWordsFirst() {
        String said =
                plain(desk.type(COMPARE + "--by orientation --trend film_um").done());
        assertThat(said)
                .contains("judged together with both treatments")
                .contains("thick did best of 2 treatments held against plain")
                .contains("Load of thick against plain was 17.6 % higher (flat) and 50 % higher"
                        + " (upright): the treatment acts differently in the two")
                .contains("load_N over film, orientation flat: supported")
                .contains("N from 0 to 160 µm of film (95 % interval")
                .doesNotContain("load_N, all pairs")
                .doesNotContain("equal spread:");
        String detailed =
                plain(desk.type(COMPARE + "--by orientation --details").done());
        assertThat(detailed)
                .contains("load_N, all pairs, orientation upright")
                .contains("thick against thin")
                .contains("together: ratio")
                .contains("no drift over the tests: No drift over the tests is seen");
    }

    @Test
    void saysOnceWhyThereIsNoIntervalAndNoEffect() {
        desk.file(
                "few.csv",
                "specimen,group,load_N,dry_h,wet",
                "P1,plain,400,24,0",
                "P2,plain,410,24,0",
                "C1,coated,460,24,0");
        String one = plain(desk.type("compare @few.csv --value load_N --group group --control plain"
                        + " --expect higher")
                .done());
        assertThat(one)
                .contains("ratio 1.1358, no interval: coated has one specimen, and")
                .doesNotContain("interval coated has one");
        String none = plain(desk.type("compare @few.csv --value dry_h --event wet --group group"
                        + " --control plain --expect lower --effect rate")
                .done());
        assertThat(none).contains("no rate: At no moment did it happen to a specimen while others");
    }

    /** Invented cups: what {@code compare} says of a table a study says of it too. */
    @Test
    void aStudyTellsWhatHappenedFromWhereWatchingEnded() {
        desk.file(
                "cups.csv",
                "specimen,group,run,dry_h,wet",
                "P1,plain,a,2,1",
                "P2,plain,a,5,1",
                "P3,plain,b,5,1",
                "P4,plain,b,9,1",
                "P5,plain,b,14,1",
                "P6,plain,a,24,0",
                "C1,coated,a,20,1",
                "C2,coated,a,24,0",
                "C3,coated,a,24,0",
                "C4,coated,b,24,0",
                "C5,coated,b,24,0",
                "C6,coated,b,22,1");
        desk.file(
                "cups.toml",
                "study = \"cups\"",
                "question = \"Does the coat keep cups dry?\"",
                "invented = true",
                "[[test]]",
                "method = \"results\"",
                "specimens = \"cups.csv\"",
                "[[claim]]",
                "words = \"Coated cups leak later\"",
                "[[claim.question]]",
                "name = \"time\"",
                "method = \"results\"",
                "property = \"dry_h\"",
                "effect = \"rate\"",
                "event = \"wet\"",
                "control = \"plain\"",
                "block = \"run\"",
                "expect = \"lower\"");
        desk.type("study import @cups.toml --workspace @c").done();
        JsonNode there = desk.type("study show cups --workspace @c --json")
                .json()
                .at("/claims/0/answers/0/effect");
        JsonNode here = desk.type("compare @cups.csv --value dry_h --event wet --group group"
                        + " --control plain --block run --expect lower --effect rate --json")
                .json()
                .at("/comparisons/0/effect");
        assertThat(there).isEqualTo(here);
        assertThat(here.get("method").asText()).endsWith("stratified");
    }

    @Test
    void aLineAloneNeedsNoControl() {
        JsonNode all = desk.type("compare @v.csv --group group --value load_N --trend film --by"
                        + " orientation --expect lower --json")
                .json();
        assertThat(all.at("/comparisons")).isEmpty();
        assertThat(all.at("/lines/0/verdict").asText()).isEqualTo("contradicted");
        assertThat(all.at("/seed").asInt()).isEqualTo(1);
        assertThat(desk.type("compare @v.csv --group group --value load_N --trend film_um")
                        .done())
                .startsWith("load_N over film: ");
    }

    @Test
    void looksForDriftInTheOrderThatIsNamed() {
        desk.file(
                "drift.csv",
                "group,run_no,load_N",
                "plain,1,400",
                "coated,2,440",
                "plain,3,403",
                "coated,4,444",
                "plain,5,406",
                "coated,6,446",
                "plain,7,409",
                "coated,8,450",
                "plain,9,413",
                "coated,10,453");
        String tail = " --group group --control plain --value load_N --json";
        JsonNode untold = desk.type("compare @drift.csv" + tail).json();
        assertThat(untold.at("/comparisons/0/grounds/2/text").asText()).startsWith("Nobody told");
        JsonNode told = desk.type("compare @drift.csv --order run_no" + tail).json();
        assertThat(told.at("/comparisons/0/findings").toString()).contains("drift-over-tests");
        assertThat(told.at("/comparisons/0/verdict"))
                .isEqualTo(untold.at("/comparisons/0/verdict"));
    }

    @Test
    void refusesWhatIsNoAmountOrderOrPlace() {
        desk.refuses(COMPARE + "--trend position", "line 2, column position", "'front'");
        desk.refuses(COMPARE + "--trend fim_um", "'fim_um' (trend)", "did you mean");
        desk.refuses(COMPARE + "--order position", "neither a number nor a time such as 14:05");
        desk.refuses(COMPARE + "--position position,film_um", "position 'front' is no distance");
        desk.refuses(COMPARE + "--position a,b,c", "'a' (position)");
        desk.refuses(
                COMPARE + "--position position,film_um,group", "two of distances, not 3 columns");
        desk.refuses(
                "compare @v.csv --group group --value load_N --at 300N --of 90% --trend film_um",
                "A straight line over film needs numbers");
    }

    @Test
    void aStudyAsksByFactorAndOverAmounts() throws IOException {
        desk.file(
                "study.toml",
                "study = \"cleats\"",
                "question = \"Which coat carries more?\"",
                "invented = true",
                "[[test]]",
                "method = \"results\"",
                "specimens = \"v.csv\"",
                "[[claim]]",
                "words = \"The coat carries more\"",
                "[[claim.question]]",
                "name = \"load\"",
                "method = \"results\"",
                "property = \"load_N\"",
                "control = \"plain\"",
                "by = [\"orientation\"]",
                "worth = \"5%\"",
                "trend = \"film_um\"");
        desk.type("study import @study.toml --workspace @w").done();
        String shown = plain(desk.type("study show cleats --workspace @w").done());
        assertThat(shown)
                .contains("load, flat, thin", "load, upright, thick", "load, upright, over film")
                .contains("If all 4 are to be right together (Holm), a change is still told from"
                        + " none in: load, flat, thin; load, flat, thick");
        JsonNode json = desk.type("study show cleats --workspace @w --json").json();
        JsonNode answers = json.at("/claims/0/answers");
        assertThat(answers).hasSize(6);
        assertThat(answers.at("/0/holm/claims").asInt()).isEqualTo(4);
        assertThat(answers.at("/0/holm/changeStillTold").asText()).isEqualTo("yes");
        assertThat(answers.at("/4/holm").isMissingNode()).isTrue();
        desk.type("report cleats --workspace @w --out @r --html").done();
        assertThat(plain(Files.readString(folder.resolve("r/report.html"))))
                .contains("Does it act alike elsewhere: load by orientation")
                .contains("aria-label=\"thick, upright: 302");
        assertThat(answers.get(1).at("/actsAlike/0/answer").asText()).isEqualTo("different");
        assertThat(answers.get(5).at("/slope/kind").asText()).isEqualTo("difference");
    }

    /** Returns a text on one line with plain blanks, as it is read aloud. */
    private static String plain(String text) {
        return text.replace('\u2009', ' ').replaceAll("\\s+", " ");
    }
}
