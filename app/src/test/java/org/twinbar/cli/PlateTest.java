package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code twinbar shape}: codes, own sizes, plates and meshes of one's own. */
class PlateTest {

    @TempDir
    Path folder;

    @Test
    void engravesTheCodeInTheGrip() {
        Desk desk = new Desk(folder);
        JsonNode plain = desk.type("shape iso527-1a --json").json();
        JsonNode coded =
                desk.type("shape iso527-1a --code a07 --json --out @a07.stl").json();
        assertThat(coded.at("/code/text").asText()).isEqualTo("A07");
        assertThat(coded.at("/code/where").asText()).isEqualTo("in the left grip");
        assertThat(coded.at("/code/stroke_mm").asDouble()).isBetween(0.4, 1.2);
        assertThat(coded.get("watertight").asBoolean()).isTrue();
        assertThat(coded.get("volume_mm3").asDouble())
                .isLessThan(plain.get("volume_mm3").asDouble());
        JsonNode raised =
                desk.type("shape iso527-1a --code A07 --relief raised --json").json();
        assertThat(raised.get("volume_mm3").asDouble() - plain.get("volume_mm3").asDouble())
                .isCloseTo(
                        plain.get("volume_mm3").asDouble()
                                - coded.get("volume_mm3").asDouble(),
                        within(1e-9));
        JsonNode read =
                desk.type("shape --mesh " + desk.path("a07.stl") + " --json").json();
        assertThat(read.get("volume_mm3").asDouble()
                        / coded.at("/mesh/volume_mm3").asDouble())
                .isCloseTo(1, within(1e-5));
        assertThat(read.at("/findings/0/code").asText()).isEqualTo("mesh-unit-taken");
        assertThat(read.get("findings")).hasSize(1);
    }

    @Test
    void takesOnesOwnSizes() {
        JsonNode json = new Desk(folder)
                .type("shape disc --set diameter=2,5cm --set thickness=2 --json")
                .json();
        assertThat(json.get("name").asText()).isEqualTo("disc-25x2");
        assertThat(json.get("volume_mm3").asDouble())
                .isCloseTo(Math.PI * 12.5 * 12.5 * 2, within(1e-9));
    }

    @Test
    void laysOutAPlateWithTheCodeOfEach() throws Exception {
        Desk desk = new Desk(folder);
        JsonNode json = desk.type("shape iso527-1a --bed 220x220mm --codes A01..A08 --out @p.3mf"
                        + " --positions @p.csv --json")
                .json();
        assertThat(json.get("specimens")).hasSize(8);
        assertThat(json.at("/specimens/7/specimen").asText()).isEqualTo("A08");
        assertThat(json.at("/specimens/1/x_mm").asDouble()).isEqualTo(90);
        assertThat(json.at("/specimens/1/y_mm").asDouble()).isEqualTo(40);
        assertThat(Files.readString(folder.resolve("p.csv")).lines())
                .hasSize(9)
                .startsWith(
                        "specimen,position,shape,orientation,x_mm,y_mm",
                        "A01,1,iso527-1a,flat,90.00,15.00");
        String model = model(folder.resolve("p.3mf"));
        assertThat(model).contains("name=\"A01\"", "name=\"A08\"", "unit=\"millimeter\"");
        JsonNode read =
                desk.type("shape --mesh " + desk.path("p.3mf") + " --json").json();
        assertThat(read.get("watertight").asBoolean()).isTrue();
        assertThat(read.get("findings")).isEmpty();
        assertThat(read.at("/box_mm/x").asDouble()).isCloseTo(170, within(1e-9));
        assertThat(read.at("/box_mm/y").asDouble()).isCloseTo(8 * 20 + 7 * 5, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "upright, 10, 4, 80",
        "edge, 80, 4, 10",
        "flat, 80, 10, 4",
    })
    void standsThemAsAsked(String orientation, double x, double y, double z) {
        Desk desk = new Desk(folder);
        desk.type("shape bar-80x10x4 --bed 100x50 --count 1 --out @p.stl --orientation "
                        + orientation)
                .done();
        JsonNode box = desk.type("shape --mesh " + desk.path("p.stl") + " --json")
                .json()
                .get("box_mm");
        assertThat(box.get("x").asDouble()).isCloseTo(x, within(1e-5));
        assertThat(box.get("y").asDouble()).isCloseTo(y, within(1e-5));
        assertThat(box.get("z").asDouble()).isCloseTo(z, within(1e-5));
    }

    @Test
    void refusesInOneSentence() {
        Desk desk = new Desk(folder);
        desk.refuses(
                "shape iso527-1a --bed 150x150 --count 2 --out @p.stl",
                "A bed of 150 by 150 mm holds none of the 2 specimens; the next is 170 by 20 mm");
        desk.refuses("shape bar --bed 220x220 --count 0", "1 to 1000");
        desk.refuses("shape bar --bed 220x220", "--codes or --count");
        desk.refuses("shape bar --bed 220 --count 1", "no pair of lengths");
        desk.refuses("shape bar --bed 220x220 --codes A1..B9", "no range");
        desk.refuses("shape bar --bed 220x220 --codes A9..A1", "no range");
        desk.refuses("shape bar --bed 220x220 --codes A1..A999999", "more than the limit of 1000");
        desk.refuses("shape bar --bed 220x220 --codes A1,a1", "names 'a1' twice");
        desk.refuses("shape bar --bed 220x220 --codes A1,,A2", "empty code");
        desk.refuses("shape bar --bed 220x220 --codes A1,A2 --count 3", "2 codes");
        desk.refuses("shape bar --count 3", "--bed");
        desk.refuses("shape bar --bed 220x220 --count 1 --code A1", "--codes");
        desk.refuses("shape bar --code A/7", "only A to Z");
        desk.refuses("shape bar --code A01234567", "at strokes of 0.4 mm");
        desk.refuses("shape cup --code A7 --relief engraved", "thin what is to be tight");
        desk.refuses("shape bar --set girth=3mm", "A bar has no 'girth'");
        desk.refuses("shape bar --set length=3g", "--set length");
        desk.refuses("shape iso527-1a --set length=100", "sizes that its name stands for");
        desk.refuses("shape bar --mesh @p.stl", "not both");
    }

    /** Three gigabytes that say nothing, or too much, are refused from their first bytes. */
    @Test
    void refusesAFileOfThreeGigabytesInOneSentence() throws Exception {
        Desk desk = new Desk(folder);
        sparse("zeros.stl", new byte[0]);
        desk.refuses("shape --mesh @zeros.stl", "has no triangles");
        byte[] head = new byte[84];
        head[83] = 0x03;
        sparse("many.stl", head);
        desk.refuses("shape --mesh @many.stl", "50331648 triangles are more than the limit");
        String text = "solid a\nfacet normal 0 0 1\nouter loop\n" + " ".repeat(2000);
        sparse("text.stl", text.getBytes(StandardCharsets.US_ASCII));
        desk.refuses("shape --mesh @text.stl", "too long for a mesh");
        sparse("zip.3mf", new byte[] {'P', 'K', 3, 4});
        desk.refuses("shape --mesh @zip.3mf", "zip file");
    }

    private void sparse(String name, byte[] beginning) throws Exception {
        try (RandomAccessFile file = new RandomAccessFile(folder.resolve(name).toFile(), "rw")) {
            file.write(beginning);
            file.setLength(3L << 30);
        }
    }

    private static String model(Path file) throws Exception {
        try (ZipInputStream zip =
                new ZipInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            while (!zip.getNextEntry().getName().endsWith(".model")) {
                zip.closeEntry();
            }
            return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
