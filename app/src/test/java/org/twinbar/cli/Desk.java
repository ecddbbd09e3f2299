package org.twinbar.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.twinbar.method.Methods;

/** A folder with files in it, and commands that are run over them. */
final class Desk {

    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

    private final Path folder;
    private byte[] piped = new byte[0];

    Desk(Path folder) {
        this.folder = folder;
    }

    /** What a command wrote and how it ended. */
    record Run(int status, String out, String err) {

        JsonNode json() {
            assertThat(status).as(err).isZero();
            try {
                return new ObjectMapper().readTree(out);
            } catch (com.fasterxml.jackson.core.JsonProcessingException e) {
                throw new UncheckedIOException(e);
            }
        }

        /**
         * Returns standard output of a command that must have been done without a word of error.
         */
        String done() {
            assertThat(err).isEmpty();
            assertThat(status).isZero();
            return out;
        }
    }

    /** Returns the path of a file of this folder, as it is typed. */
    String path(String name) {
        return folder.resolve(name).toString();
    }

    Desk file(String name, String... lines) {
        return file(name, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    Desk file(String name, byte[] bytes) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Hands these lines to standard input of the next commands. */
    Desk pipe(String... lines) {
        piped = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        return this;
    }

    /** Hands these bytes to standard input of the next commands. */
    Desk pipe(byte[] bytes) {
        piped = bytes;
        return this;
    }

    /** Returns the files that lie in the folder, by their names below it. */
    Set<String> files() {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Run run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Terminal terminal = new Terminal(
                new ByteArrayInputStream(piped),
                new PrintWriter(out),
                new PrintWriter(err),
                Terminal.Kind.PROGRAM);
        Door closed = (workspace, port) -> {
            throw new IllegalStateException("nothing is served here");
        };
        int status = new Cli(terminal, Methods::builtIn, CLOCK, closed).run(arguments);
        return new Run(status, out.toString(), err.toString());
    }

    /** Runs a command line that is parted at blanks; {@code @name} is a file of this folder. */
    Run type(String line) {
        return run(Stream.of(line.split(" "))
                .map(word -> word.startsWith("@") ? path(word.substring(1)) : word)
                .toArray(String[]::new));
    }

    /**
     * Asserts that a command is refused in one sentence that says all of this, and writes nothing.
     */
    void refuses(String line, String... says) {
        Set<String> before = files();
        Run run = type(line);
        assertThat(plain(run.err())).startsWith("twinbar: ").contains(says);
        assertThat(run.err().strip().lines()).hasSize(1);
        assertThat(run.err()).doesNotContain("Exception", "null", "NaN");
        assertThat(run.out()).isEmpty();
        assertThat(run.status()).isEqualTo(Cli.WRONG_INPUT);
        assertThat(files()).isEqualTo(before);
    }

    /** Returns a text with ordinary blanks where numbers hold on to their units. */
    private static String plain(String text) {
        return text.replaceAll("\\p{Zs}", " ");
    }
}
