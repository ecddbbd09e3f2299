package org.twinbar.study.judged;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import org.twinbar.exchange.Source;
import org.twinbar.store.Digest;

/**
 * A file as it came.
 *
 * @param name as it was handed in, folders included
 * @param sha256 its digest, 64 hexadecimal digits
 * @param bytes its length
 */
public record KeptFile(String name, String sha256, long bytes) {

    public KeptFile {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    "'%s' of %s is not a SHA-256".formatted(sha256, name));
        }
    }

    /**
     * Returns what a file is known by; it is streamed.
     *
     * @throws org.twinbar.exchange.InputException where it can't be read
     */
    public static KeptFile of(Source source) {
        MessageDigest digest = Digest.sha256();
        try (InputStream in = new DigestInputStream(source.open(), digest)) {
            long bytes = in.transferTo(OutputStream.nullOutputStream());
            return new KeptFile(source.name(), Digest.of(digest).hex(), bytes);
        } catch (IOException e) {
            throw source.unreadable(e);
        }
    }
}
