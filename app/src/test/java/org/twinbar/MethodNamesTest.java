package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.TestMethod;

/**
 * Whether a test method is added by its own package and one service entry: nothing else of the
 * program says the name of a method or the column of what it yields.
 *
 * <p>CoreArchitectureTest sees to it that no class depends on a method's; this looks at the words
 * in the sources, by which a program may know a method all the same.
 */
class MethodNamesTest {

    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();

    /** Names that others say of the same quantity where no method is meant, as in coating. */
    private static final Set<String> QUANTITIES = Set.of("density", "pressure", "film_um");

    private static final List<Path> SOURCES = sources();

    static Stream<TestMethod> methods() {
        return Methods.builtIn().all().stream();
    }

    @ParameterizedTest
    @MethodSource("methods")
    void isNamedByItsPackageAlone(TestMethod method) {
        List<String> words = new ArrayList<>(List.of(method.description().name()));
        method.description().properties().stream().map(Property::column).forEach(words::add);
        words.removeAll(QUANTITIES);
        Path itself = Path.of(method.getClass().getPackageName().replace('.', '/'));
        assertThat(SOURCES).hasSizeGreaterThan(300);
        assertThat(SOURCES)
                .filteredOn(source -> !source.getParent().endsWith(itself))
                .allSatisfy(source -> assertThat(text(source))
                        .as(ROOT.relativize(source).toString())
                        .doesNotContain(quoted(words)));
    }

    private static List<String> quoted(List<String> words) {
        return words.stream().map(word -> '"' + word + '"').toList();
    }

    private static List<Path> sources() {
        List<Path> found = new ArrayList<>();
        for (String folder : List.of("core/src/main", "app/src/main")) {
            try (Stream<Path> files = Files.walk(ROOT.resolve(folder))) {
                files.filter(file -> file.toString().matches(".*\\.(java|jte)"))
                        .forEach(found::add);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return found;
    }

    private static String text(Path source) {
        try {
            return Files.readString(source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
