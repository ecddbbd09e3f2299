package org.twinbar.report.kit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.twinbar.decision.Verdict;
import org.twinbar.report.Fonts;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.report.Studies;
import org.twinbar.report.Theme;
import org.twinbar.study.judged.JudgedStudy;

class KitTest {

    private static final JudgedStudy STUDY = Studies.pulled(4, 300);
    private static final Sheet SHEET = Report.sheet(STUDY);
    private static final Map<String, KitFile> FILES = files();

    private static Map<String, KitFile> files() {
        Map<String, KitFile> files = new LinkedHashMap<>();
        Kit.of(STUDY, List.of(Palette.LIGHT, Palette.DARK))
                .forEach(file -> files.put(file.name(), file));
        return files;
    }

    @Test
    void holdsEveryVerdictInEachShapeAndLight() {
        for (int verdict = 1; verdict <= SHEET.answers().size(); verdict++) {
            for (String frame : List.of("16x9", "1x1", "9x16")) {
                for (String light : List.of("light", "dark")) {
                    String name = "verdict-%s-%s-%s".formatted(verdict, frame, light);
                    assertThat(FILES).containsKeys(name + ".svg", name + ".png");
                }
            }
        }
        assertThat(FILES)
                .containsKeys("table-1-light.png", "curves-1-dark.gif", "description.txt")
                .containsKeys("table.md", "table.txt", "shots.md", "alternative-text.txt");
    }

    @Test
    void drawsPicturesAt4k() throws IOException {
        assertThat(sizeOf("verdict-1-16x9-light.png")).containsExactly(3840, 2160);
        assertThat(sizeOf("verdict-1-1x1-dark.png")).containsExactly(2160, 2160);
        assertThat(sizeOf("verdict-1-9x16-light.png")).containsExactly(2160, 3840);
    }

    private static int[] sizeOf(String name) throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(content(name)));
        assertThat(coloursIn(image)).as("colours in %s", name).isGreaterThan(20);
        return new int[] {image.getWidth(), image.getHeight()};
    }

    private static long coloursIn(BufferedImage image) {
        return java.util.stream.IntStream.range(0, 200_000)
                .map(i -> image.getRGB(i * 37 % image.getWidth(), i * 11 % image.getHeight()))
                .distinct()
                .count();
    }

    @Test
    void vectorPicturesNeedNoTypefaceAndNoStyleSheet() throws Exception {
        for (KitFile file : FILES.values()) {
            if (file.name().endsWith(".svg")) {
                String svg = new String(file.content().get(), UTF_8);
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(svg.getBytes(UTF_8)));
                assertThat(svg.contains("<text") || svg.contains("var(--"))
                        .as("text or names of colours in %s", file.name())
                        .isFalse();
            }
        }
    }

    @Test
    void everyPictureHasWordsForWhoCannotSeeIt() {
        String alternative = text("alternative-text.txt");
        FILES.keySet().stream()
                .filter(name -> name.matches(".*\\.(png|gif)"))
                .map(name -> name.replaceAll("-(light|dark)\\.\\w+$", ""))
                .distinct()
                .forEach(name -> assertThat(alternative)
                        .as("words of %s", name)
                        .containsPattern("(?m)^" + name + "\n  \\S.{20,}"));
    }

    @Test
    void wordsSayNoMoreThanTheReport() {
        String description = text("description.txt");
        for (Sheet.Answer answer : SHEET.answers()) {
            assertThat(description).contains(answer.brief()).contains(answer.verdict());
            assertThat(text("table.md")).contains("**" + answer.verdict() + "**");
            assertThat(text("table.txt")).contains(answer.verdict());
        }
        assertThat(description).contains("certifies nothing");
        for (Verdict verdict : Verdict.values()) {
            boolean given = SHEET.answers().stream()
                    .anyMatch(answer -> answer.verdict().equals(verdict.word()));
            if (!given && verdict != Verdict.OPEN) {
                assertThat(description).doesNotContain(": " + verdict.word() + ".");
            }
        }
    }

    @Test
    void curvesDrawThemselvesAndStayAtTheEnd() throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName("gif").next();
        try (ImageInputStream in = ImageIO.createImageInputStream(
                new ByteArrayInputStream(content("curves-1-light.gif")))) {
            reader.setInput(in);
            int pictures = reader.getNumImages(true);
            assertThat(pictures).isGreaterThan(20);
            assertThat(reader.getWidth(0)).isEqualTo(1920);
            long first = inked(reader.read(0));
            long middle = inked(reader.read(pictures / 2));
            long last = inked(reader.read(pictures - 1));
            assertThat(first).isLessThan(middle);
            assertThat(middle).isLessThan(last);
        }
    }

    private static long inked(BufferedImage image) {
        int paper = image.getRGB(2, 2);
        long inked = 0;
        for (int y = 0; y < image.getHeight(); y += 2) {
            for (int x = 0; x < image.getWidth(); x += 2) {
                inked += image.getRGB(x, y) == paper ? 0 : 1;
            }
        }
        return inked;
    }

    @Test
    void theSameStudyGivesTheSameFiles() {
        Kit.of(STUDY, List.of(Palette.LIGHT, Palette.DARK)).stream()
                .filter(file -> file.name().matches("verdict-1-1x1.*|.*\\.(txt|md)"))
                .forEach(file -> assertThat(file.content().get())
                        .as(file.name())
                        .isEqualTo(content(file.name())));
    }

    @Test
    void refusesTextThatIsTooSmallForAFilm() {
        Poster poster = new Poster(Frame.WIDE);
        assertThatThrownBy(() ->
                        poster.letter("fine print", 0, 0, 40, Fonts.Weight.REGULAR, Theme.INK))
                .hasMessageContaining("'fine print' would be 40.0 high, must be 48.0 or more");
    }

    @Test
    void shotsNameTheSpecimensThatShowIt() {
        assertThat(text("shots.md"))
                .contains("- [ ] ", "nearest to the middle of its group", "Caution: ")
                .contains("slipped in the grips");
    }

    private static byte[] content(String name) {
        return FILES.get(name).content().get();
    }

    private static String text(String name) {
        return new String(content(name), UTF_8);
    }
}
