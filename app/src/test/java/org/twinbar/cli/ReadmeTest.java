package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every command of README.md and docs, run as it is written there; a fenced {@code console} block
 * also shows what it prints.
 *
 * <p>A line {@code …} in a block stands for any number of lines. With the system property
 * {@code twinbar.update} blocks without one are written anew from what the commands print.
 */
class ReadmeTest {

    private static final Path ROOT =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().getParent();
    private static final Pattern BLOCK =
            Pattern.compile("^```console\\n(.*?)^```$", Pattern.MULTILINE | Pattern.DOTALL);
    private static final Pattern INDENTED =
            Pattern.compile("^ {4}\\./twinbar (.*)$", Pattern.MULTILINE);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
    private static final String PROMPT = "$ ./twinbar ";

    /** These serve until they are stopped; tests of their own start them. */
    private static final Set<String> SERVE = Set.of("demo", "serve");

    private static final Set<String> NAMED_BY_PLACE = Set.of("--workspace", "--out", "--mesh", ">");

    @TempDir
    Path folder;

    @TestFactory
    Stream<DynamicTest> commandsPrintWhatThePageShows() throws IOException {
        return pages().stream()
                .filter(page -> BLOCK.matcher(text(page)).find())
                .map(page -> DynamicTest.dynamicTest(
                        ROOT.relativize(page).toString(), () -> runsBlocksOf(page)));
    }

    @TestFactory
    Stream<DynamicTest> commandsOfExamplesRun() throws IOException {
        return pages().stream()
                .flatMap(page -> INDENTED.matcher(text(page)).results())
                .map(found -> found.group(1))
                .filter(line -> !SERVE.contains(words(line).get(0)))
                .distinct()
                .map(line -> DynamicTest.dynamicTest(
                        line, () -> assertThat(run(line, folder)).isNotBlank()));
    }

    @Test
    void readmeShowsCommands() {
        assertThat(BLOCK.matcher(text(ROOT.resolve("README.md"))).results()).hasSizeGreaterThan(2);
    }

    private void runsBlocksOf(Path page) throws IOException {
        Path work = Files.createTempDirectory(folder, "page");
        String written = text(page);
        StringBuilder now = new StringBuilder();
        Matcher block = BLOCK.matcher(written);
        List<Runnable> comparisons = new ArrayList<>();
        while (block.find()) {
            StringBuilder printed = new StringBuilder();
            for (String line : block.group(1).lines().toList()) {
                if (line.startsWith(PROMPT)) {
                    printed.append(line).append('\n');
                    printed.append(run(line.substring(PROMPT.length()), work));
                }
            }
            boolean shortened = block.group(1).lines().anyMatch("…"::equals);
            String shown = shortened ? block.group(1) : printed.toString();
            block.appendReplacement(now, Matcher.quoteReplacement("```console\n" + shown + "```"));
            String before = block.group(1);
            comparisons.add(() -> assertThat(printed.toString())
                    .as("%s: read what changed, then run ./check --update", page)
                    .matches(pattern(before)));
        }
        block.appendTail(now);
        if (Boolean.getBoolean("twinbar.update")) {
            Files.writeString(page, now);
        } else {
            comparisons.forEach(Runnable::run);
        }
    }

    private static Pattern pattern(String shown) {
        StringBuilder pattern = new StringBuilder();
        for (String line : shown.lines().toList()) {
            pattern.append(line.equals("…") ? "(?s:.*?\\n)" : Pattern.quote(line + "\n"));
        }
        return Pattern.compile(pattern.toString());
    }

    /** What a command prints, with paths as a person at the root of the project sees them. */
    private static String run(String line, Path work) throws IOException {
        List<String> words = words(line);
        int redirect = words.indexOf(">");
        List<String> arguments = redirect < 0 ? words : words.subList(0, redirect);
        List<String> placed = new ArrayList<>();
        for (int i = 0; i < arguments.size(); i++) {
            boolean byPlace = i > 0 && NAMED_BY_PLACE.contains(arguments.get(i - 1));
            placed.add(placed(arguments.get(i), byPlace, work));
        }
        MakeRun run = MakeRun.of(placed.toArray(String[]::new));
        assertThat(run.status()).as("%s%n%s", line, run.err()).isZero();
        String out =
                run.out().replace(work + "/", "").replace(ROOT + "/", "").replaceAll(" +\n", "\n");
        if (redirect < 0) {
            return out;
        }
        Files.writeString(work.resolve(words.get(redirect + 1)), run.out());
        return "";
    }

    private static String placed(String word, boolean byPlace, Path work) {
        if (word.startsWith("docs/")) {
            return ROOT.resolve(word).toString();
        }
        return byPlace || word.endsWith(".csv") || word.endsWith(".zip")
                ? work.resolve(word).toString()
                : word;
    }

    private static List<String> words(String line) {
        return WORD.matcher(line)
                .results()
                .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                .toList();
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> found = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(Stream.of(ROOT.resolve("README.md")), found)
                    .filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    private static String text(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
