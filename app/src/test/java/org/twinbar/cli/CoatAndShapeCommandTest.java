package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.twinbar.specimen.Shape;
import org.twinbar.specimen.StandardShapes;

class CoatAndShapeCommandTest {

    @TempDir
    Path folder;

    @Test
    void writesTheExampleOfTheManual() {
        JsonNode json = MakeRun.json(
                "coat",
                "--area",
                "120cm2",
                "--film",
                "150um",
                "--density",
                "1.1",
                "--transfer",
                "85%");
        assertThat(json.get("area_mm2").asDouble()).isEqualTo(12_000);
        assertThat(json.get("needed_g").asDouble()).isCloseTo(2.32941, within(1e-5));
        assertThat(json.get("film_um").asDouble()).isEqualTo(150);
        assertThat(json.at("/volume_mm3/reason").asText()).isNotEmpty();
    }

    /** Lengths are mm where no unit stands. */
    @Test
    void takesAFilmWithoutAUnitAsMillimetres() {
        for (String film : new String[] {"0.15", "0,15 mm", "150um"}) {
            JsonNode json =
                    MakeRun.json("coat", "--area", "1cm2", "--film", film, "--density", "1");
            assertThat(json.get("film_um").asDouble()).isCloseTo(150, within(1e-9));
        }
    }

    @Test
    void tellsTheFilmOfWhatWasGained() {
        JsonNode json = MakeRun.json(
                "coat",
                "--area",
                "120cm2",
                "--gained",
                "0.90g",
                "--density",
                "1.1",
                "--scale",
                "0.01g",
                "--solids",
                "60%");
        assertThat(json.get("film_um").asDouble()).isCloseTo(68.1818, within(1e-4));
        assertThat(json.get("wetFilm_um").asDouble()).isCloseTo(113.636, within(1e-3));
        assertThat(json.get("film_u_um").asDouble()).isBetween(1.9, 2.0);
    }

    @Test
    void takesTheAreaOfAShapeOrAMesh() {
        Path file = folder.resolve("bar.3mf");
        assertThat(MakeRun.of("shape", "bar-80x10x4", "--out", file.toString()).status())
                .isZero();
        for (String[] what :
                new String[][] {{"--shape", "bar-80x10x4"}, {"--mesh", file.toString()}}) {
            JsonNode json =
                    MakeRun.json("coat", what[0], what[1], "--film", "0.1mm", "--density", "1.1");
            assertThat(json.get("area_mm2").asDouble()).isCloseTo(2320, within(1e-9));
            assertThat(json.get("volume_mm3").asDouble()).isCloseTo(3200, within(1e-9));
        }
    }

    @Test
    void namesShapesFirst() {
        assertThat(MakeRun.of("shape", "--list").out().lines().map(it -> it.split(" ")[0]))
                .isEqualTo(StandardShapes.all().stream().map(Shape::name).toList());
    }

    @Test
    void writesAShapeAsNumbersAndFiles() throws Exception {
        Path file = folder.resolve("a.stl");
        JsonNode json = MakeRun.json(
                "shape", "iso527-1a", "--orientation", "upright", "--out", file.toString());
        assertThat(json.get("watertight").asBoolean()).isTrue();
        assertThat(json.get("axes").asText()).isEqualTo("ZXY");
        assertThat(json.at("/section/area_mm2").asDouble()).isEqualTo(40);
        assertThat(json.at("/dimensions_mm/overall_length").asDouble()).isEqualTo(170);
        assertThat(json.at("/mesh/volume_mm3").asDouble()
                        / json.get("volume_mm3").asDouble())
                .isCloseTo(1, within(1e-3));
        assertThat(Files.size(file)).isEqualTo(84 + 50L * json.get("triangles").asInt());
    }

    @Test
    void refusesInOneSentence() throws Exception {
        String[] film = {"--film", "150um", "--density", "1.1"};
        MakeRun.refuses("one of --mesh", "coat", "--film", "1mm", "--density", "1.1");
        MakeRun.refuses(
                "The density of the film must be above zero",
                "coat",
                "--area",
                "1cm2",
                "--film",
                "1mm",
                "--density",
                "0");
        MakeRun.refuses(
                "'150' is a film of 150 mm, and the limit is 5 mm; micrometres are written 150um",
                "coat",
                "--area",
                "1cm2",
                "--film",
                "150",
                "--density",
                "1");
        MakeRun.refuses(
                "The area must be above zero",
                "coat",
                "--area",
                "-1cm2",
                film[0],
                film[1],
                film[2],
                film[3]);
        MakeRun.refuses("give --film", "coat", "--area", "1cm2", "--density", "1.1");
        MakeRun.refuses("there is no shape 'iso527-1c'", "shape", "iso527-1c");
        MakeRun.refuses("name a shape", "shape");
        MakeRun.refuses("chord error", "shape", "disc-50x3", "--chord", "2mm");
        MakeRun.refuses("ends in neither", "shape", "disc-50x3", "--out", "disc.obj");
        MakeRun.refuses("--orientation", "shape", "disc-50x3", "--orientation", "tilted");
        Path broken = folder.resolve("broken.stl");
        Files.writeString(broken, "solid broken facet");
        MakeRun.refuses(
                "broken.stl",
                "coat",
                "--mesh",
                broken.toString(),
                film[0],
                film[1],
                film[2],
                film[3]);
        MakeRun.refuses(
                "there is no such file",
                "coat",
                "--mesh",
                folder.resolve("none.stl").toString(),
                film[0],
                film[1],
                film[2],
                film[3]);
    }
}
