package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class FiguresTest {

    private static final Map<String, String> PICTURES = Pictures.all();

    static Stream<Arguments> pictures() {
        return PICTURES.entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void isWellFormedAndSaysWhatItShows(String name, String svg) {
        Document document = read(svg);
        assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(document.getDocumentElement().getAttribute("aria-label")).hasSizeGreaterThan(20);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void isColouredByTokensAlone(String name, String svg) {
        assertThat(svg).doesNotContainPattern("#[0-9a-fA-F]{3,8}\"").doesNotContain("rgb(");
        assertThat(svg).contains("var(--");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void hasNoIdentityThatAnotherPictureOfThePageCouldShare(String name, String svg) {
        assertThat(svg).doesNotContain(" id=").doesNotContain("url(").doesNotContain("href");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("pictures")
    void keepsItsTextsInside(String name, String svg) {
        Document document = read(svg);
        NodeList texts = document.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            org.w3c.dom.Element text = (org.w3c.dom.Element) texts.item(i);
            if (text.hasAttribute("transform")) {
                continue;
            }
            double x = Double.parseDouble(text.getAttribute("x"));
            double wide = Chart.widthOf(text.getTextContent(), Fonts.Weight.REGULAR);
            assertThat(x).as(text.getTextContent()).isGreaterThanOrEqualTo(-0.5);
            assertThat(x + wide).as(text.getTextContent()).isLessThanOrEqualTo(Chart.WIDTH + 1);
        }
    }

    @Test
    void tellsCrossedGroupsApartWithoutColour() {
        String svg = PICTURES.get("crossed");
        assertThat(svg)
                .contains("plain, flat: 403", "thin coat, on edge: 381", "thick coat, upright: 302")
                .doesNotContain("thick coat, on edge");
        // The control's dashes: two steps from place to place, and one in the key.
        assertThat(Pattern.compile("stroke-dasharray").matcher(svg).results().count())
                .isEqualTo(3);
    }

    @Test
    void namesEverySpecimenAtItsPoint() {
        for (Clusters.Cluster group : Pictures.clusters().groups()) {
            for (Clusters.Point point : group.points()) {
                assertThat(PICTURES.get("clusters"))
                        .contains("<title>" + point.specimen() + ": " + point.written());
            }
        }
        for (String cup : List.of("P1", "P2", "P3", "P4", "P5", "C1", "C2", "C3", "C4", "C5")) {
            assertThat(PICTURES.get("shares")).contains("<title>" + cup + ": ");
            assertThat(PICTURES.get("survival")).contains("<title>" + cup + ": ");
        }
    }

    @Test
    void tellsControlFromTreatedWithoutColour() {
        String svg = PICTURES.get("clusters");
        assertThat(count(svg, "fill=\"none\" stroke=\"var\\(--control\\)\"")).isGreaterThan(8);
        assertThat(PICTURES.get("curves")).contains("stroke-dasharray=\"6,4\"");
        assertThat(PICTURES.get("three groups")).contains("<rect");
    }

    @Test
    void showsALeftOutSpecimenAsACrossAndSaysSo() {
        Clusters.Point out = new Clusters.Point("P9", 1500, "1500 N", Clusters.Standing.LEFT_OUT);
        Clusters.Point in = Clusters.Point.of("P8", 1600, "1600 N");
        String svg = Figures.clusters(new Clusters(
                "Peak force",
                "N",
                List.of(new Clusters.Cluster(
                        "plain", Sign.CONTROL, List.of(out, in), Optional.empty()))));
        assertThat(svg).contains("P9: 1500 N, left out").contains("1 and 1 left out");
    }

    @Test
    void drawsAnIntervalWithoutEndsAsArrows() {
        Effect.Row row = new Effect.Row(
                "measured +13 %, no interval",
                Effect.Kind.MEASURED, 13, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        String svg = Figures.effect(new Effect(
                "Change",
                "%",
                Effect.Signs.CHANGE,
                new Effect.Level(0, "no change"),
                List.of(),
                Optional.empty(),
                List.of(row)));
        assertThat(svg).doesNotContain("Infinity").doesNotContain("NaN");
        assertThat(count(svg, "<line[^>]+stroke=\"var\\(--treated\\)\"")).isEqualTo(5);
    }

    @Test
    void escapesWhatPeopleWrite() {
        Clusters.Cluster odd = new Clusters.Cluster(
                "<b>höhe & \"größe\" 高さ",
                Sign.CONTROL,
                List.of(Clusters.Point.of("A<1>&", 3, "3 N")),
                Optional.empty());
        Document document = read(Figures.clusters(new Clusters("x", "N", List.of(odd))));
        assertThat(document.getDocumentElement().getTextContent())
                .contains("<b>höhe & \"größe\" 高さ")
                .contains("A<1>&");
    }

    @Test
    void showsEveryPictureInAGalleryToLookAt() throws IOException {
        StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8><style>");
        page.append(Theme.css()).append(Figures.css());
        page.append("body{background:var(--paper);color:var(--ink);font:16px Inter,sans-serif}");
        page.append(
                "main{display:grid;gap:2rem;max-width:1000px;margin:auto;grid-template-columns:");
        page.append("repeat(auto-fit,minmax(min(100%,380px),1fr))}</style><main>");
        PICTURES.forEach((name, svg) -> page.append("<figure style='margin:0'>")
                .append(svg)
                .append("<figcaption>" + name + "</figcaption></figure>"));
        Path file = Path.of("target", "gallery.html");
        Files.createDirectories(file.getParent());
        Files.writeString(file, page);
        assertThat(count(page.toString(), "<svg")).isEqualTo(PICTURES.size());
    }

    @Test
    void keepsTwoHundredCurvesBelowAThirdOfAMegabyte() {
        assertThat(PICTURES.get("many curves").length()).isLessThan(350_000);
    }

    static Document read(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + svg, e);
        }
    }

    static int count(String text, String pattern) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }
}
