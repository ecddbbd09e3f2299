package org.twinbar.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.twinbar.exchange.InputException;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.datapackage.OpenPackage;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;

/** What every command may need. */
record Context(Terminal terminal, Supplier<Methods> methods, Clock clock, Door door) {

    static final String STANDARD_INPUT = "-";

    /** Returns a file argument; {@code -} is standard input. */
    Source source(String file) {
        return file.equals(STANDARD_INPUT)
                ? Source.of("standard input", terminal.in())
                : Source.of(Path.of(file));
    }

    /** Returns the folder that a file lies in; that of standard input is the current one. */
    static Path folderOf(String file) {
        Path parent = file.equals(STANDARD_INPUT) ? null : Path.of(file).getParent();
        return parent == null ? Path.of("") : parent;
    }

    Workspace open(Path folder) {
        return Workspace.open(folder, methods.get(), clock, Program.NAME);
    }

    /** Opens a workspace that is there already. */
    Workspace openThere(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    "there is no workspace folder %s; name one with --workspace".formatted(folder));
        }
        return open(folder);
    }

    /** Opens a package for as long as it is read; {@code -} is a zip from standard input. */
    <T> T packageAt(String file, Function<OpenPackage, T> reader) {
        if (!file.equals(STANDARD_INPUT)) {
            try (OpenPackage open = OpenPackage.of(Path.of(file))) {
                return reader.apply(open);
            }
        }
        try {
            Path kept = Files.createTempFile("twinbar", ".zip");
            try {
                Files.copy(terminal.in(), kept, StandardCopyOption.REPLACE_EXISTING);
                return packageAt(kept.toString(), reader);
            } finally {
                Files.delete(kept);
            }
        } catch (IOException e) {
            throw new InputException("standard input can't be read as a package");
        }
    }

    /** Takes {@code NAME=VALUE} options apart. */
    static Map<String, String> pairs(String option, List<String> texts) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String text : texts) {
            int equals = text.indexOf('=');
            if (equals < 1 || equals == text.length() - 1) {
                throw new UsageException("%s '%s': write NAME=VALUE".formatted(option, text));
            }
            String name = text.substring(0, equals).strip();
            if (pairs.put(name, text.substring(equals + 1).strip()) != null) {
                throw new UsageException("%s names '%s' twice".formatted(option, name));
            }
        }
        return pairs;
    }

    /** Writes a file whole, or leaves what was there. */
    static void write(Path file, String text) {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    static void write(Path file, byte[] bytes) {
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            Path part = file.resolveSibling(file.getFileName() + ".part");
            Files.write(part, bytes);
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new InputException(
                    "%s can't be written: %s".formatted(file, e.getClass().getSimpleName()));
        }
    }
}
