package org.twinbar.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.study.Act;
import org.twinbar.study.judged.MixMade;
import org.twinbar.treatment.Recipe;

/** A mix is weighed out, followed while it is poured, and noted. */
class MixPagesTest {

    /** METHODS.md G-1 and G-2: 14.024 g and 5.976 g. */
    private static final Map<String, String> TWENTY_GRAMS = Map.of(
            "number", "1",
            "by", "volume",
            "part_0", "2",
            "part_1", "1",
            "density_0", "1,15",
            "density_1", "0.98",
            "total", "20",
            "step", "0.1",
            "life", "30");

    @TempDir
    Path folder;

    private Served served;

    static MixMade mix(int number) {
        return new MixMade(
                number,
                Recipe.of(Recipe.By.VOLUME, List.of(2.0, 1.0), List.of(1.15, 0.98))
                        .ofTotal(20),
                List.of(14.1, 6.0),
                OptionalDouble.empty(),
                OptionalDouble.of(30),
                "lot 12",
                ZonedDateTime.parse("2026-05-04T11:50:00+02:00"),
                "the club");
    }

    @BeforeEach
    void serve() {
        served = Served.in(folder);
    }

    @AfterEach
    void close() {
        served.close();
    }

    @Test
    void tellsTheWeightsOfARatioByVolume() {
        String page = weigh(Map.of());
        assertThat(page)
                .contains("Pour 14.0 g of A, until the scale shows 14.0 g.")
                .contains("100 : 42.6 by mass")
                .contains("up to 1.75 % of the ratio. Batches of 22.6 g and more")
                .contains("it can be worked for about 30 min");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tared   | 9,0  |      | Pour another 5.0 g of A, until the scale shows 14.0 g.",
                "tared   | 14.0 |      | Pour 6.0 g of B, until the scale shows 6.0 g.",
                "running | 14.0 |      | Pour 6.0 g of B, until the scale shows 20.0 g.",
                "running | 14.0 | 17.5 | Pour another 2.5 g of B, until the scale shows 20.0 g.",
                "tared   | 15.0 |      | There is 1.0 g too much of A. To save it, pour 6.4 g of B, until the scale shows 6.4 g. The batch becomes 21.4 g.",
                "tared   | 14.0 | 6.0  | Enough of each: the ratio is within 2 %.",
            })
    void saysWhatToPourNext(String reading, String first, String second, String sentence) {
        Map<String, String> poured = new LinkedHashMap<>(Map.of("reading", reading));
        poured.put("shown_0", first);
        poured.put("shown_1", second == null ? "" : second);
        assertThat(weigh(poured)).contains(sentence);
    }

    @Test
    void anOverPouredHardenerIsSavedInAFieldOfItsOwn() {
        Map<String, String> poured = Map.of("shown_0", "14.0", "shown_1", "6.8");
        assertThat(weigh(poured))
                .contains("There is 0.8 g too much of B. To save it, pour another 2.0 g of A")
                .contains("A field for more of A")
                .contains("beyond the limit of 2 %");
        Map<String, String> more = new LinkedHashMap<>(poured);
        more.put("pour_again", "0");
        assertThat(weigh(more)).contains("After more of A the scale shows");
        more.put("more_0", "2");
        assertThat(weigh(more)).contains("Enough of each: the ratio is within 2 %.");
    }

    @Test
    void whileTheCupFillsOnlyWhatFollowsIsSent() {
        HttpResponse<String> part =
                Served.send(HttpRequest.newBuilder(served.uri(address(Map.of("shown_0", "9"))))
                        .header("HX-Request", "true"));
        assertThat(part.body())
                .doesNotContain("<html")
                .contains("hx-swap-oob=\"true\"", "Pour another 5.0");
        HttpResponse<String> wrong =
                Served.send(HttpRequest.newBuilder(served.uri(address(Map.of("shown_0", "nine"))))
                        .header("HX-Request", "true"));
        assertThat(wrong.statusCode()).isEqualTo(400);
        assertThat(wrong.body())
                .containsPattern("id=\"shown_0-amiss\"[^>]*>[^<]*nine")
                .containsPattern("id=\"shown_1-amiss\"[^>]*></p>");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "part_1    | -1   | The part of B must be above zero, not -1.",
                "density_1 | 0    | The density of B must be above zero, not 0 g/cm³.",
                "density_1 |      | Write down the density of B from its data sheet: without it the mass would be a guess.",
                "total     | 0,1  | The batch asks for 0.07012 g of A, less than the scale's step of 0.1 g: mix more, or take a finer scale.",
                "step      | 0    | The scale's step must be above zero, not 0 g.",
                "limit     | 200  | The limit of the ratio must lie from 0.1 to 100 %, not at 200 %.",
                "celsius   | 90   | Resin is worked from 0 to 60 °C, not at 90 °C.",
            })
    void whatIsWrongStandsBesideItsField(String field, String typed, String sentence) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put(field, typed == null ? "" : typed);
        fields.put("shown_0", "13,7");
        HttpResponse<String> page = served.get(address(fields));
        assertThat(page.statusCode()).isEqualTo(400);
        assertThat(plain(page))
                .contains("id=\"%s-amiss\" role=\"alert\">%s".formatted(field, sentence))
                .contains("value=\"13,7\"", "value=\"1,15\"");
    }

    @Test
    void aMixIsNotedOnceHoweverOftenItIsSent() {
        Map<String, String> cup = new LinkedHashMap<>(TWENTY_GRAMS);
        cup.put("shown_0", "14.1");
        cup.put("shown_1", "6.0");
        cup.put("noted", "lot 12");
        cup.put("act", UUID.randomUUID().toString());
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> answer = served.post(served.study() + "/mix", cup);
            assertThat(answer.statusCode()).isEqualTo(303);
            assertThat(answer.headers().firstValue("Location"))
                    .hasValue(served.study() + "/mixes/1");
        }
        assertThat(mixes()).hasSize(1);
        assertThat(mixes().get(0).weighed()).containsExactly(14.1, 6.0);
        assertThat(mixes().get(0).lifeMinutes()).hasValue(30);
        String clock = plain(served.get(served.study() + "/mixes/1"));
        assertThat(clock)
                .contains("data-left=\"1800\"", "30 min", "until 4 May, 12:30", "lot 12")
                .contains("nitrile gloves");
        assertThat(plain(served.get(served.study() + "/mix?like=1&number=2")))
                .contains("value=\"1.15\"", "value=\"20\"");
    }

    @Test
    void anotherMixOfTheSameNumberNeedsItsReason() {
        served.workspace()
                .register()
                .mixed(Act.by("test"), served.demo(), mix(1), Optional.empty());
        Map<String, String> cup = new LinkedHashMap<>(TWENTY_GRAMS);
        cup.put("shown_0", "14.0");
        cup.put("shown_1", "6.0");
        HttpResponse<String> refused = served.post(served.study() + "/mix", cup);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("Mix 1 is noted already: say why it is another now.")
                .contains("value=\"14.0\"");
        cup.put("why", "the first was spilled");
        assertThat(served.post(served.study() + "/mix", cup).statusCode()).isEqualTo(303);
        assertThat(mixes()).hasSize(1);
    }

    @Test
    void aMixThatIsNotWholeIsNotNoted() {
        Map<String, String> cup = new LinkedHashMap<>(TWENTY_GRAMS);
        cup.put("shown_0", "14.1");
        HttpResponse<String> refused = served.post(served.study() + "/mix", cup);
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(plain(refused))
                .contains("Write down what the scale showed of B before the mix is noted.");
        assertThat(mixes()).isEmpty();
    }

    @Test
    void aMixWhoseTimeIsOverSaysSo() {
        MixMade old = mix(1);
        served.workspace()
                .register()
                .mixed(
                        Act.by("test"),
                        served.demo(),
                        new MixMade(
                                1,
                                old.meant(),
                                old.weighed(),
                                old.celsius(),
                                OptionalDouble.of(5),
                                "",
                                old.when(),
                                "the club"),
                        Optional.empty());
        assertThat(served.get(served.study() + "/mixes/1").body())
                .contains("data-left=\"0\"", "Its working life is over");
    }

    private List<MixMade> mixes() {
        return served.workspace().plans().forTreating(served.demo()).mixes();
    }

    private String weigh(Map<String, String> more) {
        HttpResponse<String> page = served.get(address(more));
        assertThat(page.statusCode()).isEqualTo(200);
        return plain(page);
    }

    /** Without the narrow spaces and entities that only a browser needs. */
    private static String plain(HttpResponse<String> page) {
        return page.body()
                .replace('\u202f', ' ')
                .replace('\u00a0', ' ')
                .replace("&#39;", "'")
                .replace("&#34;", "\"");
    }

    private String address(Map<String, String> more) {
        Map<String, String> all = new LinkedHashMap<>(TWENTY_GRAMS);
        all.putAll(more);
        return served.study() + "/mix?"
                + all.entrySet().stream()
                        .map(it -> it.getKey() + "="
                                + URLEncoder.encode(it.getValue(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&"));
    }
}
