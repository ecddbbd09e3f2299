package org.twinbar.web;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.twinbar.exchange.ReadAs;
import org.twinbar.exchange.Source;
import org.twinbar.exchange.Table;
import org.twinbar.study.table.Upload;

/**
 * Files that came with a form, in a folder of their own until they are let go of.
 *
 * @param table the first one
 * @param curves the others
 */
record Received(Path folder, Upload table, List<Upload> curves) {

    static final int LARGEST_FILE_MB = 64;
    static final int LARGEST_SUM_MB = 256;
    static final int MOST_FILES = 2000;

    private static final String TABLE = "table";

    Received {
        curves = List.copyOf(curves);
    }

    /** @throws Refusal where no table came, or too many files did */
    static Received from(Context request) {
        List<UploadedFile> tables = named(request, "table");
        List<UploadedFile> curves = named(request, "curves");
        if (tables.size() != 1) {
            throw Refusal.badRequest(
                    "Choose one table: a CSV or XLSX file with a row for each specimen.");
        }
        if (curves.size() > MOST_FILES) {
            throw Refusal.badRequest(
                    "%s curves came, must be %s or fewer; the command line takes more."
                            .formatted(curves.size(), MOST_FILES));
        }
        Path folder = newFolder();
        try {
            List<Upload> kept = new ArrayList<>();
            for (UploadedFile curve : curves) {
                kept.add(keep(folder, "curve" + kept.size(), curve));
            }
            return new Received(folder, keep(folder, TABLE, tables.get(0)), kept);
        } catch (RuntimeException e) {
            remove(folder);
            throw e;
        }
    }

    /** A browser sends a field without a file as a file without a name. */
    private static List<UploadedFile> named(Context request, String field) {
        return files(request, field).stream()
                .filter(file -> !file.filename().isBlank())
                .toList();
    }

    private static List<UploadedFile> files(Context request, String field) {
        try {
            return request.uploadedFiles(field);
        } catch (Exception e) {
            // The server throws what it likes for a form that is too large or broken off.
            throw Refusal.badRequest(
                    "The files could not be taken: a file may have %s MB, all together %s MB."
                            .formatted(LARGEST_FILE_MB, LARGEST_SUM_MB));
        }
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("twinbar-trial");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Upload keep(Path folder, String as, UploadedFile file) {
        Path kept = folder.resolve(as);
        try (InputStream content = file.content()) {
            Files.copy(content, kept);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Upload.of(file.filename().replace('\\', '/'), kept);
    }

    /** Returns the table, taken apart. */
    Table read() {
        try {
            byte[] bytes = Files.readAllBytes(folder.resolve(TABLE));
            return Table.read(Source.of(table.name(), bytes), ReadAs.found());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Upload> all() {
        List<Upload> all = new ArrayList<>(curves);
        all.add(table);
        return all;
    }

    void remove() {
        remove(folder);
    }

    private static void remove(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.deleteIfExists(file);
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
