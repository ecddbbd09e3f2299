package org.twinbar.web;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.twinbar.study.judged.StudyName;

/**
 * What the squares of a label say while phones are let in: where its specimen is at the rig, so
 * that a phone's own camera opens it. No test is named, since the same label serves several.
 *
 * @param study by its identity
 */
record LabelAddress(String study, String code) {

    /** Some scanners type in capitals. */
    private static final Pattern ADDRESS = Pattern.compile(
            "https?://[^/\\s]+/studies/([0-9a-f-]{36})/rig(?:/[^?\\s]*)?"
                    + "\\?specimen=((?:[^%&\\s]|%[0-9a-f]{2})+)",
            Pattern.CASE_INSENSITIVE);

    /** @param phones where phones begin, with a slash at its end */
    static String of(String phones, StudyName study, String code) {
        return phones.replaceFirst("/$", "") + Links.at(Links.rig(study), code);
    }

    /** Returns what a label said, where a text is such an address. */
    static Optional<LabelAddress> read(String text) {
        Matcher address = ADDRESS.matcher(text.strip());
        return address.matches()
                ? Optional.of(new LabelAddress(
                        address.group(1).toLowerCase(Locale.ROOT),
                        URLDecoder.decode(address.group(2), StandardCharsets.UTF_8)))
                : Optional.empty();
    }

    boolean isOf(StudyName other) {
        return study.equals(other.id().toString());
    }
}
