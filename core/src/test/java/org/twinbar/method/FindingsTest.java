package org.twinbar.method;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whether each finding that a method declares is raised by a test, and reads as a sentence.
 *
 * <p>It reads the sources: kinds are private to their packages, and a test that names a code is the
 * one that raises it.
 */
class FindingsTest {

    private static final Path SOURCES =
            Path.of(System.getProperty("basedir", "core")).toAbsolutePath().resolve("src");
    private static final Pattern KIND = Pattern.compile(
            "Finding\\.Kind\\s*\\.(note|warning|serious)\\(\\s*\"([a-z0-9-]+)\",(.*?)\\);\n",
            Pattern.DOTALL);
    private static final Pattern PIECE = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

    @Test
    void everyKindIsRaisedByATestOfItsPackageOrOfOneThatUsesIt() {
        String tests = String.join("\n", texts(SOURCES.resolve("test/java/org/twinbar/method")));
        assertThat(kinds()).hasSizeGreaterThan(80);
        assertThat(kinds().keySet())
                .as("codes that no test of a method names")
                .filteredOn(code -> !tests.contains("\"" + code + "\""))
                .isEmpty();
    }

    @Test
    void everyKindIsASentence() {
        assertThat(kinds())
                .allSatisfy((code, sentence) -> assertThat(sentence)
                        .as(code)
                        .matches("(?s)[A-Z%].*(\\.|%s)")
                        .doesNotContain("  "));
    }

    /** The sentences by their codes. */
    private static Map<String, String> kinds() {
        Map<String, String> kinds = new TreeMap<>();
        for (String text : texts(SOURCES.resolve("main/java/org/twinbar/method"))) {
            Matcher kind = KIND.matcher(text);
            while (kind.find()) {
                kinds.put(
                        kind.group(2),
                        PIECE.matcher(kind.group(3))
                                .results()
                                .map(piece -> piece.group(1))
                                .collect(Collectors.joining()));
            }
        }
        return kinds;
    }

    private static List<String> texts(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .map(FindingsTest::text)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
