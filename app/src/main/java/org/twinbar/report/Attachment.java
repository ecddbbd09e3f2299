package org.twinbar.report;

/**
 * A file that goes with a document, inside it.
 *
 * @param name of the file
 * @param mediaType what it is, such as {@code application/zip}
 * @param says what it holds, in a sentence
 */
public record Attachment(String name, String mediaType, String says, byte[] bytes) {

    /** Returns a data package that was written as a zip. */
    public static Attachment dataPackage(String name, byte[] zip) {
        return new Attachment(
                name,
                "application/zip",
                "Data package: every reading as it came, results and verdicts.",
                zip);
    }
}
