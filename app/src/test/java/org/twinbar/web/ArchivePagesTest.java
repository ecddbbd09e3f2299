package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArchivePagesTest {

    @TempDir
    static Path folder;

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.in(folder);
        for (String name : new String[] {"first", "second"}) {
            Map<String, String> form = new HashMap<>(Map.of(
                    "subject", "tensile\tstrength",
                    "control", "group\tplain",
                    "expect", "higher",
                    "by", "orientation",
                    "name", name));
            served.post(served.trial() + "/keep", form);
        }
    }

    @AfterAll
    static void close() {
        served.close();
    }

    @Test
    void showsGainsOfAllStudiesAndWhatTheySayTogether() {
        String page = served.get("/archive?property=strength&where=orientation+%3D+flat")
                .body();
        assertThat(page)
                .contains("What do all studies say?", "Tensile strength, ratio")
                .contains(">first</a>", ">second</a>", "2 studies together: +20")
                .contains("How much specimens scatter on this bench")
                .doesNotContain(">club-fittings</a>");
    }

    @Test
    void offersWhatTheStudiesHold() {
        String page = served.get("/archive").body();
        assertThat(page)
                .contains("<option value=\"coated\"", "<option value=\"orientation = upright\"")
                .contains(">club-fittings</a>", "invented data");
    }

    @Test
    void drawsOnePropertyAgainstAnother() {
        String page =
                served.get("/archive?property=strength&against=peak_force").body();
        assertThat(page).contains("Tensile strength against largest force", "hollow where it was");
        assertThat(served.get("/archive?property=strength&against=peak_force&per=area_mm2")
                        .body())
                .contains("role=\"alert\"", "must be a number above zero");
        assertThat(served.get("/archive?against=strength").body())
                .contains("Choose two properties, the one against the other.");
        assertThat(served.get("/archive?property=strength&against=gloss").body())
                .contains("No group of a study has both strength and gloss.");
    }

    @Test
    void saysWhichGainedMostAndWhetherThatIsKnown() {
        assertThat(served.get("/archive?property=strength&group=coated").body())
                .contains(
                        "Tensile strength changed most from", "which of them gained more is open");
    }

    @Test
    void saysWhereNothingFitsOrTheQuestionIsNone() {
        assertThat(served.get("/archive?group=painted").body())
                .contains("No study of this workspace holds anything like that.");
        HttpResponse<String> wrong = served.get("/archive?where=upright");
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body()).contains("must be written as factor = value");
    }
}
