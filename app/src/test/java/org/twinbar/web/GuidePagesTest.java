package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.study.calculation.Progress;
import org.twinbar.study.judged.StudyName;

class GuidePagesTest {

    private static final String WORDS = "words=At+least+10+%25+stronger&said_by=the+leaflet";

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.in(folder);
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void asksWhatTheWordsLeaveOpen() {
        assertThat(served.get("/").body()).contains("Find its questions");
        String page = served.get("/claims/guide?" + WORDS).body();
        assertThat(page)
                .contains("What would answer this claim?", "How is it to be shown?", "Go on")
                .doesNotContain("Begin a study with it");
    }

    @Test
    void leadsToAStudyThatAsksItsQuestions() {
        String answers = "&a.stronger.how=tensile.strength&a.stronger.per=peak_force"
                + "&a.stronger.orientation=flat&a.stronger.orientation=upright&a.stronger.worth=5+%25";
        assertThat(served.get("/claims/guide?" + WORDS + answers).body())
                .contains("Begin a study with it", "Change it")
                .containsPattern("value=\"upright\" checked");
        Map<String, String> form = new HashMap<>(Map.of(
                "act", UUID.randomUUID().toString(),
                "words", "At least 10 % stronger",
                "said_by", "the leaflet",
                "control", "bare",
                "name", "guided",
                "a.stronger.how", "tensile.strength",
                "a.stronger.per", "peak_force",
                "a.stronger.orientation", "flat,upright",
                "a.stronger.worth", "5 %"));
        assertThat(served.post("/claims/guide", form).statusCode()).isEqualTo(303);
        assertThat(served.post("/claims/guide", form).statusCode())
                .as("sent again")
                .isEqualTo(303);
        StudyName study = served.workspace().study("guided");
        assertThat(served.workspace().judge(study, Progress.SILENT).claims())
                .singleElement()
                .satisfies(claim -> assertThat(claim.answers()).hasSize(2));
    }

    @Test
    void leadsFoodToConditionsAlone() {
        String page = served.get("/claims/guide?words=Safe+for+food+contact").body();
        assertThat(page).contains("Not for this bench", "laboratory");
    }

    @Test
    void saysWhatIsMissingOrWrong() {
        HttpResponse<String> none = served.get("/claims/guide?words=");
        assertThat(none.statusCode()).isEqualTo(400);
        assertThat(none.body()).contains("Write down what is claimed.", "I have a claim");
        HttpResponse<String> wrong =
                served.get("/claims/guide?" + WORDS + "&a.stronger.how=by+magic");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("by magic", "role=\"alert\"");
        HttpResponse<String> early = served.post(
                "/claims/guide",
                Map.of("act", UUID.randomUUID().toString(), "words", "At least 10 % stronger"));
        assertThat(early.statusCode()).isEqualTo(400);
        assertThat(early.body()).contains("still asks for");
    }
}
