package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The repository's own rules, read off its files. */
class RepositoryTest {

    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "app")).toAbsolutePath().getParent();

    private static final Set<String> NOT_OURS =
            Set.of(".git", ".build", "target", ".idea", ".vscode", "node_modules");

    /** Kept as their makers wrote them. */
    private static final Set<String> MADE_ELSEWHERE = Set.of("mvnw", "mvnw.cmd", "LICENSE");

    /** The one file that must say where Maven is fetched from. */
    private static final String WRAPPER = ".mvn/wrapper/maven-wrapper.properties";

    private static final int LONGEST_TYPE = 400;
    private static final int WIDTH = 100;

    private static final List<Path> FILES = files();

    @Test
    void findsTheFilesOfTheRepository() {
        assertThat(FILES)
                .extracting(RepositoryTest::name)
                .contains("pom.xml", "twinbar", "check", WRAPPER)
                .anyMatch(name -> name.startsWith("core/src/main/java/"))
                .noneMatch(name -> name.contains("/target/"));
    }

    @Test
    void namesHaveNoBlanks() {
        assertThat(FILES)
                .extracting(RepositoryTest::name)
                .as("the scripts hand names on in lists")
                .allMatch(name -> name.matches("[A-Za-z0-9._/+@-]+"));
    }

    @Test
    void typesAreShort() {
        assertThat(FILES)
                .filteredOn(file -> isJava(file) && name(file).contains("/src/main/"))
                .filteredOn(file -> linesOfCode(file) > LONGEST_TYPE)
                .as("files over %d lines of code: a concept is missing", LONGEST_TYPE)
                .isEmpty();
    }

    @Test
    void textIsClean() {
        Predicate<Path> code = file -> isJava(file)
                || isScript(file)
                || name(file).matches(".*\\.(xml|md|jte|css|js|html|toml|properties)");
        assertThat(lines(code, line -> line.contains("\t"))).as("tabs").isEmpty();
        assertThat(lines(code, line -> !line.equals(line.stripTrailing())))
                .as("blanks at the end of a line")
                .isEmpty();
        assertThat(FILES)
                .filteredOn(code)
                .filteredOn(file -> !MADE_ELSEWHERE.contains(name(file)))
                .allMatch(file -> text(file).endsWith("\n"), "ends with a line end");
    }

    /** The formatter breaks code, but no text; a text that is longer than a line stays whole. */
    @Test
    void linesOfCodeFitTheWindow() {
        Pattern textBlock = Pattern.compile("\"\"\".*?\"\"\"", Pattern.DOTALL);
        List<String> longOnes = FILES.stream()
                .filter(RepositoryTest::isJava)
                .flatMap(file -> textBlock
                        .matcher(text(file))
                        .replaceAll("\"\"")
                        .lines()
                        .filter(line -> line.length() > WIDTH && !line.contains("\""))
                        .map(line -> name(file) + ": " + line.strip()))
                .toList();
        assertThat(longOnes).as("lines over %s characters", WIDTH).isEmpty();
    }

    @Test
    void nothingIsLeftForLater() {
        Pattern later =
                Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b|not implem" + "ented");
        assertThat(lines(RepositoryTest::isText, line -> later.matcher(line).find()))
                .isEmpty();
    }

    @Test
    void everyPackageSaysWhatItIsFor() {
        Set<Path> folders = FILES.stream()
                .filter(file -> isJava(file) && name(file).contains("/src/main/"))
                .map(Path::getParent)
                .collect(Collectors.toSet());
        assertThat(folders).isNotEmpty().allSatisfy(folder -> {
            Path info = folder.resolve("package-info.java");
            assertThat(info).exists();
            assertThat(text(info)).contains("/**").contains("NullMarked");
        });
    }

    @Test
    void onlyTheWrapperNamesWhereThingsAreFetchedFrom() {
        Pattern registry =
                Pattern.compile("repo1?\\.maven\\.|\\bmaven\\.org\\b|registry\\.npm|deb\\.debian"
                        + "|npmjs\\.(com|org)|central\\.sonatype");
        assertThat(lines(
                        file -> isText(file) && !name(file).equals(WRAPPER),
                        line -> registry.matcher(line).find()))
                .isEmpty();
    }

    @Test
    void everyOutsideValueNamesItsSource() {
        List<Path> checks =
                FILES.stream().filter(file -> file.endsWith("checks.csv")).toList();
        assertThat(checks).isNotEmpty().allSatisfy(file -> {
            List<String> lines = text(file).lines().toList();
            assertThat(lines.get(0)).as("first line of %s", name(file)).startsWith("#");
        });
    }

    private static List<String> lines(Predicate<Path> where, Predicate<String> broken) {
        List<String> found = new ArrayList<>();
        for (Path file : FILES) {
            if (where.test(file) && !MADE_ELSEWHERE.contains(name(file))) {
                List<String> lines = text(file).lines().toList();
                for (int i = 0; i < lines.size(); i++) {
                    if (broken.test(lines.get(i))) {
                        found.add(
                                name(file) + ":" + (i + 1) + ": " + lines.get(i).strip());
                    }
                }
            }
        }
        return found;
    }

    private static long linesOfCode(Path file) {
        return text(file)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.matches("(//|/\\*|\\*).*"))
                .count();
    }

    private static boolean isJava(Path file) {
        return name(file).endsWith(".java");
    }

    private static boolean isScript(Path file) {
        return name(file).matches("check|twinbar|\\.ci/run|.*\\.(sh|cmd)");
    }

    private static boolean isText(Path file) {
        return isJava(file)
                || isScript(file)
                || name(file).matches(".*\\.(xml|md|jte|css|js|html|toml|properties|R|py)");
    }

    private static String name(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files() {
        List<Path> found = new ArrayList<>();
        collect(ROOT, found);
        return List.copyOf(found);
    }

    private static void collect(Path folder, List<Path> found) {
        try (Stream<Path> children = Files.list(folder).sorted()) {
            for (Path child : (Iterable<Path>) children::iterator) {
                if (Files.isDirectory(child)) {
                    if (!NOT_OURS.contains(child.getFileName().toString())) {
                        collect(child, found);
                    }
                } else {
                    found.add(child);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
