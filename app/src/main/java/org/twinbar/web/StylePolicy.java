package org.twinbar.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The content security policy of a page that holds its own style: that style and no other. */
final class StylePolicy {

    private static final String BEGIN = "<style>";

    private StylePolicy() {}

    static String of(String page) {
        int begin = page.indexOf(BEGIN) + BEGIN.length();
        String style = page.substring(begin, page.indexOf("</style>", begin));
        return "default-src 'none'; style-src 'sha256-%s'; font-src data:; img-src data:;"
                        .formatted(digest(style))
                + " form-action 'none'; frame-ancestors 'none'; base-uri 'none'";
    }

    private static String digest(String style) {
        try {
            MessageDigest sha256 = MessageDigest.getInstance("SHA-256");
            return Base64.getEncoder()
                    .encodeToString(sha256.digest(style.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
