package org.twinbar.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.twinbar.report.Report;
import org.twinbar.study.JudgedStudy;

/** Writes a study's report into a folder. */
final class ReportFiles {

    /** What can be written. */
    enum Form {
        HTML,
        PDF
    }

    private ReportFiles() {}

    /** Returns the files that were written. */
    static List<Path> write(JudgedStudy study, Path folder, Set<Form> forms) {
        Set<Form> wanted = forms.isEmpty() ? EnumSet.allOf(Form.class) : forms;
        List<Path> written = new ArrayList<>();
        if (wanted.contains(Form.HTML)) {
            Path file = folder.resolve("report.html");
            Context.write(file, Report.html(study));
            written.add(file);
        }
        if (wanted.contains(Form.PDF)) {
            Path file = folder.resolve("report.pdf");
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            try {
                Report.pdf(study, pdf);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            Context.write(file, pdf.toByteArray());
            written.add(file);
        }
        return written;
    }
}
