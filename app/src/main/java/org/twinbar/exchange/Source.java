package org.twinbar.exchange;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/** A file, or what came through a pipe or a form: a name and bytes that can be read twice. */
public final class Source {

    /** Bytes of a table that is held in memory; curves are streamed and know no such limit. */
    static final int LARGEST_TABLE = 64 << 20;

    /** Bytes that are read at once rather than streamed. */
    private static final int MOST_AT_HAND = 4 << 20;

    private final String name;
    private final Opener opener;

    private final Optional<byte[]> held;

    private Source(String name, Opener opener, Optional<byte[]> held) {
        this.name = name;
        this.opener = opener;
        this.held = held;
    }

    /**
     * A file.
     *
     * @throws InputException where there is none, or it is a folder
     */
    public static Source of(Path file) {
        return of(file.toString(), file);
    }

    /**
     * A file that goes by another name than its path.
     *
     * @throws InputException where there is none, or it is a folder
     */
    public static Source of(String name, Path file) {
        if (Files.isDirectory(file)) {
            throw Place.of(name).refuse("is a folder, not a file");
        }
        if (!Files.exists(file)) {
            throw Place.of(name).refuse("there is no such file");
        }
        return of(name, () -> Files.newInputStream(file));
    }

    /** Bytes at hand. */
    public static Source of(String name, byte[] bytes) {
        return new Source(name, () -> new ByteArrayInputStream(bytes), Optional.of(bytes));
    }

    /**
     * What a stream holds, such as standard input; it is read to its end at once.
     *
     * @throws InputException where it holds more than 64 MiB
     */
    public static Source of(String name, InputStream stream) {
        return of(name, of(name, (Opener) () -> stream).bytes());
    }

    /** A stream that can be opened again and again. */
    public static Source of(String name, Opener opener) {
        return new Source(name, opener, Optional.empty());
    }

    public String name() {
        return name;
    }

    /** Returns the bytes where they are at hand; they must not be changed. */
    Optional<byte[]> held() {
        return held;
    }

    /**
     * Returns the same with its bytes in memory where they are few, so that they are read once and
     * may be looked at several times; a large file is left where it is.
     *
     * @throws InputException where it can't be read
     */
    public Source atHand() {
        if (held.isPresent()) {
            return this;
        }
        try (InputStream in = open()) {
            byte[] room = new byte[Math.min(in.available(), MOST_AT_HAND)];
            int read = in.readNBytes(room, 0, room.length);
            boolean isAll = in.read() < 0;
            return isAll ? of(name, read == room.length ? room : Arrays.copyOf(room, read)) : this;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Returns a stream of the bytes, from their beginning.
     *
     * @throws InputException where it can't be read
     */
    public InputStream open() {
        try {
            return opener.open();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * Reads everything.
     *
     * @throws InputException where it can't be read, or holds more than 64 MiB
     */
    public byte[] bytes() {
        try (InputStream in = open()) {
            byte[] bytes = in.readNBytes(LARGEST_TABLE + 1);
            if (bytes.length > LARGEST_TABLE) {
                throw Place.of(name)
                        .refuse("is larger than %s MiB, the limit of a table of specimens or values"
                                .formatted(LARGEST_TABLE >> 20));
            }
            return bytes;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** Returns the exception that says so. */
    public InputException unreadable(IOException cause) {
        InputException refusal =
                Place.of(name).refuse("can't be read: " + cause.getClass().getSimpleName());
        refusal.initCause(cause);
        return refusal;
    }

    /** Opens the bytes from their beginning. */
    public interface Opener {
        InputStream open() throws IOException;
    }
}
