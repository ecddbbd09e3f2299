package org.twinbar.study;

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

    /** Returns what a file is known by. */
    public static KeptFile of(Source source) {
        byte[] bytes = source.bytes();
        return new KeptFile(source.name(), Digest.of(bytes).hex(), bytes.length);
    }
}
