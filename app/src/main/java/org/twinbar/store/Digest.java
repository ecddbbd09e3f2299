package org.twinbar.store;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** A SHA-256, in 64 lower-case hexadecimal digits. */
public record Digest(String hex) {

    public Digest {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new StoreException("'%s' is not a SHA-256".formatted(hex));
        }
    }

    public static Digest of(byte[] bytes) {
        return of(sha256().digest(bytes), HexFormat.of());
    }

    /** Ends a digest of bytes that were seen one after another. */
    public static Digest of(MessageDigest ended) {
        return of(ended.digest(), HexFormat.of());
    }

    private static Digest of(byte[] digest, HexFormat format) {
        return new Digest(format.formatHex(digest));
    }

    /** Begins a digest. */
    public static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return hex;
    }
}
