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
                byte[] blanks = new byte[1 << 20];
                Arrays.fill(blanks, (byte) ' ');
                for (int i = 0; i < 200; i++) {
                    zip.write(blanks);
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
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
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
