package org.twinbar.study.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.twinbar.exchange.InputException;
import org.twinbar.instrument.Bench;
import org.twinbar.method.Input;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.Readings;
import org.twinbar.method.Result;
import org.twinbar.method.TestMethod;
import org.twinbar.method.Yield;

/** A method that a person wrote down becomes one, or is refused with the place and the reason. */
class OwnMethodsTest {

    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", "app"))
            .toAbsolutePath()
            .getParent()
            .resolve("docs/examples/own-method");

    private static final String SOUND = """
            name = "side-load"
            version = 2
            title = "A load from the side"
            standard = "No standard."
            cautions = ["Mind your fingers."]
            [[input]]
            name = "width"
            label = "Width"
            unit = "mm"
            instrument = "caliper"
            [[channel]]
            name = "force"
            label = "Force"
            unit = "N"
            instrument = "load cell"
            [[setting]]
            name = "factor"
            label = "Factor"
            value = 2
            [[step]]
            name = "face"
            formula = "width^2"
            [[result]]
            name = "stress"
            label = "Stress"
            unit = "MPa"
            formula = "factor * peak(force) / face"
            """;

    @Test
    void readsAMethod() {
        TestMethod method = OwnMethods.parse("m.toml", SOUND);
        assertThat(method.description().name()).isEqualTo("side-load");
        assertThat(method.description().version()).isEqualTo(2);
        assertThat(method.description().inputs())
                .extracting(Input::column)
                .containsExactly("width_mm");
        assertThat(method.description().properties())
                .extracting(Property::column)
                .containsExactly("stress_MPa");
        assertThat(method.description().marks()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "name = \"width\"|nome = \"width\"|m.toml, input: the key 'nome' is none of above",
                "label = \"Width\"|label = \"\"|m.toml, input: the key 'label' is missing",
                "version = 2|version = 0|m.toml: the version is 0, must be 1 or more",
                "version = 2|version = \"two\"|m.toml: version 'two' is no whole number",
                "unit = \"mm\"|unit = \"furlong\"|m.toml, input 'width': unit 'furlong' is not known",
                "\"caliper\"|\"calliper\"|instrument 'calliper' is none of load cell",
                "\"caliper\"|\"load cell\"|m.toml, input 'width': a load cell does not read mm",
                "value = 2|value = \"two\"|m.toml, setting 'factor': value 'two' is no number",
                "value = 2|value = {a = 1}|m.toml, setting: 'value' must be one value",
                "value = 2|value = 2\\nat_most = 1|preset 2.0 of factor is not within",
                "value = 2|value = 2\\nabove = 3\\nat_most = 1|the range from 3.0 to 1.0 is empty",
                "value = 2|value = 2\\nabove = 1\\nat_least = 1|give either above or at_least, not both",
                "width^2|width^2 + 1|m.toml: formula of 'face': '(width ^ 2) + 1' adds an area and a plain number",
                "width^2|widht^2|names 'widht', which is none of what stands before it: factor, width",
                "\"MPa\"|\"N\"|m.toml: formula of 'stress': it gives a stress or pressure, but N is a force",
                "unit = \"MPa\"|unit = \"MPa\"\\ncompare = \"guess\"|compare 'guess' must be ratio or difference",
                "unit = \"MPa\"|unit = \"MPa\"\\nvalid_from = 5\\nvalid_to = 5|the range from 5.0 to 5.0 is empty",
                "cautions = [|cautions = |is not TOML",
                "[[result]]|[[results]]|m.toml: the key 'results' is none of",
                "\"face\"|\"peak\"|m.toml: the name 'peak' is a function or constant of formulas"
            })
    void refusesAMistakeWithItsPlace(String sound, String broken, String sentence) {
        String changed = SOUND.replace(sound, broken.replace("\\n", "\n"));
        assertThat(changed).isNotEqualTo(SOUND);
        assertThatThrownBy(() -> OwnMethods.parse("m.toml", changed))
                .isInstanceOf(InputException.class)
                .hasMessageContaining(sentence);
    }

