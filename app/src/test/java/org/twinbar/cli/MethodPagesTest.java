package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;

/**
 * Whether docs/methods still tells what the methods say of themselves.
 *
 * <p>With the system property {@code twinbar.update} the pages are made anew instead.
 */
class MethodPagesTest {

    private static final Path DOCS =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolveSibling("docs");
    private static final Path PAGES = DOCS.resolve("methods");

    private static final String INDEX_HEAD = """
            # Test methods

            Each page is made from what the method says of itself, by `./check --update`; so is this one.

            | method | title | |
            |---|---|---|
            """;

    @TestFactory
    Stream<DynamicTest> pageIsUpToDate() {
        return descriptions()
                .map(method -> DynamicTest.dynamicTest(method.name(), () -> upToDate(method)));
    }

    @Test
    void indexIsUpToDate() throws IOException {
        StringBuilder rows = new StringBuilder();
        descriptions()
                .forEach(method -> rows.append("| [%s](%s.md) | %s | %s |\n"
                        .formatted(
                                method.name(),
                                method.name(),
                                method.title(),
                                hasExample(method)
                                        ? "[example](../examples/%s/README.md)"
                                                .formatted(method.name())
                                        : "")));
        agrees(PAGES.resolve("README.md"), INDEX_HEAD + rows);
    }

    @Test
    void everyPageHasAMethod() throws IOException {
        Stream<String> expected = descriptions().map(method -> method.name() + ".md");
        try (Stream<Path> pages = Files.list(PAGES)) {
            assertThat(pages.map(page -> page.getFileName().toString()))
                    .isSubsetOf(Stream.concat(expected, Stream.of("README.md")).toList());
        }
    }

    private static void upToDate(Description method) throws IOException {
        agrees(PAGES.resolve(method.name() + ".md"), MethodPage.of(method, hasExample(method)));
    }

    private static boolean hasExample(Description method) {
        return Files.exists(DOCS.resolve("examples").resolve(method.name()).resolve("README.md"));
    }

    private static void agrees(Path page, String made) throws IOException {
        if (Boolean.getBoolean("twinbar.update")) {
            Files.createDirectories(PAGES);
            Files.writeString(page, made);
        }
        assertThat(page)
                .as("read what changed, then run ./check --update")
                .exists()
                .hasContent(made);
    }

    private static Stream<Description> descriptions() {
        return Methods.builtIn().all().stream().map(method -> method.description());
    }
}
