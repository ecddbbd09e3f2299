package org.twinbar.report.kit;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.twinbar.report.Report;
import org.twinbar.report.Sheet;
import org.twinbar.report.Studies;
import org.twinbar.store.Digest;
import org.twinbar.study.Still;
import org.twinbar.study.judged.KeptFile;

/** Stills to vote on, of photos that are drawn here: no camera, no product. */
class BlindSheetTest {

    private static final Sheet SHEET = Report.sheet(Studies.pulled(4, 300));

    private static byte[] photo(int grey, String format, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setColor(new Color(grey, grey, grey));
        canvas.fillRect(0, 0, width, height);
        canvas.setColor(Color.RED);
        canvas.fillRect(0, 0, width, height / 4);
        canvas.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /** Puts an Exif part into a JPEG: its orientation, and words that must not be passed on. */
    private static byte[] withExif(byte[] jpeg, int orientation) {
        byte[] words = "coated P1 54.32N 10.13E".getBytes(ISO_8859_1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int length = 2 + 6 + 26 + words.length;
        byte[] head = {
            (byte) 0xff,
            (byte) 0xd8,
            (byte) 0xff,
            (byte) 0xe1,
            (byte) (length >> 8),
            (byte) length,
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        out.write(head, 0, head.length);
        out.write(words, 0, words.length);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static Still still(String code, String group, byte[] photo) {
        return new Still(
                code,
                group,
                new KeptFile(code + ".jpg", Digest.of(photo).hex(), photo.length),
                () -> photo);
    }

    private static List<Still> stills() {
        List<Still> stills = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            stills.add(still("P" + i, "plain", withExif(photo(40 + i, "jpeg", 1600, 1200), 1)));
            stills.add(still("C" + i, "coated", photo(180 + i, "png", 1200, 1600)));
        }
        return stills;
    }

    private static Map<String, byte[]> made(List<Still> stills, long seed) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        BlindSheet.of(SHEET, stills, seed)
                .files(List.of(Palette.LIGHT))
                .forEach(file -> files.put(file.name(), file.content().get()));
        return files;
    }

    private static byte[] file(List<Still> stills, long seed, String name) {
        return BlindSheet.of(SHEET, stills, seed).files(List.of(Palette.LIGHT)).stream()
                .filter(it -> it.name().equals(name))
                .findFirst()
                .orElseThrow()
                .content()
                .get();
    }

    @Test
    void showsEveryStillNumberedAndKeepsTheKeyApart() throws IOException {
        Map<String, byte[]> files = made(stills(), 1);
        assertThat(files)
                .containsKeys("blind/still-01.jpg", "blind/still-12.jpg", "blind/sheet.pdf")
                .containsKeys("blind/sheet-1-light.png", "blind/sheet-2-light.png")
                .containsKeys("blind/votes.csv", "blind-key.csv");
        String key = new String(files.get("blind-key.csv"), UTF_8);
        List<String> rows = key.lines().toList();
        assertThat(rows).hasSize(13);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().startsWith("blind/")) {
                String content = new String(file.getValue(), ISO_8859_1);
                assertThat(content.contains("coated") || content.contains("54.32N"))
                        .as("%s tells which is which, or where it was taken", file.getKey())
                        .isFalse();
            }
        }
        try (PDDocument pdf = Loader.loadPDF(files.get("blind/sheet.pdf"))) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("Still 1, my vote", "Still 12, my vote");
            assertThat(text).doesNotContain("coated", "plain");
        }
        BufferedImage sheet =
                ImageIO.read(new ByteArrayInputStream(files.get("blind/sheet-1-light.png")));
        assertThat(List.of(sheet.getWidth(), sheet.getHeight())).containsExactly(3840, 2160);
    }

    @Test
    void theOrderIsMixedFollowsFromTheSeedAndIsTheSameEachTime() {
        String once = order(stills(), 1);
        assertThat(order(stills(), 1)).isEqualTo(once);
        List<Still> turned = new ArrayList<>(stills());
        java.util.Collections.reverse(turned);
        assertThat(order(turned, 1)).as("the order in which photos came").isEqualTo(once);
        assertThat(order(stills(), 2)).isNotEqualTo(once);
        assertThat(once)
                .doesNotMatch("(plain)+(coated)+|(coated)+(plain)+|(plaincoated)+|(coatedplain)+");
    }

    private static String order(List<Still> stills, long seed) {
        String key = new String(file(stills, seed, "blind-key.csv"), UTF_8);
        return key.lines().skip(1).map(row -> row.split(",")[2]).reduce("", String::concat);
    }

    @Test
    void theKeyTellsEachPhoto() throws IOException {
        List<Still> stills = stills();
        for (String row : new String(file(stills, 1, "blind-key.csv"), UTF_8)
                .lines()
                .skip(1)
                .toList()) {
            String[] cells = row.split(",");
            byte[] square = file(
                    stills,
                    1,
                    "blind/still-%s.jpg".formatted(("0" + cells[0]).replaceAll("^0(..)", "$1")));
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(square));
            assertThat(List.of(image.getWidth(), image.getHeight())).containsExactly(1080, 1080);
            int grey = image.getRGB(540, 900) & 0xff;
            assertThat(grey > 110 ? "coated" : "plain").as(row).isEqualTo(cells[2]);
        }
    }

    /** The red band lies on top as stored; each orientation says where a camera saw it. */
    @Test
    void photosStandAsTheyWereSeen() {
        int[][] red = {
            {540, 20},
            {540, 20},
            {540, 1060},
            {540, 1060},
            {20, 540},
            {1060, 540},
            {1060, 540},
            {20, 540}
        };
        byte[] jpeg = photo(90, "jpeg", 1200, 1200);
        for (int orientation = 1; orientation <= 8; orientation++) {
            byte[] photo = withExif(jpeg, orientation);
            assertThat(Square.orientation(photo)).isEqualTo(orientation);
            BufferedImage square = Square.of(photo).orElseThrow();
            int[] at = red[orientation - 1];
            Color colour = new Color(square.getRGB(at[0], at[1]));
            assertThat(colour.getRed() - colour.getBlue())
                    .as("orientation %s", orientation)
                    .isGreaterThan(100);
        }
    }

    @Test
    void saysWhyThereIsNoSheet() {
        assertThat(made(List.of(), 1)).containsOnlyKeys("blind/why-there-is-none.txt");
        List<Still> heic = new ArrayList<>(stills().subList(0, 1));
        heic.add(still("C9", "coated", "....ftypheic".getBytes(ISO_8859_1)));
        String why = new String(made(heic, 1).get("blind/why-there-is-none.txt"), UTF_8);
        assertThat(why).contains("only those of 'plain'", "photos of C9", "JPEG or PNG");
    }

    @Test
    void brokenPhotosAreNoneAndNeverAFailure() {
        byte[] whole = withExif(photo(90, "jpeg", 1200, 1200), 6);
        for (int length = 0; length < 60; length++) {
            byte[] cut = java.util.Arrays.copyOf(whole, length);
            assertThat(Square.orientation(cut)).isBetween(1, 8);
            assertThat(Square.of(cut)).isEmpty();
        }
    }
}
