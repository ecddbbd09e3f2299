package org.twinbar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Whether docs/checks.md still tells what the tests found; {@code ./check} runs it after all
 * others.
 *
 * <p>With the system property {@code twinbar.update} the page is made anew instead.
 */
class ChecksPageCheck {

    private static final Path CORE = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
    private static final Path VALUES = CORE.resolve("src/test/resources/org/twinbar");
    private static final Path PAGE = CORE.resolveSibling("docs").resolve("checks.md");

    @Test
    void pageOfOutsideChecksIsUpToDate() throws IOException {
        ChecksPage found = ChecksPage.of(kept());
        if (Boolean.getBoolean("twinbar.update")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, found.markdown());
        }
        assertThat(found.markdown()).contains("\n## ");
        String page = Files.exists(PAGE) ? Files.readString(PAGE) : "";
        assertThat(found.missedBy(page))
                .as("docs/checks.md is out of date: read what changed, then run ./check --update")
                .isEmpty();
    }

    @Test
    void everyOutsideValueIsCompared() throws IOException {
        Map<String, String> kept = kept();
        for (Path folder : foldersWithChecks()) {
            String name = packageName(folder);
            List<String> compared = ids(kept.getOrDefault(name, ""));
            assertThat(ids(Files.readString(folder.resolve("checks.csv"))))
                    .as("rows of %s that a test compared", name)
                    .allMatch(compared::contains);
        }
    }

    private static Map<String, String> kept() throws IOException {
        Map<String, String> kept = new TreeMap<>();
        for (Path folder : foldersWithChecks()) {
            String name = packageName(folder);
            Path found = CORE.resolve("target").resolve("checks").resolve(name + ".csv");
            if (Files.exists(found)) {
                kept.put(name, Files.readString(found));
            }
        }
        return kept;
    }

    /** Those below org.twinbar; its own values are invented, to test {@link Checks} with. */
    private static List<Path> foldersWithChecks() throws IOException {
        try (Stream<Path> found = Files.walk(VALUES)) {
            return found.filter(file -> file.endsWith("checks.csv"))
                    .map(Path::getParent)
                    .filter(folder -> !folder.equals(VALUES))
                    .toList();
        }
    }

    private static String packageName(Path folder) {
        return "org.twinbar." + VALUES.relativize(folder).toString().replaceAll("[/\\\\]", ".");
    }

    private static List<String> ids(String table) {
        return Checks.table(table).stream().map(row -> row.get(0)).toList();
    }
}
