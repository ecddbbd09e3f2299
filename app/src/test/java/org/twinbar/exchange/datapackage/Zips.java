package org.twinbar.exchange.datapackage;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Zips as tests make them, bad ones too. */
public final class Zips {

    private Zips() {}

    /** Writes a zip of texts by name, in this order. */
    public static Path of(Path zip, Map<String, String> texts) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return ofBytes(zip, files);
    }

    public static Path ofBytes(Path zip, Map<String, byte[]> files) {
        try (OutputStream out = Files.newOutputStream(zip);
                ZipOutputStream packed = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                packed.putNextEntry(new ZipEntry(file.getKey()));
                packed.write(file.getValue());
                packed.closeEntry();
            }
            return zip;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the files of a zip by name. */
    public static Map<String, byte[]> files(Path zip) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a zip anew with one of its texts changed; its descriptor stays as it is. */
    public static Path altered(Path zip, Path to, String name, UnaryOperator<String> change) {
        Map<String, byte[]> files = files(zip);
        String before = new String(files.get(name), StandardCharsets.UTF_8);
        String after = change.apply(before);
        if (after.equals(before)) {
            throw new AssertionError(name + " was not changed");
        }
        files.put(name, after.getBytes(StandardCharsets.UTF_8));
        return ofBytes(to, files);
    }
}