    @Test
    void neitherHugeNorDeepNorBinaryFilesAreRead(@TempDir Path folder) throws IOException {
        Path huge = Files.writeString(folder.resolve("huge.toml"), "#".repeat(100_001));
        assertThatThrownBy(() -> OwnMethods.read(huge))
                .isInstanceOf(InputException.class)
                .hasMessage("huge.toml: has 100001 bytes, a method may have at most 100000");
        Path binary = Files.write(folder.resolve("b.toml"), new byte[] {(byte) 0xff, 0, 1});
        assertThatThrownBy(() -> OwnMethods.read(binary))
                .isInstanceOf(InputException.class)
                .hasMessage("b.toml: is no text in UTF-8");
        Path deep = Files.writeString(folder.resolve("deep.toml"), "a = " + "[".repeat(90_000));
        assertThatThrownBy(() -> OwnMethods.read(deep))
                .isInstanceOf(InputException.class)
                .hasMessageStartingWith("deep.toml, line 1: is not TOML");
        assertThatThrownBy(() -> OwnMethods.read(folder.resolve("none.toml")))
                .isInstanceOf(InputException.class)
                .hasMessageEndingWith("none.toml: can't be read");
    }

    @Test
    void readsAFolderInTheOrderOfItsNames(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("b.toml"), SOUND);
        Files.writeString(folder.resolve("a.toml"), SOUND.replace("side-load", "other-load"));
        Files.writeString(folder.resolve("notes.txt"), "not a method");
        assertThat(OwnMethods.in(folder))
                .extracting(method -> method.description().name())
                .containsExactly("other-load", "side-load");
        assertThat(OwnMethods.in(folder.resolve("nowhere"))).isEmpty();
    }

    @Test
    void standsAmongTheOthersByItsOwnName() {
        TestMethod own = OwnMethods.parse("m.toml", SOUND);
        assertThat(OwnMethods.among(Methods.builtIn(), List.of(own)).named("side-load"))
                .isPresent();
        TestMethod taken = OwnMethods.parse("m.toml", SOUND.replace("side-load", "tensile"));
        assertThatThrownBy(() -> OwnMethods.among(Methods.builtIn(), List.of(taken)))
                .isInstanceOf(InputException.class)
                .hasMessage("there is a method 'tensile' already; give yours another name");
    }

    /** The page of the worked example shows what its file makes of its readings. */
    @Test
    void theWorkedExampleComesOutAsItsPageSays() throws IOException {
        TestMethod method = OwnMethods.read(EXAMPLE.resolve("hook.toml"));
        List<String> lines =
                Files.readAllLines(EXAMPLE.resolve("specimens.csv"), StandardCharsets.UTF_8);
        List<String> header = List.of(lines.get(0).split(","));
        StringBuilder table = new StringBuilder(
                "| specimen | group | load_N | stress_MPa | load_per_mass_N_per_g |\n");
        table.append("|---|---|---|---|---|\n");
        for (String line : lines.subList(1, lines.size())) {
            List<String> cells = List.of(line.split(",", -1));
            Readings.Builder readings = Readings.of(cells.get(0), cells.get(1), Bench.usual());
            for (Input input : method.description().inputs()) {
                String cell = cells.get(header.indexOf(input.column()));
                if (!cell.isEmpty()) {
                    readings.number(input, Double.parseDouble(cell));
                }
            }
            table.append("| %s | %s |".formatted(cells.get(0), cells.get(1)));
            Result result = Result.of(method, readings.build());
            assertThat(result.findings()).isEmpty();
            result.yields()
                    .values()
                    .forEach(yield -> table.append(" ")
                            .append(
                                    yield instanceof Yield.Value value
                                            ? figures(value.value())
                                            : "none")
                            .append(" |"));
            table.append("\n");
        }
        String page = Files.readString(EXAMPLE.resolve("README.md"));
        assertThat(page).contains("invented").contains(table);
    }

    private static String figures(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
