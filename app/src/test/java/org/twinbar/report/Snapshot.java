package org.twinbar.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares a text with the one that is kept in the tree; {@code -Dsnapshots=update} keeps the new
 * one instead, for a person to read in the difference of the commit.
 */
final class Snapshot {

    private static final Path KEPT =
            Path.of("src", "test", "resources", "org", "twinbar", "report");

    private Snapshot() {}

    static void matches(String name, String text) {
        Path file = KEPT.resolve(name);
        try {
            if ("update".equals(System.getProperty("snapshots"))) {
                Files.createDirectories(KEPT);
                Files.writeString(file, text);
            }
            assertThat(text)
                    .as("%s; -Dsnapshots=update keeps the new text", file)
                    .isEqualTo(Files.readString(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Returns what a reader reads of a page: one line for each block, without tags and pictures.
     */
    static String words(String page) {
        return page.replaceAll("(?s)<style>.*?</style>", "")
                        .replaceAll(
                                "(?s)<svg[^>]*aria-label=\"([^\"]*)\".*?</svg>", "[picture: $1]\n")
                        .replaceAll("</(td|th|dt|span)>", " | ")
                        .replaceAll("</(p|li|h1|h2|h3|h4|tr|caption|figcaption|div)>", "\n")
                        .replaceAll("<[^>]+>", "")
                        .replace("&amp;", "&")
                        .replace("&lt;", "<")
                        .replace("&gt;", ">")
                        .replaceAll("[ \\t]*\\n\\s*", "\n")
                        .replaceAll("( \\| )+\\n", "\n")
                        .replaceAll("[ \\t]+", " ")
                        .strip()
                + "\n";
    }
}
