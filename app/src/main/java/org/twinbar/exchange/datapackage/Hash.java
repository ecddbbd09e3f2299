package org.twinbar.exchange.datapackage;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Map;
import org.twinbar.exchange.InputException;

/**
 * What a descriptor says of a file's bytes.
 *
 * @param algorithm as Java calls it
 * @param hex lower case
 */
record Hash(String algorithm, String hex) {

    static final String SHA_256 = "SHA-256";

    /** The standard takes a hash without a name for MD5. */
    private static final Map<String, String> KNOWN = Map.of(
            "md5", "MD5", "sha1", "SHA-1", "sha256", SHA_256, "sha384", "SHA-384", "sha512",
            "SHA-512");

    /** @throws InputException where its algorithm is none that can be calculated here */
    static Hash parse(String where, String text) {
        int colon = text.indexOf(':');
        String name = colon < 0 ? "md5" : text.substring(0, colon).toLowerCase(Locale.ROOT);
        String algorithm = KNOWN.get(name.replace("-", ""));
        if (algorithm == null) {
            throw new InputException("%s: the hash '%s' is none of %s"
                    .formatted(
                            where,
                            name,
                            String.join(", ", KNOWN.keySet().stream().sorted().toList())));
        }
        return new Hash(algorithm, text.substring(colon + 1).toLowerCase(Locale.ROOT));
    }

    /** Returns the hash of the same kind of what a stream holds. */
    Hash of(InputStream stream) throws IOException {
        MessageDigest digest = digest(algorithm);
        try (InputStream in = new DigestInputStream(stream, digest)) {
            in.transferTo(OutputStream.nullOutputStream());
        }
        return new Hash(algorithm, HexFormat.of().formatHex(digest.digest()));
    }

    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest(SHA_256).digest(bytes));
    }

    private static MessageDigest digest(String algorithm) {
        try {
            return MessageDigest.getInstance(algorithm);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
