package org.twinbar.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.specimen.Mesh;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;

/**
 * Mesh files as readers that others wrote see them: Debian's admesh for STL, assimp for both. Where
 * one is missing its tests are left out, and ./check says so.
 */
class IndependentReaderTest {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    @TempDir
    Path folder;

    private static Stream<Shape> shapes() {
        return StandardShapes.all().stream();
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void anotherReaderFindsNothingToMendInAnStlFile(Shape shape) throws Exception {
        requireReader("admesh");
        Mesh mesh = coded(shape);
        String seen = read(MeshFile.Format.STL, mesh, "admesh");
        assertThat(after(seen, "Number of facets                 :")).isEqualTo(mesh.count());
        assertThat(after(seen, "Number of parts       :")).isEqualTo(1);
        for (String fault : List.of(
                "Total disconnected facets        :",
                "Degenerate facets     :",
                "Edges fixed           :",
                "Facets removed        :",
                "Facets added          :",
                "Facets reversed       :",
                "Backwards edges       :",
                "Normals fixed         :")) {
            assertThat(after(seen, fault)).as(fault).isZero();
        }
        // It adds up in numbers of 24 bits.
        assertThat(after(seen, "Volume   :"))
                .isCloseTo(mesh.volume(), within(1e-3 * mesh.volume()));
        assertThat(after(seen, "Max X =")).isCloseTo(mesh.box().size(0), within(1e-4));
        assertThat(after(seen, "Max Z =")).isCloseTo(mesh.box().size(2), within(1e-4));
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void anotherReaderSeesTheSameBodyInBothFormats(Shape shape) throws Exception {
        requireReader("assimp");
        Mesh mesh = coded(shape);
        for (MeshFile.Format format : MeshFile.Format.values()) {
            String seen = read(format, mesh, "assimp", "info");
            assertThat(after(seen, "Meshes:")).isEqualTo(1);
            assertThat(after(seen, "Faces:")).isEqualTo(mesh.count());
            Matcher most = NUMBER.matcher(seen.substring(seen.indexOf("Maximum point") + 13));
            for (int axis = 0; axis < 3; axis++) {
                assertThat(most.find()).isTrue();
                assertThat(Double.parseDouble(most.group()))
                        .isCloseTo(mesh.box().size(axis), within(1e-4));
            }
        }
    }

    private static Mesh coded(Shape shape) {
        Mesh mesh = shape.lettered("A07", shape.usualRelief()).mesh(0.05);
        return mesh.moved(-mesh.box().least(0), -mesh.box().least(1));
    }

    private String read(MeshFile.Format format, Mesh mesh, String... command) throws Exception {
        Path file = folder.resolve(format == MeshFile.Format.STL ? "a.stl" : "a.3mf");
        Files.write(file, MeshFile.bytes(mesh, format, "A07"));
        List<String> words =
                Stream.concat(Stream.of(command), Stream.of(file.toString())).toList();
        Process process = new ProcessBuilder(words).redirectErrorStream(true).start();
        String seen = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(seen).isZero();
        return seen;
    }

    private static double after(String seen, String label) {
        assertThat(seen).contains(label);
        Matcher number = NUMBER.matcher(seen.substring(seen.indexOf(label) + label.length()));
        assertThat(number.find()).isTrue();
        return Double.parseDouble(number.group());
    }

    private static void requireReader(String name) throws IOException {
        boolean found = Stream.of(
                        System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(it -> Files.isExecutable(Path.of(it, name)));
        assumeTrue(found, name + " is not installed");
    }
}
