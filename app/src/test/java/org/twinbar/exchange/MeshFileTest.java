package org.twinbar.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.finding.Finding;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;

class MeshFileTest {

    private static final Mesh BAR = mesh("bar-80x10x4");

    private static Stream<Shape> shapes() {
        return StandardShapes.all().stream();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void readsWhatItWrote(Shape shape) {
        Mesh mesh = shape.solid().mesh(0.01);
        for (MeshFile.Format format : MeshFile.Format.values()) {
            MeshFile.Read read = read(MeshFile.bytes(mesh, format, shape.title()));
            assertThat(read.soundness().isWatertight()).as("%s", format).isTrue();
            assertThat(read.mesh().count()).isEqualTo(mesh.count());
            // STL holds floats of 24 bits, 3MF every figure.
            double tolerance = format == MeshFile.Format.STL ? 1e-5 : 1e-12;
            assertThat(read.mesh().volume() / mesh.volume()).isCloseTo(1, within(tolerance));
            assertThat(read.mesh().area() / mesh.area()).isCloseTo(1, within(tolerance));
        }
    }

    @Test
    void writesTheLayoutThatTheFormatAsksFor() {
        byte[] stl = MeshFile.bytes(BAR, MeshFile.Format.STL, "Bar");
        ByteBuffer bytes = ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(stl).hasSize(84 + 50 * 12);
        assertThat(bytes.getInt(80)).isEqualTo(12);
        assertThat(new String(stl, 0, 5, StandardCharsets.US_ASCII)).isNotEqualTo("solid");
        double length = 0;
        for (int axis = 0; axis < 3; axis++) {
            length += Math.pow(bytes.getFloat(84 + 4 * axis), 2);
        }
        assertThat(length).isCloseTo(1, within(1e-6));
        assertThat(MeshFile.bytes(BAR, MeshFile.Format.THREE_MF, "Bar"))
                .isEqualTo(MeshFile.bytes(BAR, MeshFile.Format.THREE_MF, "Bar"));
    }

    @Test
    void readsTextWithAnyNameAndSaysThatTheUnitWasTaken() {
        MeshFile.Read read = read(text("solid a facet of vertex\n", BAR, "endsolid a facet\n"));
        assertThat(read.mesh().volume()).isCloseTo(3200, within(1e-9));
        assertThat(read.findings()).extracting(Finding::code).containsExactly("mesh-unit-taken");
    }

    @Test
    void findsHolesAndDoubtfulUnits() {
        byte[] open = MeshFile.bytes(
                new Mesh(BAR.corners(), Arrays.copyOf(BAR.triangles(), 33)),
                MeshFile.Format.STL,
                "");
        assertThat(read(open).findings()).extracting(Finding::code).contains("mesh-open");
        double[] metres = Arrays.stream(BAR.corners()).map(it -> it / 1000).toArray();
        byte[] small = MeshFile.bytes(new Mesh(metres, BAR.triangles()), MeshFile.Format.STL, "");
        assertThat(read(small).findings()).extracting(Finding::code).contains("mesh-unit-doubtful");
    }

    @Test
    void findsAMeshThatCutsThroughItself() {
        Mesh cross = Mesh.together(List.of(BAR, BAR.turned().moved(-5, -40)));
        MeshFile.Read read = read(MeshFile.bytes(cross, MeshFile.Format.THREE_MF, ""));
        assertThat(read.findings())
                .extracting(Finding::code)
                .containsExactly("mesh-crosses-itself");
    }

    @Test
    void keepsTheNamesOfBodiesWhateverIsInThem() {
        byte[] bytes = MeshFile.bytes(
                List.of(new MeshFile.Part("A\"<01>&", BAR), new MeshFile.Part("B", BAR)),
                MeshFile.Format.THREE_MF,
                "two");
        assertThat(read(bytes).mesh().count()).isEqualTo(24);
    }

    @Test
    void readsUnitAndPlaceOf3mf() throws IOException {
        String model = model().replace("millimeter", "inch")
                .replace("objectid=\"1\"", "objectid=\"1\" transform=\"2 0 0 0 1 0 0 0 1 5 5 5\"");
        MeshFile.Read read = read(zip("3D/3dmodel.model", model));
        assertThat(read.mesh().volume()).isCloseTo(2 * 3200 * Math.pow(25.4, 3), within(1e-3));
    }

    /** By hand: a bar of double length within an object that is moved, twice. */
    @Test
    void readsObjectsMadeOfObjects() throws IOException {
        String model = model().replace("</object>", """
                        </object><object id="7"><components>
                        <component objectid="1" transform="2 0 0 0 1 0 0 0 1 0 0 0"/>
                        <component objectid="1" transform="1 0 0 0 1 0 0 0 1 0 50 0"/>
                        </components></object>""")
                .replace(
                        "<item objectid=\"1\"/>",
                        "<item objectid=\"7\" transform=\"0 1 0 -1 0 0 0 0 1 5 0 0\"/>");
        MeshFile.Read read = read(zip("3D/3dmodel.model", model));
        assertThat(read.mesh().volume()).isCloseTo(3 * 3200, within(1e-9));
        assertThat(read.mesh().box().size(0)).isCloseTo(60, within(1e-9));
        assertThat(read.mesh().box().size(1)).isCloseTo(160, within(1e-9));
        assertThat(read.soundness().isWatertight()).isTrue();
        refuses(
                zip(
                        "3D/3dmodel.model",
                        model.replace("id=\"7\"><components>", "id=\"1\"><components>")),
                "'1' is put into an object but is none before it");
        refuses(
                zip("3D/3dmodel.model", model.replaceFirst("transform=\"2 0", "transform=\"2 x")),
                "is not a transform of 12 numbers");
    }

    /** Twenty objects, each of two of the one before, would be a million bars. */
    @Test
    void refusesObjectsThatMultiply() throws IOException {
        StringBuilder nested = new StringBuilder("</object>");
        for (int i = 2; i <= 21; i++) {
            nested.append("<object id=\"%s\"><components>".formatted(i));
            nested.append("<component objectid=\"%s\"/>".formatted(i - 1).repeat(2));
            nested.append("</components></object>");
        }
        String model = model().replace("</object>", nested)
                .replace("<item objectid=\"1\"/>", "<item objectid=\"21\"/>");
        refuses(zip("3D/3dmodel.model", model), "objects within objects more than 16 deep");
        String wide = model.replace("<item objectid=\"21\"/>", "<item objectid=\"15\"/>");
        refuses(zip("3D/3dmodel.model", wide), "builds more than 10000 objects");
    }

    @Test
    void refusesAPieceOfXmlThatWouldFillTheMemory() throws IOException {
        String model = model().replaceFirst("x=\"", "x=\"" + "0".repeat(3 << 20));
        refuses(zip("3D/3dmodel.model", model), "a piece of XML longer than 1 MiB");
    }

    /** Whatever is broken in a file, it is read or refused in a sentence. */
    @Test
    void readsOrRefusesWhateverIsBroken() throws IOException {
        Random random = new Random(20260302);
        byte[] text = text("solid a\n", BAR, "endsolid");
        byte[] model = model().getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 600; i++) {
            byte[] whole = i % 3 == 0
                    ? MeshFile.bytes(BAR, MeshFile.Format.STL, "")
                    : i % 3 == 1 ? text : model;
            byte[] broken = Arrays.copyOf(whole, whole.length - random.nextInt(whole.length / 4));
            for (int change = random.nextInt(6); change >= 0; change--) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            if (i % 3 == 2) {
                broken = zip("3D/3dmodel.model", broken);
                if (i % 2 == 0) {
                    broken[random.nextInt(broken.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
            try {
                assertThat(read(broken).mesh().count()).isPositive();
            } catch (InputException e) {
                assertThat(e.getMessage()).startsWith("part").doesNotContain("Exception", "null");
            }
        }
    }

    @Test
    void refusesInOneSentence() throws IOException {
        refuses(new byte[0], "part: is empty");
        refuses("not a mesh".getBytes(StandardCharsets.US_ASCII), "it ends after 10 bytes");
        byte[] stl = MeshFile.bytes(BAR, MeshFile.Format.STL, "");
        refuses(Arrays.copyOf(stl, 400), "ends in triangle 7 of 12");
        refuses(withCount(stl, 60_000_000), "60000000 triangles are more than the limit");
        refuses(withCount(stl, 0), "has no triangles");
        ByteBuffer.wrap(stl).order(ByteOrder.LITTLE_ENDIAN).putFloat(96, Float.NaN);
        refuses(stl, "triangle 1 has a corner that is not at a finite place");
        refuses(text("solid\n", BAR, ""), "ends without endsolid");
        refuses(
                new String(text("solid\n", BAR, "endsolid"), StandardCharsets.US_ASCII)
                        .replaceFirst("vertex \\S+", "vertex wide")
                        .getBytes(StandardCharsets.US_ASCII),
                "line 4: 'wide' is not a coordinate");
        refuses("solid x\nendsolid facet".getBytes(StandardCharsets.US_ASCII), "has no triangles");
    }

    @Test
    void refusesBroken3mfInOneSentence() throws IOException {
        refuses(zip("other.txt", "x"), "without 3D/3dmodel.model");
        refuses(zip("3D/3dmodel.model", "<model><unclosed>"), "broken XML at line 1");
        refuses(
                zip("3D/3dmodel.model", model().replace("v1=\"0\"", "v1=\"99\"")),
                "'99' is not a corner from 0 to 7");
        refuses(
                zip("3D/3dmodel.model", model().replace("millimeter", "ell")),
                "'ell' is no unit of 3MF");
        refuses(
                zip("3D/3dmodel.model", model().replaceFirst("x=\"[^\"]*\"", "")),
                "a vertex lacks its x");
        refuses(
                zip("3D/3dmodel.model", model().replace("<item objectid=\"1\"/>", "")),
                "builds no triangles");
        refuses(
                zip(
                        "3D/3dmodel.model",
                        "<!DOCTYPE model [<!ENTITY a \"b\">]>" + "<model>&a;</model>"),
                "part: ");
        byte[] whole = MeshFile.bytes(BAR, MeshFile.Format.THREE_MF, "");
        refuses(Arrays.copyOf(whole, whole.length / 2), "part: ");
    }

    @Test
    void refusesAZipBombBeforeItFillsTheMemory() throws IOException {
        for (String name : new String[] {"3D/3dmodel.model", "padding"}) {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write("<model>".getBytes(StandardCharsets.US_ASCII));
                byte[] tags = "<a/>".repeat(1 << 18).getBytes(StandardCharsets.US_ASCII);
                for (int i = 0; i < 200; i++) {
                    zip.write(tags);
                }
            }
            assertThat(bytes.size()).isLessThan(1 << 20);
            refuses(bytes.toByteArray(), "unpacks to more than 160 MiB");
        }
    }

    private static void refuses(byte[] bytes, String says) {
        assertThatThrownBy(() -> read(bytes))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(says)
                .hasMessageStartingWith("part");
    }

    private static MeshFile.Read read(byte[] bytes) {
        return MeshFile.read(Source.of("part", bytes));
    }

    private static byte[] withCount(byte[] stl, int count) {
        byte[] changed = stl.clone();
        ByteBuffer.wrap(changed).order(ByteOrder.LITTLE_ENDIAN).putInt(80, count);
        return changed;
    }

    private static String model() throws IOException {
        byte[] bytes = MeshFile.bytes(BAR, MeshFile.Format.THREE_MF, "Bar");
        try (var zip = new java.util.zip.ZipInputStream(new java.io.ByteArrayInputStream(bytes))) {
            while (!zip.getNextEntry().getName().endsWith(".model")) {
                zip.closeEntry();
            }
            return new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static byte[] zip(String name, String text) throws IOException {
        return zip(name, text.getBytes(StandardCharsets.UTF_8));
    }

    private static byte[] zip(String name, byte[] text) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text);
        }
        return bytes.toByteArray();
    }

    private static byte[] text(String first, Mesh mesh, String last) {
        StringBuilder text = new StringBuilder(first);
        for (int triangle = 0; triangle < mesh.count(); triangle++) {
            text.append("facet normal 0 0 0\n outer loop\n");
            for (int corner = 0; corner < 3; corner++) {
                text.append("  vertex");
                for (int axis = 0; axis < 3; axis++) {
                    text.append(' ').append(mesh.coordinate(triangle, corner, axis));
                }
                text.append('\n');
            }
            text.append(" endloop\nendfacet\n");
        }
        return text.append(last).toString().getBytes(StandardCharsets.US_ASCII);
    }

    private static Mesh mesh(String shape) {
        return StandardShapes.named(shape).orElseThrow().solid().mesh(0.01);
    }
}
