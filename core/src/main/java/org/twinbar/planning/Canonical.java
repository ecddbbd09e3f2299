package org.twinbar.planning;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.OptionalInt;

/** A plan as text that is the same for the same plan everywhere, and what seals it. */
public final class Canonical {

    /**
     * Names what lines there are. 1 had neither the pilots' codes nor what is done to a group and
     * how long it waits; a seal keeps the text that it was taken of, so that old ones stay valid.
     */
    private static final String VERSION = "twinbar plan 2";

    private Canonical() {}

    /**
     * Returns a line for each thing that was dealt, then one for each specimen in the order of
     * testing and for each pilot; fields parted by tabs, each line ended by a line feed.
     */
    static String text(Allocation plan) {
        Design design = plan.design();
        StringBuilder text = new StringBuilder(VERSION).append('\n');
        for (PlannedGroup group : design.groups()) {
            line(text, "group", group.name(), group.role().word(), group.treatment());
        }
        for (Series each : design.series()) {
            line(
                    text,
                    "series",
                    each.name(),
                    each.method(),
                    each.shape(),
                    each.orientation().word(),
                    each.perGroup(),
                    each.pilots());
        }
        line(text, "changes", design.changes().word());
        line(
                text,
                "batches",
                design.batches().runs(),
                design.batches().mixes(),
                design.batches().loads());
        line(text, "seed", plan.seed());
        for (Placed one : plan.specimens()) {
            line(
                    text,
                    one.series(),
                    one.test(),
                    one.code(),
                    one.group(),
                    one.run(),
                    one.position(),
                    number(one.mix()),
                    number(one.load()));
        }
        for (Placed one : plan.pilots()) {
            line(text, "pilot", one.series(), one.test(), one.code());
        }
        return text.toString();
    }

    /** Returns the SHA-256 of a text in UTF-8, as 64 hexadecimal figures. */
    public static String sealOf(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError("every Java platform has SHA-256", e);
        }
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "-";
    }

    /**
     * Adds a line of fields parted by tabs. Line ends and tabs within a field would let two plans
     * have one text, and become blanks.
     */
    public static void line(StringBuilder text, Object... fields) {
        for (int i = 0; i < fields.length; i++) {
            text.append(i == 0 ? "" : "\t");
            text.append(String.valueOf(fields[i]).replaceAll("[\\t\\r\\n]+", " "));
        }
        text.append('\n');
    }
}
