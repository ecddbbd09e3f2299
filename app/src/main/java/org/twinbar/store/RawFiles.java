package org.twinbar.store;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Raw files, byte for byte as they came, each named by its digest.
 *
 * <p>A file that is here is whole: it is written beside its place, forced to disk, and moved there.
 */
public final class RawFiles {

    private static final int BUFFER = 1 << 16;

    private final Path folder;
    private final Path incoming;

    RawFiles(Path folder) throws IOException {
        this.folder = folder;
        this.incoming = Files.createDirectories(folder.resolve("incoming"));
    }

    /** A file that is kept: its digest and its length in bytes. */
    public record Kept(Digest digest, long bytes) {}

    /** Keeps these bytes. */
    public Kept keep(byte[] bytes) {
        return keep(new ByteArrayInputStream(bytes));
    }

    /**
     * Keeps what a stream holds; what is kept already is checked and not written again.
     *
     * @throws StoreException where it can't be written, or the disk gives back something else
     */
    public Kept keep(InputStream stream) {
        Kept kept = place(stream);
        force(folder);
        return kept;
    }

    /** Keeps many files, asking the disk for their names once; otherwise as {@link #keep}. */
    public List<Kept> keepAll(Stream<byte[]> files) {
        List<Kept> kept =
                files.map(bytes -> place(new ByteArrayInputStream(bytes))).toList();
        force(folder);
        return kept;
    }

    private Kept place(InputStream stream) {
        Path part = incoming.resolve(UUID.randomUUID() + ".part");
        try {
            try {
                Kept kept = write(stream, part);
                Path place = place(kept.digest());
                if (Files.exists(place)) {
                    require(place, kept.digest());
                } else {
                    require(part, kept.digest());
                    Files.move(part, place, StandardCopyOption.ATOMIC_MOVE);
                }
                return kept;
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new StoreException("can't keep a raw file in " + folder + ": " + e, e);
        }
    }

    private static Kept write(InputStream stream, Path part) throws IOException {
        MessageDigest digest = Digest.sha256();
        try (FileChannel out =
                FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            byte[] buffer = new byte[BUFFER];
            long bytes = 0;
            for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
                digest.update(buffer, 0, read);
                ByteBuffer rest = ByteBuffer.wrap(buffer, 0, read);
                while (rest.hasRemaining()) {
                    out.write(rest);
                }
                bytes += read;
            }
            out.force(true);
            return new Kept(Digest.of(digest), bytes);
        }
    }

    /**
     * Returns the bytes of a file.
     *
     * @throws StoreException where it isn't here, or holds other bytes than were kept
     */
    public byte[] read(Digest digest) {
        Path place = place(digest);
        try {
            byte[] bytes = Files.readAllBytes(place);
            if (!Digest.of(bytes).equals(digest)) {
                throw damaged(place);
            }
            return bytes;
        } catch (IOException e) {
            throw missing(place, e);
        }
    }

    /**
     * Returns where a file lies, after reading it through to see that it is what was kept.
     *
     * @throws StoreException where it isn't here, or holds other bytes than were kept
     */
    public Path verified(Digest digest) {
        Path place = place(digest);
        try {
            require(place, digest);
            return place;
        } catch (IOException e) {
            throw missing(place, e);
        }
    }

    private Path place(Digest digest) {
        return folder.resolve(digest.hex());
    }

    private static void require(Path file, Digest wanted) throws IOException {
        MessageDigest digest = Digest.sha256();
        try (InputStream in =
                new DigestInputStream(Channels.newInputStream(FileChannel.open(file)), digest)) {
            byte[] buffer = new byte[BUFFER];
            int read = 0;
            while (read >= 0) {
                read = in.read(buffer);
            }
        }
        if (!Digest.of(digest).equals(wanted)) {
            throw damaged(file);
        }
    }

    /** A move survives a power cut once its folder is on disk; some systems don't let one ask. */
    private static void force(Path directory) {
        try (FileChannel channel = FileChannel.open(directory)) {
            channel.force(true);
        } catch (IOException e) {
            // Windows opens no folders, and writes their entries with the file.
        }
    }

    private static StoreException damaged(Path file) {
        return new StoreException(
                "the raw file %s no longer holds what was read: its SHA-256 is another"
                        .formatted(file));
    }

    private static StoreException missing(Path file, IOException cause) {
        return new StoreException("the raw file %s can't be read".formatted(file), cause);
    }
}
