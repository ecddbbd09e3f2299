package org.twinbar.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.twinbar.method.Property;
import org.twinbar.method.Result;
import org.twinbar.study.judged.JudgedStudy;

/**
 * The report of a judged study: claims and verdicts first, in plain words, then all that a stranger
 * needs to check them.
 *
 * <p>The same study gives the same report, to the byte for HTML.
 */
public final class Report {

    private Report() {}

    /** Returns one HTML file that needs no other and no network. */
    public static String html(JudgedStudy study) {
        return html(Composition.of(study));
    }

    /** Returns the same of words and pictures that are there already. */
    public static String html(Sheet sheet) {
        return Typeset.screen(sheet);
    }

    /** Returns the words and pictures of the report, for pages that set them in their own way. */
    public static Sheet sheet(JudgedStudy study) {
        return Composition.of(study);
    }

    /** Returns the curves that a page shows beside answers, by the answer's anchor. */
    public static Map<String, Curves> curves(JudgedStudy study) {
        return Answers.curves(study);
    }

    /**
     * Returns the style sheet of those words and pictures, in the light that the reader prefers.
     */
    public static String css() {
        return Typeset.css();
    }

    /** Returns what a result says of a property, with its unit, as it stands in the report. */
    public static String value(Result result, Property property) {
        return Cells.withUnit(result, property);
    }

    /**
     * Writes the same content as PDF/A-2b, or as PDF/A-3b where files lie inside it; the stream
     * stays open.
     *
     * @param attachments files that lie inside the document, each with a name of its own
     */
    public static void pdf(JudgedStudy study, List<Attachment> attachments, OutputStream to)
            throws IOException {
        pdf(Composition.of(study), attachments, to);
    }

    /** Writes the same of words and pictures that are there already. */
    public static void pdf(Sheet sheet, List<Attachment> attachments, OutputStream to)
            throws IOException {
        Pdf.write(sheet, attachments, to);
    }
}
