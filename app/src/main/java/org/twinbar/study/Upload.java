package org.twinbar.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.twinbar.exchange.Place;
import org.twinbar.store.Digest;

/** A file as somebody hands it in: a name, and bytes that can be read again and again. */
public final class Upload {

    private final String name;
    private final Reader reader;

    private Upload(String name, Reader reader) {
        this.name = name;
        this.reader = reader;
    }

    /** Bytes at hand; they are read and never changed. */
    public static Upload of(String name, byte[] bytes) {
        return new Upload(name, () -> bytes);
    }

    /** A file on disk, which is read when it is needed. */
    public static Upload of(String name, Path file) {
        return new Upload(name, () -> Files.readAllBytes(file));
    }

    public String name() {
        return name;
    }

    byte[] bytes() {
        try {
            return reader.read();
        } catch (IOException e) {
            throw Place.of(name).refuse("can't be read: " + e.getClass().getSimpleName());
        }
    }

    KeptFile described() {
        byte[] bytes = bytes();
        return new KeptFile(name, Digest.of(bytes).hex(), bytes.length);
    }

    private interface Reader {
        byte[] read() throws IOException;
    }
}
