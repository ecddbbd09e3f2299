package org.twinbar.study.table;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.twinbar.exchange.Place;
import org.twinbar.exchange.Source;
import org.twinbar.study.judged.KeptFile;

/** A file as somebody hands it in: a name, and bytes that can be read again and again. */
public final class Upload {

    private static final int LARGEST_KEPT = 512 << 20;

    private final Source source;

    private Upload(Source source) {
        this.source = source;
    }

    /** Bytes at hand; they are read and never changed. */
    public static Upload of(String name, byte[] bytes) {
        return new Upload(Source.of(name, bytes));
    }

    /** A file on disk, which is read when it is needed. */
    public static Upload of(String name, Path file) {
        return new Upload(Source.of(name, file));
    }

    public static Upload of(Source source) {
        return new Upload(source);
    }

    public String name() {
        return source.name();
    }

    /** Returns where its bytes can be read; those of a large file are streamed. */
    Source source() {
        return source;
    }

    /** @throws org.twinbar.exchange.InputException where there are more than 512 MiB */
    public byte[] bytes() {
        try (InputStream in = source.open()) {
            byte[] bytes = in.readNBytes(LARGEST_KEPT + 1);
            if (bytes.length > LARGEST_KEPT) {
                throw Place.of(name())
                        .refuse("is larger than %s MiB, the limit of a file that a study keeps"
                                .formatted(LARGEST_KEPT >> 20));
            }
            return bytes;
        } catch (IOException e) {
            throw source.unreadable(e);
        }
    }

    public KeptFile described() {
        return KeptFile.of(source);
    }
}
