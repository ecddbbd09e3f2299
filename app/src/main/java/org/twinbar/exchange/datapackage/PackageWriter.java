package org.twinbar.exchange.datapackage;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.twinbar.exchange.InputException;

/**
 * Writes packages; the same one gives the same files, whenever and wherever it is written. In a zip
 * every file bears the same moment, whatever the clock says.
 */
public final class PackageWriter {

    /** Java would write the zone's offset beside the very first moment that a zip knows. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 2, 0, 0);

    /** Curves get as small as by the usual level, in a third of its time. */
    private static final int LEVEL = 4;

    private PackageWriter() {}

    private interface Opener {
        InputStream open() throws IOException;
    }

    /** Writes a package as one zip; the stream stays open. */
    public static void zip(DataPackage made, OutputStream to) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8);
        zip.setLevel(LEVEL);
        for (Map.Entry<String, Opener> file : files(made).entrySet()) {
            ZipEntry entry = new ZipEntry(file.getKey());
            entry.setTimeLocal(NO_TIME);
            zip.putNextEntry(entry);
            try (InputStream in = file.getValue().open()) {
                in.transferTo(zip);
            }
            zip.closeEntry();
        }
        zip.finish();
    }

    /**
     * Writes a package into a folder.
     *
     * @throws InputException where the folder holds something already
     */
    public static void folder(DataPackage made, Path folder) throws IOException {
        Files.createDirectories(folder);
        try (var there = Files.list(folder)) {
            if (there.findAny().isPresent()) {
                throw new InputException(
                        "%s holds files already; name a new folder, or a file that ends in .zip"
                                .formatted(folder));
            }
        }
        for (Map.Entry<String, Opener> file : files(made).entrySet()) {
            Path place = folder.resolve(file.getKey());
            Files.createDirectories(place.getParent());
            try (InputStream in = file.getValue().open()) {
                Files.copy(in, place);
            }
        }
    }

    private static Map<String, Opener> files(DataPackage made) {
        Map<String, byte[]> texts = new LinkedHashMap<>();
        texts.put(Descriptor.README, made.readme().getBytes(StandardCharsets.UTF_8));
        made.tables().forEach(table -> texts.put(table.path(), csv(table)));
        Map<String, Descriptor.Written> known = new HashMap<>();
        texts.forEach((path, bytes) ->
                known.put(path, new Descriptor.Written(path, Hash.sha256(bytes), bytes.length)));
        made.files()
                .forEach(raw -> known.put(
                        raw.path(), new Descriptor.Written(raw.path(), raw.sha256(), raw.bytes())));
        Map<String, Opener> files = new LinkedHashMap<>();
        byte[] descriptor = Descriptor.of(made, known);
        files.put(Descriptor.FILE, () -> new ByteArrayInputStream(descriptor));
        texts.forEach((path, bytes) -> files.put(path, () -> new ByteArrayInputStream(bytes)));
        for (DataPackage.RawFile raw : made.files()) {
            if (files.put(raw.path(), raw.source()::open) != null) {
                throw new IllegalArgumentException("two files are called " + raw.path());
            }
        }
        return files;
    }

    /** Writes a table as RFC 4180 has it. */
    private static byte[] csv(DataTable table) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv =
                CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(text)) {
            csv.writeRecord(table.fields().stream().map(Field::name).toList());
            table.rows().forEach(csv::writeRecord);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
